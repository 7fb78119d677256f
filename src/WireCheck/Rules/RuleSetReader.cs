using System.Text.RegularExpressions;
using WireCheck.Knowledge;
using WireCheck.Text;

namespace WireCheck.Rules;

/// <summary>One file of a rule set.</summary>
/// <param name="Name">Name as messages print it.</param>
/// <param name="Text">Its text.</param>
internal sealed record RuleFile(string Name, string Text);

/// <summary>
/// Reads a rule set from its files. A file is a list of rules, or a mapping with the set's <c>title</c>,
/// <c>description</c>, <c>extends</c>, <c>settings</c> and perhaps <c>rules</c>.
/// </summary>
internal sealed partial class RuleSetReader(FactVocabulary vocabulary, Func<string, RuleSet?> findExtended, ProblemList problems)
{
    /// <summary>Bounds on one rule file: a million characters, 20 deep, 100,000 values.</summary>
    internal static YamlLimits Limits { get; } = new(1_000_000, 20, 100_000);

    private static readonly string[] SetKeys = ["title", "description", "extends", "settings", "rules"];

    private readonly Dictionary<string, RuleSetting> _settings = new(StringComparer.Ordinal);
    private readonly List<YamlNode> _ruleLists = [];
    private string? _title;
    private string? _description;
    private RuleSet? _extended;

    /// <summary>The set, or null when it holds no rules; problems are noted either way.</summary>
    internal RuleSet? Read(string name, IReadOnlyList<RuleFile> files)
    {
        foreach (RuleFile file in files)
        {
            switch (YamlReader.Read(file.Name, file.Text, Limits, problems))
            {
                case null:
                    break;
                case YamlMap map:
                    ReadHead(map);
                    break;
                case { } other:
                    _ruleLists.Add(other);
                    break;
            }
        }

        RuleReader reader = new(name, vocabulary, _settings, problems);
        List<Rule> rules = [.. _extended?.Rules ?? []];
        rules.ForEach(reader.Remember);
        rules.AddRange(_ruleLists.SelectMany(reader.ReadFile));
        if (rules.Count == 0)
        {
            NoteWhenEmpty(name, files);
            return null;
        }

        return new RuleSet(name, _title ?? name, _description ?? "", rules, _settings);
    }

    /// <summary>Compiles every expression of a set and looks up every related id.</summary>
    internal static void CheckAll(RuleSet set, ProblemList problems)
    {
        List<string> ids = [.. set.Rules.Select(rule => rule.Id)];
        foreach (Rule rule in set.Rules)
        {
            rule.When?.Compile(problems);
            rule.Require.Compile(problems);
            rule.Says.Compile(problems);
            rule.Mend.Compile(problems);
            foreach (RuleEdit edit in rule.Edits)
            {
                edit.When?.Compile(problems);
                edit.Part?.Compile(problems);
                edit.Value.Compile(problems);
            }

            foreach (GradedSeverity grade in rule.Graded)
            {
                grade.When.Compile(problems);
            }

            foreach (string related in rule.Related.Where(id => !ids.Contains(id)))
            {
                problems.Add(rule.Position, RuleProblemWords.UnknownRelated(related, ids));
            }
        }
    }

    /// <summary>A set whose rules are all wrong is not called empty: its rules have problems of their own.</summary>
    private void NoteWhenEmpty(string name, IReadOnlyList<RuleFile> files)
    {
        if (!_ruleLists.Any(list => list is not YamlList { Items.Count: 0 }))
        {
            problems.Add(new Position(files.Count > 0 ? files[0].Name : name, 1, 1), RuleProblemWords.EmptySet(name));
        }
    }

    private void ReadHead(YamlMap map)
    {
        RuleFields fields = new(map, "the rule set", SetKeys, problems);
        _title ??= fields.Required("title")?.Text;
        _description ??= fields.Optional("description")?.Text.Trim();
        if (fields.Optional("extends") is { } extends && _extended is null)
        {
            Extend(extends);
        }

        if (map.Find("rules") is { } rules)
        {
            _ruleLists.Add(rules);
        }

        switch (map.Find("settings"))
        {
            case null:
                break;
            case YamlMap settings:
                ReadSettings(settings);
                break;
            case { } other:
                problems.Add(other.Position, RuleProblemWords.WantsMapping("'settings'", other));
                break;
        }
    }

    private void Extend(YamlScalar extends)
    {
        _extended = findExtended(extends.Text);
        if (_extended is null)
        {
            problems.Add(extends.Position, RuleProblemWords.UnknownSet(extends.Text, RuleSetLibrary.Names));
            return;
        }

        foreach (RuleSetting setting in _extended.Settings.Values)
        {
            _settings.TryAdd(setting.Name, setting);
        }
    }

    private void ReadSettings(YamlMap settings)
    {
        foreach (YamlEntry entry in settings.Entries)
        {
            string name = entry.Key.Text;
            if (!NameForm().IsMatch(name))
            {
                problems.Add(entry.Key.Position, RuleProblemWords.BadSettingName(name));
            }
            else if (entry.Value is YamlMap map)
            {
                ReadSetting(name, entry.Key.Position, map);
            }
            else
            {
                problems.Add(entry.Value.Position, RuleProblemWords.WantsMapping($"the setting '{name}'", entry.Value));
            }
        }
    }

    private void ReadSetting(string name, Position position, YamlMap map)
    {
        RuleFields fields = new(map, $"the setting '{name}'", ["value", "unit", "means", "source"], problems);
        YamlScalar? written = fields.Required("value");
        string unit = fields.Optional("unit")?.Text ?? "";
        YamlScalar? means = fields.Required("means");
        Source? source = fields.Source();
        if (!SettingValues.KnownUnits.Contains(unit))
        {
            problems.Add(position, RuleProblemWords.UnknownUnit(unit));
            return;
        }

        if (written is null || means is null || source is null)
        {
            return;
        }

        if (SettingValues.Read(written.Text, unit) is not double value)
        {
            problems.Add(written.Position, RuleProblemWords.SettingValue(name, written.Text, unit, SettingValues.ExampleOf(unit)));
            return;
        }

        _settings[name] = new RuleSetting(name, value, unit, written.Text, means.Text.Trim(), source, position);
    }

    [GeneratedRegex("^[a-z][a-z0-9]*(_[a-z0-9]+)*$")]
    private static partial Regex NameForm();
}
