using WireCheck.Description.Kinds;
using WireCheck.Quantities;
using WireCheck.Text;

namespace WireCheck.Description;

/// <summary>
/// The wording of every error in a description except those of its YAML. A message names the part, what is
/// wrong and what would be right; the place is added by who prints it.
/// </summary>
internal static class InputMessages
{
    internal static string NotAMapping(string subject, string what) =>
        $"{subject} must be a mapping of keys to values; here stands {what}";

    internal static string NotAList(string subject, string key, string what) =>
        $"'{key}' of {subject} must be a list; here stands {what}";

    internal static string NotASingleValue(string subject, string key, string what) =>
        $"'{key}' of {subject} must be a single value; here stands {what}";

    internal static string UnknownKey(string subject, string key, IReadOnlyCollection<string> known) =>
        char.IsAsciiDigit(key.FirstOrDefault())
            ? $"{subject} has no key '{key}'; between {{ and }} a comma ends a value, and decimals are written with a point"
            : $"{subject} has no key '{key}'; {NearestOrAll(key, known)}";

    internal static string UnknownSection(string key, IReadOnlyCollection<string> known) =>
        $"there is no section '{key}'; {NearestOrAll(key, known)}";

    internal static string Missing(string subject, string words, string path, string example, bool hasClasses) =>
        $"{subject} has no {words}; write `{Nested(path, example)}`" + (hasClasses ? " or name a part class with `part:`" : "");

    internal static string MissingForAll(string subject, string words, string key, string example) =>
        $"{subject} has no {words}; write `{key}: {example}`, or for all at once `defaults: {{conductor: {{{key}: {example}}}}}`";

    internal static string MissingSection(string key, string example) =>
        $"the description has no '{key}'; write `{example}`";

    internal static string UnknownLanguage(string written) =>
        $"language {written} is unknown; this program reads language 1";

    internal static string UnknownWord(string subject, string key, string written, IReadOnlyCollection<string> known) =>
        $"'{key}' of {subject} cannot be '{written}'; {NearestOrAll(written, known)}";

    internal static string NotYesOrNo(string subject, string key, string written) =>
        $"'{key}' of {subject} is '{written}'; write yes or no";

    internal static string NotACount(string subject, string key, string written, int lowest, int highest) =>
        $"'{key}' of {subject} is '{written}'; a whole number from {lowest} to {highest} is due";

    internal static string NotADate(string subject, string key, string written) =>
        $"'{key}' of {subject} is '{written}'; a date is due, such as 2027-06-01";

    internal static string NotAPlainNumber(string subject, string key, string written) =>
        $"'{key}' of {subject} is '{written}'; a plain number above zero is due, such as 1.2";

    internal static string EmptyText(string subject, string key) => $"'{key}' of {subject} is empty";

    internal static string TooLong(string subject, string key, int most) =>
        $"'{key}' of {subject} is longer than {most} characters";

    internal static string UnknownClass(string subject, string className, string section, IReadOnlyCollection<string> known) =>
        $"{subject} names the part class '{className}', which the library of {section} does not have; {NearestOrAll(className, known)}";

    internal static string ClassLoop(string subject, IEnumerable<string> chain) =>
        $"{subject} names a part class that leads back to itself: {string.Join(" > ", chain)}";

    internal static string BadId(string id) =>
        $"'{Short(id)}' cannot be an id; use letters, digits, - and _, at least one letter, at most {IdRules.Longest} characters";

    internal static string ReservedId(string id) =>
        $"'{id}' cannot be an id; it is a name of its own, like {string.Join(", ", IdRules.Reserved)}";

    internal static string DuplicateId(string id, string section, Position first) =>
        $"the id '{id}' is already used in '{section}', line {first.Line}; ids are unique in the whole file";

    internal static string ReservedMode(string id) =>
        $"'{id}' cannot be the name of a mode; that state is always computed";

    internal static string NotATerminal(string subject, string key, string written) =>
        $"'{key}' of {subject} is '{Short(written)}'; an end is written `id.terminal`, or the id alone of a busbar";

    internal static string UnknownPart(string subject, string key, string id, IEnumerable<string> ids) =>
        $"'{key}' of {subject} names '{Short(id)}', which is no part of this box{Nearest(id, ids)}";

    internal static string UnknownTerminal(TerminalReference reference, Part part) =>
        $"{Short(reference.ToString())}: {WithArticle(part.Kind)} has {string.Join(' ', part.Terminals)}{Nearest(reference.Terminal, part.Terminals)}";

    internal static string NoTerminals(TerminalReference reference, string kind) =>
        $"{Short(reference.ToString())}: a {kind} has no terminals";

    internal static string WhichTerminal(string subject, string key, Part part) =>
        $"'{key}' of {subject} is '{part.Id}', which has several terminals; say which: {string.Join(' ', part.Terminals.Select(t => $"{part.Id}.{t}"))}";

    internal static string BadStud(TerminalReference reference, int? studs) => studs is int count
        ? $"{Short(reference.ToString())}: this busbar has the studs 1 to {count}"
        : $"{Short(reference.ToString())}: the studs of a busbar are numbered from 1";

    internal static string WrongKind(string subject, string key, Part part, IEnumerable<string> due) =>
        $"'{key}' of {subject} names '{part.Id}', {WithArticle(part.Kind)}; it can be {string.Join(" or ", due.Select(WithArticle))}";

    internal static string SeveralLegs(string subject, string key, string id, int legs) =>
        $"'{key}' of {subject} names '{id}', which has {legs} legs; say which: {id}/1 to {id}/{legs}";

    internal static string UnknownMode(string subject, string written, IReadOnlyCollection<string> known) =>
        $"'mode' of {subject} names '{Short(written)}', which is no mode of this box; {NearestOrAll(written, known)}";

    internal static string SameEnds(string subject, string terminal) =>
        $"{subject} begins and ends at {terminal}";

    internal static string LegCount(string subject, int lengths, int legs) =>
        $"{subject} has {Count(lengths, "length")} for {Count(legs, "leg")}; write one for all, or one each";

    internal static string EndCount(string subject, int ends) =>
        $"'ends' of {subject} lists {Count(ends, "class", "classes")}; write one for both ends, or [from, to]";

    internal static string NeedsTwo(string subject, string key, int count) =>
        $"'{key}' of {subject} must list two terminals; it lists {count}";

    internal static string NoLegs(string subject) => $"'to' of {subject} is an empty list; name at least one end";

    internal static string OneOfLoad(string subject, IReadOnlyCollection<string> given) => given.Count == 0
        ? $"{subject} has no power, current or resistance; write one of them, such as `power: 45 W`"
        : $"{subject} gives {string.Join(" and ", given)}; write only one of power, current and resistance";

    internal static string NoLinks(string subject) =>
        $"{subject} has groups in series but no links; write `links: {{section: 20 x 2 mm, length: 70 mm}}` or `link_resistance: 0.1 mΩ`";

    internal static string TooManyIndividual(string subject, int given, int cells) =>
        $"{subject} lists {Count(given, "measured cell")}; the bank has {cells}";

    internal static string TooManyCells(string subject, int cells, int most) =>
        $"{subject} has {cells} cells; at most {most} are solved";

    internal static string TooManyInSeries(string subject, int series, int most) =>
        FormattableString.Invariant($"{subject} has {series} groups in series; at most {most} are solved");

    internal static string ReadingNeedsOne(string subject) =>
        $"{subject} must say either `between: [terminal, terminal]` with a voltage or `through: id` with a current";

    internal static string NoBattery() =>
        "there is no battery, so there is no circuit; add `cells: {bank: {part: lfp-prismatic-100ah, series: 4}}`";

    internal static string ShortedBank(string bank, IEnumerable<string> by) =>
        $"{bank} is shorted by a zero resistance between its poles: {string.Join(", ", by)}";

    internal static string SurgeBelowPower(string subject, double surge, double steady, bool ofClass) =>
        $"the surge of {subject} is {QuantityText.WithPrefix(surge, "W")}{(ofClass ? " by its class" : "")}, less than the {QuantityText.WithPrefix(steady, "W")} that it has for hours; "
        + (ofClass ? "write its surge too" : "write the surge that belongs to this power");

    internal static string PanelVoltage(Panel panel) =>
        $"the maximum_power_voltage of {panel.Id} is {QuantityText.WithPrefix(panel.MaximumPowerVoltage.Value.Volts, "V")}, not below its open_circuit of {QuantityText.WithPrefix(panel.OpenCircuit.Value.Volts, "V")}; the label of a panel has both, and open circuit is the higher";

    internal static string PanelCurrent(Panel panel) =>
        $"the maximum_power_current of {panel.Id} is {QuantityText.WithPrefix(panel.MaximumPowerCurrent.Value.Amperes, "A")}, not below its short_circuit of {QuantityText.WithPrefix(panel.ShortCircuit.Value.Amperes, "A")}; the label of a panel has both, and short circuit is the higher";

    internal static string PanelPower(Panel panel) =>
        $"the maximum-power point of {panel.Id} lies too low for any panel: {QuantityText.WithPrefix(panel.MaximumPowerVoltage.Value.Volts, "V")} of {QuantityText.WithPrefix(panel.OpenCircuit.Value.Volts, "V")} and {QuantityText.WithPrefix(panel.MaximumPowerCurrent.Value.Amperes, "A")} of {QuantityText.WithPrefix(panel.ShortCircuit.Value.Amperes, "A")}; compare the four values with its label";

    internal static string AgainstSchema(string path, string? what, string? example) =>
        $"'{Short(path)}' does not fit the schema of descriptions"
        + (what is null ? "" : $"; it is: {what.TrimEnd('.')}")
        + (example is null ? "" : $", such as {example}");

    /// <summary>A fault in a value, with what would be right.</summary>
    internal static string Value(string subject, string key, QuantityFault fault, string due, string example)
    {
        string where = $"'{key}' of {subject}";
        string written = Short(fault.Written);
        return fault.Kind switch
        {
            QuantityFaultKind.NotANumber => $"{where} is '{written}'; {due} is due, such as {example}",
            QuantityFaultKind.DecimalComma => $"{where} is '{written}'; decimals are written with a point",
            QuantityFaultKind.NotFinite => $"{where} is '{written}', which no part can have; {due} is due, such as {example}",
            QuantityFaultKind.NoUnit when fault.Nearest is not null =>
                $"{where} is '{written}' without a unit; write {fault.Nearest} AWG if that gauge is meant",
            QuantityFaultKind.NoUnit => $"{where} is '{written}' without a unit; {due} is due, such as {example}",
            QuantityFaultKind.UnknownUnit when fault.Nearest is not null =>
                $"{where} has the unknown unit '{written}'; nearest is '{fault.Nearest}', and {due} is due, such as {example}",
            QuantityFaultKind.UnknownUnit => $"{where} has the unknown unit '{written}'; {due} is due, such as {example}",
            QuantityFaultKind.OtherDimension => $"{where}: {written} is {fault.Found?.Name}; {due} is due, such as {example}",
            QuantityFaultKind.Negative => $"{where} is {written}; it cannot be negative",
            QuantityFaultKind.Zero => $"{where} is {written}; it must be above zero",
            QuantityFaultKind.TooHigh => $"{where} is {written}; it cannot be more than 100 %",
            QuantityFaultKind.BelowAbsoluteZero => $"{where} is {written}; nothing is colder than -273.15 °C",
            QuantityFaultKind.NotARange => $"{where} is '{written}'; a range is due, such as {example}",
            QuantityFaultKind.Reversed => $"{where} is {written}; the lower end comes first",
            QuantityFaultKind.WrongSides => $"{where} is '{written}'; {due} is due, such as {example}",
            QuantityFaultKind.UnknownSize when fault.Nearest is not null => $"{where} is '{written}'; write {fault.Nearest}",
            _ => $"{where} is '{written}'; sizes are AWG 24 to 4/0 (such as 8 AWG, 1/0 AWG) and 0.2 to 120 mm²",
        };
    }

    /// <summary>As it is written in the file: <c>coil.voltage</c> becomes <c>coil: {voltage: 12 V}</c>.</summary>
    private static string Nested(string path, string example)
    {
        int dot = path.IndexOf('.', StringComparison.Ordinal);
        return dot < 0 ? $"{path}: {example}" : $"{path[..dot]}: {{{Nested(path[(dot + 1)..], example)}}}";
    }

    private static string NearestOrAll(string written, IReadOnlyCollection<string> known)
    {
        if (NearestName.Find(written, known) is string nearest)
        {
            return $"nearest is '{nearest}'";
        }

        const int MostListed = 30;
        string more = known.Count > MostListed ? " …" : "";
        return $"it can be {string.Join(", ", known.Take(MostListed))}{more}";
    }

    private static string Nearest(string written, IEnumerable<string> known) =>
        NearestName.Find(written, known) is string nearest ? $"; nearest is {nearest}" : "";

    private static string WithArticle(string kind) =>
        kind == "cells" ? "a bank of cells" : "aeiou".Contains(kind[0], StringComparison.Ordinal) ? $"an {kind}" : $"a {kind}";

    private static string Count(int number, string one, string? many = null) =>
        number == 1 ? $"1 {one}" : FormattableString.Invariant($"{number} {many ?? one + "s"}");

    private static string Short(string text) => text.Length <= 60 ? text : text[..57] + "…";

    internal static string SettingKey(string setting, string key) =>
        $"settings.{setting} has a value and a reason (because); '{key}' is neither";

    internal static string SettingNeedsReason(string setting) =>
        $"settings.{setting} is written with a reason but gives none; add because: and why the threshold is another here";
}
