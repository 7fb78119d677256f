namespace WireCheck.Circuit.Topology;

/// <summary>A way that current can take through a part, whatever the position of switches and contacts.</summary>
/// <param name="PartId">The part it belongs to.</param>
/// <param name="From">Node at one end.</param>
/// <param name="To">Node at the other end.</param>
public sealed record WiringEdge(string PartId, int From, int To)
{
    /// <summary>Current can flow only from <see cref="From"/> to <see cref="To"/>, as through a diode.</summary>
    public bool OneWay { get; init; }

    /// <summary>Rated current of the fuse or breaker that the way passes, A; null when it passes none.</summary>
    public double? FuseAmps { get; init; }

    /// <summary>Length of wire, m; 0 for anything else.</summary>
    public double Metres { get; init; }

    /// <summary>True when the wire has a sleeve or conduit over its length.</summary>
    public bool Sleeved { get; init; }

    /// <summary>Resistance of a resistor that limits what can flow, Ω; null where nothing limits.</summary>
    public double? LimitingOhms { get; init; }

    /// <summary>The other end.</summary>
    public int Other(int node) => node == From ? To : From;
}
