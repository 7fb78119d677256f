namespace WireCheck.Text;

/// <summary>
/// Bounds on a YAML file, so that a description from a stranger cannot eat memory or time. Each has an
/// error that names it.
/// </summary>
/// <param name="Characters">Most characters of a file.</param>
/// <param name="Depth">Deepest nesting of mappings and lists.</param>
/// <param name="Nodes">Most values, lists and mappings, counted after aliases are followed.</param>
public sealed record YamlLimits(int Characters, int Depth, int Nodes)
{
    /// <summary>Ample for a box of ten thousand conductors: 16 million characters, 32 deep, 1,000,000 nodes.</summary>
    public static YamlLimits Default { get; } = new(16_000_000, 32, 1_000_000);
}
