using System.Text.RegularExpressions;
using WireCheck.Rules.Expressions;
using WireCheck.Text;

namespace WireCheck.Rules;

/// <summary>Reads an item of a rule's <c>edit</c>.</summary>
internal static partial class RuleEditReader
{
    private static readonly string[] Keys = ["when", "part", "key", "value", "safer"];

    /// <summary>The edit, or null with problems noted.</summary>
    internal static RuleEdit? Read(YamlNode node, RuleNames names, ProblemList problems)
    {
        if (node is not YamlMap map)
        {
            problems.Add(node.Position, RuleProblemWords.WantsMapping("an item of 'edit'", node));
            return null;
        }

        RuleFields fields = new(map, "the item of 'edit'", Keys, problems);
        YamlScalar? when = fields.Optional("when");
        YamlScalar? part = fields.Optional("part");
        YamlScalar? key = fields.Required("key");
        YamlScalar? value = fields.Required("value");
        YamlScalar? safer = fields.Optional("safer");
        if (key is not null && !KeyForm().IsMatch(key.Text))
        {
            problems.Add(key.Position, RuleProblemWords.BadEditKey(key.Text));
            return null;
        }

        if (safer is not null && safer.Text is not ("larger" or "smaller"))
        {
            problems.Add(safer.Position, RuleProblemWords.UnknownSafer(safer.Text));
            return null;
        }

        return key is null || value is null ? null : new RuleEdit(
            when is null ? null : new RuleExpression(when, names),
            part is null ? null : new RuleWords(part, names),
            key.Text,
            new RuleWords(value, names),
            safer?.Text switch { "larger" => SaferValue.Larger, "smaller" => SaferValue.Smaller, _ => SaferValue.Neither });
    }

    [GeneratedRegex("^[a-z0-9_]+(\\.[a-z0-9_]+)*$")]
    private static partial Regex KeyForm();
}
