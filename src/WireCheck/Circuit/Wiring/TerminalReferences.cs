using WireCheck.Description;
using WireCheck.Description.Kinds;

namespace WireCheck.Circuit.Wiring;

/// <summary>Every place of a description that names a terminal.</summary>
public static class TerminalReferences
{
    /// <summary>Ends of conductors, joints and outside links, the bond of the case, and terminals read on the bench.</summary>
    public static IEnumerable<TerminalReference> In(Pack pack) =>
    [
        .. pack.Conductors.SelectMany(c => new[] { c.From, c.To }),
        .. pack.Of<Joint>().SelectMany(j => new[] { j.First, j.Second }),
        .. pack.OutsideLinks.SelectMany(l => new[] { l.First, l.Second }),
        .. pack.Surroundings.Enclosure?.BondedTo is { } bond ? [bond] : Array.Empty<TerminalReference>(),
        .. pack.Measured.SelectMany(m => m.Between),
    ];

    /// <summary>True when a conductor or joint ends on the terminal.</summary>
    public static bool IsWired(Pack pack, string partId, string terminal) =>
        pack.Conductors.Any(c => Is(c.From, partId, terminal) || Is(c.To, partId, terminal))
        || pack.Of<Joint>().Any(j => Is(j.First, partId, terminal) || Is(j.Second, partId, terminal));

    private static bool Is(TerminalReference reference, string partId, string terminal) =>
        reference.PartId == partId && reference.Terminal == terminal;
}
