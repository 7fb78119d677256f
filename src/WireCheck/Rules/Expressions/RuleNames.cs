namespace WireCheck.Rules.Expressions;

/// <summary>The names an expression of one rule may use.</summary>
/// <param name="Vocabulary">All facts.</param>
/// <param name="Kind">The rule's kind of subject, behind <c>it</c>.</param>
/// <param name="Settings">The settings of the rule's set, behind <c>settings</c>.</param>
internal sealed record RuleNames(FactVocabulary Vocabulary, string Kind, IReadOnlyDictionary<string, RuleSetting> Settings)
{
    internal const string It = "it";
    internal const string Pack = "pack";
    internal const string SettingsName = "settings";

    /// <summary>The words that have members.</summary>
    internal static IReadOnlyList<string> Roots { get; } = [It, Pack, SettingsName];
}
