using WireCheck.Circuit.Solving;
using WireCheck.Circuit.Topology;

namespace WireCheck.Faults;

/// <summary>Two devices in series, the one nearer to the fault first.</summary>
public sealed class SeriesPair
{
    internal SeriesPair(FaultDevice downstream, FaultDevice upstream)
    {
        Downstream = downstream;
        Upstream = upstream;
    }

    /// <summary>Id of the device nearer to the fault, which alone should open.</summary>
    public string DownstreamId => Downstream.Id;

    /// <summary>Id of the device that should stay closed.</summary>
    public string UpstreamId => Upstream.Id;

    /// <summary>Smallest current of a fault that both carry, A.</summary>
    public double LowestAmps { get; internal set; } = double.PositiveInfinity;

    /// <summary>Largest current of a fault that both carry, A.</summary>
    public double HighestAmps { get; internal set; }

    /// <summary>
    /// Smallest current in that range at which the upstream device may begin to melt before the downstream one has cleared, A;
    /// null when their bands are apart over the whole range.
    /// </summary>
    public double? OverlapFrom { get; private set; }

    /// <summary>Largest such current, A.</summary>
    public double? OverlapTo { get; private set; }

    /// <summary>Rating of the upstream device over that of the downstream one.</summary>
    public double Ratio => Upstream.Band.Rating / Downstream.Band.Rating;

    internal FaultDevice Downstream { get; }

    internal FaultDevice Upstream { get; }

    /// <summary>Currents at which the two bands are compared, evenly over the logarithm of the range.</summary>
    private const int Compared = 64;

    internal void Compare()
    {
        for (int i = 0; i <= Compared; i++)
        {
            double amps = LowestAmps * Math.Pow(HighestAmps / LowestAmps, i / (double)Compared);
            double melts = Upstream.Band.Fastest(amps);
            if (double.IsFinite(melts) && melts <= Downstream.Band.Slowest(amps))
            {
                OverlapFrom ??= amps;
                OverlapTo = amps;
            }
        }
    }
}

/// <summary>Finds the pairs of devices that carry the same fault current, and the range of that current.</summary>
internal sealed class SeriesPairs(FaultDevice[] devices, WiringGraph graph, double sameCurrent)
{
    private readonly Dictionary<string, SeriesPair> _pairs = new(StringComparer.Ordinal);
    private readonly List<FaultDevice> _way = [];

    /// <summary>Notes the devices in the way of the short that the network has just been solved with.</summary>
    internal void Note(ShortedNetwork network, FaultOutcome outcome)
    {
        _way.Clear();
        foreach (FaultDevice device in devices)
        {
            if (Math.Abs(network.Amps[device.Contact.Index]) >= sameCurrent * outcome.Amps)
            {
                _way.Add(device);
            }
        }

        if (_way.Count < 2)
        {
            return;
        }

        WalkFrom(outcome.From);
        _way.Sort((a, b) => Distance(a).CompareTo(Distance(b)));
        for (int near = 0; near < _way.Count; near++)
        {
            for (int far = near + 1; far < _way.Count; far++)
            {
                Widen(_way[near], _way[far], outcome.Amps);
            }
        }
    }

    /// <summary>Every pair with its bands compared, by the downstream device and then the upstream one.</summary>
    internal IReadOnlyList<SeriesPair> Compared()
    {
        List<SeriesPair> pairs = [.. _pairs.Values];
        pairs.Sort((a, b) => string.CompareOrdinal(a.DownstreamId, b.DownstreamId) is var order and not 0
            ? order
            : string.CompareOrdinal(a.UpstreamId, b.UpstreamId));
        pairs.ForEach(p => p.Compare());
        return pairs;
    }

    /// <summary>Ways from the fault to a device; what only a battery joins to it is farthest.</summary>
    private int Distance(FaultDevice device) => Math.Min(_steps[device.Contact.A], _steps[device.Contact.B]);

    /// <summary>Counts the ways from a node to every other that lies on the path of current, until the devices in the way are found.</summary>
    private void WalkFrom(int start)
    {
        Array.Fill(_steps, int.MaxValue);
        _steps[start] = 0;
        int last = 0;
        _open[0] = start;
        for (int next = 0; next <= last && _way.Exists(d => Distance(d) == int.MaxValue); next++)
        {
            int node = _open[next];
            foreach (WiringEdge edge in graph.At(node))
            {
                int other = edge.Other(node);
                if (_steps[other] == int.MaxValue)
                {
                    _steps[other] = _steps[node] + 1;
                    _open[++last] = other;
                }
            }
        }
    }

    private readonly int[] _steps = new int[graph.NodeCount];
    private readonly int[] _open = new int[graph.NodeCount];

    private void Widen(FaultDevice near, FaultDevice far, double amps)
    {
        string key = $"{near.Id}\n{far.Id}";
        if (!_pairs.TryGetValue(key, out SeriesPair? pair))
        {
            pair = new SeriesPair(near, far);
            _pairs.Add(key, pair);
        }

        pair.LowestAmps = Math.Min(pair.LowestAmps, amps);
        pair.HighestAmps = Math.Max(pair.HighestAmps, amps);
    }
}
