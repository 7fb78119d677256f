using WireCheck.Text;

namespace WireCheck.Description;

/// <summary>What came of reading a description while it is still held against the schema.</summary>
/// <param name="Pack">The box; null when the typed reader found anything wrong.</param>
/// <param name="AllProblems">
/// Waits for the schema and gives everything that is wrong, in the order of the file. A result made of
/// <paramref name="Pack"/> must not be told unless this is empty.
/// </param>
internal sealed record EarlyReadResult(Pack? Pack, Func<IReadOnlyList<Problem>> AllProblems);
