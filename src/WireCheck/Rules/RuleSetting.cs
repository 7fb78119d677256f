using WireCheck.Knowledge;
using WireCheck.Text;

namespace WireCheck.Rules;

/// <summary>A threshold of a rule set, which a description may override under <c>settings</c>.</summary>
/// <param name="Name">snake_case name, used in rules as <c>settings.name</c>.</param>
/// <param name="Value">Value in <paramref name="Unit"/>.</param>
/// <param name="Unit">SI unit, "" for a pure number; a percentage is a pure number.</param>
/// <param name="Written">The value as the rule set writes it.</param>
/// <param name="Means">What it decides, in one sentence.</param>
/// <param name="Source">Where the value comes from.</param>
/// <param name="Position">Where it stands.</param>
public sealed record RuleSetting(
    string Name, double Value, string Unit, string Written, string Means, Source Source, Position Position);
