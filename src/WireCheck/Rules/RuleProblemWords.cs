using WireCheck.Rules.Expressions;
using WireCheck.Text;

namespace WireCheck.Rules;

/// <summary>The wording of every error in a rule set or in the settings of a description.</summary>
internal static class RuleProblemWords
{
    internal static string UnknownFact(string scope, string name, string kind, IEnumerable<string> known) =>
        $"'{scope}.{name}' is no fact of a {kind}{Nearest(name, known, n => $"{scope}.{n}")}";

    internal static string UnknownSetting(string name, IEnumerable<string> known) =>
        $"'{name}' is no setting of the rule sets in use{Nearest(name, known)}";

    internal static string UnknownFunction(string name) =>
        $"'{name}' is no function or filter that rules may use{Nearest(name, RuleFunctions.All.Keys)}";

    internal static string UnknownName(string name, IEnumerable<string> known) =>
        $"'{name}' is nothing a rule knows; facts are written it.name or pack.name, thresholds settings.name{Nearest(name, known)}";

    internal static string BareRoot(string name) => $"'{name}' alone is no value; write {name}.name";

    internal static string NotAllowed(string text) =>
        $"'{text}' cannot stand in a rule; allowed are facts, settings, numbers, words, comparisons, arithmetic and the listed functions";

    internal static string WantsFilter(string text) =>
        $"after the bar stands the name of a filter, not '{text}'; a filtered value that is compared stands in brackets: (it.names | size) > 1";

    internal static string StatementNotAllowed() =>
        "only if, else, for over a list of names, and values can stand in the words of a rule";

    internal static string NotOneExpression() => "this must be a single expression";

    internal static string Syntax(string message) => $"this is no valid expression: {message}";

    internal static string WantsKind(string what, string wanted, ExpressionType got) => $"{what} must be {wanted}; it is {got.InWords}";

    internal static string DifferentUnits(string text, string left, string right) =>
        $"'{text}' mixes units: {UnitInWords(left)} on the left, {UnitInWords(right)} on the right";

    internal static string DifferentKinds(string text, ExpressionType left, ExpressionType right) =>
        $"'{text}' compares {left.InWords} with {right.InWords}";

    internal static string FilterUnit(string filter, string wanted, string got) =>
        $"'{filter}' writes {UnitInWords(wanted)}; what stands before it is in {UnitInWords(got)}";

    internal static string ArgumentCount(string function, int wanted, int got) =>
        $"'{function}' takes {wanted} values, the one before the bar counted; here are {got}";

    internal static string BareNumber(string text) =>
        $"the number '{text}' needs a filter that writes its unit, such as {text} | amps";

    internal static string BareList(string text) => $"the list '{text}' needs the filter list: {text} | list";

    internal static string BareYesNo(string text) => $"'{text}' is a yes or no; use it in an if, or with the filter yes_no";

    internal static string Missing(string what, string key) => $"{what} has no '{key}'";

    internal static string BadEditKey(string key) =>
        $"'{key}' is no key of a description; write the keys down to the value with dots between, such as holder.rating";

    internal static string UnknownSafer(string word) => $"'{word}' is neither larger nor smaller";

    internal static string UnknownKey(string key, IEnumerable<string> known) => $"'{key}' is no key here{Nearest(key, known)}";

    internal static string WantsMapping(string what, YamlNode got) => $"{what} must be a mapping of keys to values; it is {got.InWords}";

    internal static string WantsList(string what, YamlNode got) => $"{what} must be a list; it is {got.InWords}";

    internal static string WantsText(string key, YamlNode got) => $"'{key}' must be a single value; it is {got.InWords}";

    internal static string BadRuleId(string id) => $"'{id}' is no rule id: small letters and digits in words joined by '-'";

    internal static string BadSettingName(string name) => $"'{name}' is no setting name: small letters and digits in words joined by '_'";

    internal static string DuplicateRule(string id, Position first) => $"the rule '{id}' stands twice; it stood first at {first}";

    internal static string UnknownKind(string kind, IEnumerable<string> known) => $"'{kind}' is no kind that rules can judge{Nearest(kind, known)}";

    internal static string UnknownSeverity(string word) =>
        $"'{word}' is no severity; it is one of {string.Join(", ", SeverityWords.All)}{Nearest(word, SeverityWords.All)}";

    internal static string UnknownStanding(string word) =>
        $"'{word}' is no standing; it is one of {string.Join(", ", Knowledge.StandingWords.All)}{Nearest(word, Knowledge.StandingWords.All)}";

    internal static string UnknownRelated(string id, IEnumerable<string> known) => $"'{id}' is no rule of this set{Nearest(id, known)}";

    internal static string UnknownSet(string name, IEnumerable<string> known) =>
        $"there is no rule set '{name}'{(NearestName.Find(name, known) is string near ? $"; did you mean '{near}'?" : ".")} A set of your own is written as a path beside the description, such as ./my-rules";

    internal static string OutsideFolder(string path) => $"the rule set '{path}' lies outside the description's folder; it is not read";

    internal static string NoSuchPath(string path) => $"there is no file or folder '{path}' beside the description";

    internal static string TooManyFiles(string path, int most) => $"the rule set '{path}' holds more than {most} files";

    internal static string TooLarge(int characters) => $"the file is too large: at most {characters} characters are read";

    internal static string EmptySet(string path) => $"the rule set '{path}' holds no rules";

    internal static string ExtendsItself(string name) => $"the rule set '{name}' extends itself";

    internal static string SettingValue(string name, string text, string unit, string example) =>
        $"'{text}' is no value for the setting '{name}': it wants {(unit.Length == 0 ? "a percentage or a bare number" : $"a value in {unit}")}, such as {example}";

    internal static string UnknownUnit(string unit) => $"'{unit}' is no unit a setting can have";

    internal static string DifferentSettings(string name, string first, string second) =>
        $"the setting '{name}' is {first} in one rule set and {second} in another; give it under 'settings'";

    internal static string WhileRunning(string rule, string subject, string reason) =>
        $"the rule '{rule}' could not be run on '{subject}': {reason}";

    private static string Nearest(string written, IEnumerable<string> known, Func<string, string>? show = null) =>
        NearestName.Find(written, known) is string near ? $"; did you mean '{(show is null ? near : show(near))}'?" : "";

    private static string UnitInWords(string unit) => unit.Length == 0 ? "a pure number" : unit;
}
