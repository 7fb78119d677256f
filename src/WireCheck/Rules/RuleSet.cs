namespace WireCheck.Rules;

/// <summary>Rules that belong together, with their settings.</summary>
/// <param name="Name">Name of the set: that of a folder under <c>rules/sets</c>, or the path the description wrote.</param>
/// <param name="Title">Title in one line.</param>
/// <param name="Description">What it is for.</param>
/// <param name="Rules">Rules in the order of their files (by name) and within them; those of an extended set first.</param>
/// <param name="Settings">Settings by name, those of an extended set included.</param>
public sealed record RuleSet(
    string Name,
    string Title,
    string Description,
    IReadOnlyList<Rule> Rules,
    IReadOnlyDictionary<string, RuleSetting> Settings);
