using WireCheck.Text;

namespace WireCheck.Description;

/// <summary>What came of reading a description.</summary>
/// <param name="Pack">The box; null when anything is wrong, so that nothing is computed from half a description.</param>
/// <param name="Problems">Everything that is wrong, in the order of the file.</param>
public sealed record ReadResult(Pack? Pack, IReadOnlyList<Problem> Problems);
