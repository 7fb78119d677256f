using WireCheck.Text;

namespace WireCheck.Knowledge;

/// <summary>A generic part that fills in what a description leaves out.</summary>
/// <param name="Section">Section of the description it belongs to, such as <c>relays</c>.</param>
/// <param name="Name">Name in <c>part:</c>, such as <c>relay-12v-70a</c>.</param>
/// <param name="Title">In words.</param>
/// <param name="Source">Where its values come from.</param>
/// <param name="Values">The values under the names that a description uses.</param>
public sealed record PartClass(string Section, string Name, string Title, Source Source, YamlMap Values);
