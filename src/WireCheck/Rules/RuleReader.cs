using System.Text.RegularExpressions;
using WireCheck.Knowledge;
using WireCheck.Rules.Expressions;
using WireCheck.Text;

namespace WireCheck.Rules;

/// <summary>Reads the rules of one set from the nodes of its files; every problem at once.</summary>
internal sealed partial class RuleReader(
    string setName, FactVocabulary vocabulary, IReadOnlyDictionary<string, RuleSetting> settings, ProblemList problems)
{
    private static readonly string[] RuleKeys =
        ["id", "for", "severity", "severity_when", "title", "when", "require", "says", "mend", "edit", "why", "source", "related"];

    private readonly Dictionary<string, Position> _seen = new(StringComparer.Ordinal);

    /// <summary>Notes the rules of an extended set, so that an id standing in both is found.</summary>
    internal void Remember(Rule rule) => _seen.TryAdd(rule.Id, rule.Position);

    /// <summary>The rules of one file: a list of rules.</summary>
    internal IReadOnlyList<Rule> ReadFile(YamlNode root)
    {
        if (root is not YamlList list)
        {
            problems.Add(root.Position, RuleProblemWords.WantsList("a file of rules", root));
            return [];
        }

        return [.. list.Items.SelectMany(ReadRule)];
    }

    /// <summary>One rule for each kind that <c>for</c> names; they share the id.</summary>
    private IEnumerable<Rule> ReadRule(YamlNode node)
    {
        if (node is not YamlMap map)
        {
            problems.Add(node.Position, RuleProblemWords.WantsMapping("a rule", node));
            return [];
        }

        string what = map.Find("id") is YamlScalar name ? $"the rule '{name.Text}'" : "the rule";
        RuleFields fields = new(map, what, RuleKeys, problems);
        YamlScalar? id = ReadId(fields);
        IReadOnlyList<YamlScalar> kinds = ReadKinds(map, fields);
        Source? source = fields.Source();
        return id is null || source is null ? [] : [.. kinds.Select(kind => ReadFor(kind, id, source, fields)).OfType<Rule>()];
    }

    private Rule? ReadFor(YamlScalar kind, YamlScalar id, Source source, RuleFields fields)
    {
        Severity? severity = ReadSeverity(fields.Required("severity"));
        RuleNames names = new(vocabulary, kind.Text, settings);
        IReadOnlyList<GradedSeverity> graded = [.. fields.Items("severity_when").Select(n => ReadGrade(n, names)).OfType<GradedSeverity>()];
        YamlScalar? title = fields.Required("title");
        YamlScalar? when = fields.Optional("when");
        YamlScalar? require = fields.Required("require");
        YamlScalar? says = fields.Required("says");
        YamlScalar? mend = fields.Required("mend");
        YamlScalar? why = fields.Required("why");
        if (severity is null || title is null || require is null || says is null || mend is null || why is null)
        {
            return null;
        }

        return new Rule
        {
            Id = id.Text,
            SetName = setName,
            Kind = kind.Text,
            Severity = severity.Value,
            Graded = graded,
            Title = title.Text,
            When = when is null ? null : new RuleExpression(when, names),
            Require = new RuleExpression(require, names),
            Says = new RuleWords(says, names),
            Mend = new RuleWords(mend, names),
            Edits = [.. fields.OneOrMore("edit").Select(n => RuleEditReader.Read(n, names, problems)).OfType<RuleEdit>()],
            Why = why.Text.Trim(),
            Source = source,
            Related = [.. fields.Items("related").OfType<YamlScalar>().Select(s => s.Text)],
            Position = id.Position,
        };
    }

    private YamlScalar? ReadId(RuleFields fields)
    {
        if (fields.Required("id") is not { } id)
        {
            return null;
        }

        if (!IdForm().IsMatch(id.Text))
        {
            problems.Add(id.Position, RuleProblemWords.BadRuleId(id.Text));
            return null;
        }

        if (!_seen.TryAdd(id.Text, id.Position))
        {
            problems.Add(id.Position, RuleProblemWords.DuplicateRule(id.Text, _seen[id.Text]));
            return null;
        }

        return id;
    }

    /// <summary>The kinds under <c>for</c>: one word, or a list of words.</summary>
    private List<YamlScalar> ReadKinds(YamlMap map, RuleFields fields)
    {
        List<YamlScalar> kinds = map.Find("for") is YamlList
            ? [.. fields.Items("for").OfType<YamlScalar>()]
            : [.. new[] { fields.Required("for") }.OfType<YamlScalar>()];
        foreach (YamlScalar kind in kinds.Where(k => !vocabulary.HasKind(k.Text)))
        {
            problems.Add(kind.Position, RuleProblemWords.UnknownKind(kind.Text, vocabulary.Kinds));
        }

        return [.. kinds.Where(k => vocabulary.HasKind(k.Text))];
    }

    private Severity? ReadSeverity(YamlScalar? word)
    {
        Severity? severity = word is null ? null : SeverityWords.Find(word.Text);
        if (word is not null && severity is null)
        {
            problems.Add(word.Position, RuleProblemWords.UnknownSeverity(word.Text));
        }

        return severity;
    }

    private GradedSeverity? ReadGrade(YamlNode node, RuleNames names)
    {
        if (node is not YamlMap map)
        {
            problems.Add(node.Position, RuleProblemWords.WantsMapping("an item of 'severity_when'", node));
            return null;
        }

        RuleFields fields = new(map, "the item of 'severity_when'", ["when", "severity"], problems);
        YamlScalar? when = fields.Required("when");
        Severity? severity = ReadSeverity(fields.Required("severity"));
        return when is null || severity is null ? null : new GradedSeverity(new RuleExpression(when, names), severity.Value);
    }

    [GeneratedRegex("^[a-z][a-z0-9]*(-[a-z0-9]+)*$")]
    private static partial Regex IdForm();
}
