using WireCheck.Circuit.Elements;
using WireCheck.Circuit.Wiring;
using WireCheck.States;

namespace WireCheck.Standby;

/// <summary>
/// Divides the current that leaves the cells among those who use it up. The currents of a solved state are taken apart into
/// ways from a terminal of a bank back to one: each way carries what its thinnest branch has left, and belongs to the part on
/// it that uses the current up (the input of a converter, else the user with the most voltage; where nothing uses it, the
/// part that leaks). What the ways carry adds up to what leaves the cells, by Kirchhoff's law.
/// </summary>
internal sealed class DrainFinder
{
    /// <summary>A current below this is rounding of the solver, A.</summary>
    private const double SmallestAmps = 1e-13;

    private readonly BoxWiring _wiring;
    private readonly List<DrainBranch>?[] _outOf;
    private readonly double[] _supply;
    private readonly Dictionary<string, double> _amps = new(StringComparer.Ordinal);
    private readonly Dictionary<string, (double Amps, IReadOnlyList<string> Chain)> _largest = new(StringComparer.Ordinal);

    private DrainFinder(BoxWiring wiring, OperatingPoint point)
    {
        _wiring = wiring;
        _outOf = new List<DrainBranch>?[wiring.Network.NodeCount];
        _supply = new double[wiring.Network.NodeCount];
        Dictionary<Element, WiredPart> owners = [];
        foreach (WiredPart part in wiring.Parts)
        {
            foreach (Element element in part.Elements)
            {
                owners[element] = part;
            }
        }

        foreach (Element element in wiring.Network.Elements)
        {
            WiredPart? owner = owners.GetValueOrDefault(element);
            if (owner is not WiredBank)
            {
                AddElement(element, owner, point);
            }
        }
    }

    /// <summary>The consumers at a point, largest first.</summary>
    internal static IReadOnlyList<Drain> At(BoxWiring wiring, OperatingPoint point)
    {
        DrainFinder finder = new(wiring, point);
        finder.TakeApart();
        List<Drain> drains = [];
        foreach ((string id, double amps) in finder._amps)
        {
            drains.Add(new Drain(id, amps, finder._largest[id].Chain));
        }

        drains.Sort((a, b) => a.Amps != b.Amps ? b.Amps.CompareTo(a.Amps) : string.CompareOrdinal(a.PartId, b.PartId));
        return drains;
    }

    private void AddElement(Element element, WiredPart? owner, OperatingPoint point)
    {
        string id = owner?.Part.Id ?? element.Name;
        AddBranch(id, element, element.A, element.B, point.Amps(element), DrainBranch.IsUser(owner, element), point);
        if (element is ConverterStage stage)
        {
            AddBranch(id, stage, stage.OutB, stage.OutA, point.Solution.OutputCurrent(stage), false, point);
        }
    }

    private void AddBranch(string id, Element element, int a, int b, double amps, bool uses, OperatingPoint point)
    {
        if (!(Math.Abs(amps) > SmallestAmps))
        {
            return;
        }

        (int from, int to) = amps > 0 ? (a, b) : (b, a);
        DrainBranch branch = new(id, element, from, to, point.Volts(from, to))
        {
            Left = Math.Abs(amps),
            Uses = uses && amps > 0,
        };
        (_outOf[from] ??= []).Add(branch);
        _supply[from] += branch.Left;
        _supply[to] -= branch.Left;
    }

    /// <summary>Walks from the bank's terminals until they have nothing left to give.</summary>
    private void TakeApart()
    {
        bool[] isTerminal = new bool[_supply.Length];
        List<int> terminals = [];
        foreach (WiredBank bank in _wiring.Of<WiredBank>())
        {
            foreach (string terminal in bank.Cells.Terminals)
            {
                int node = _wiring.Node(bank.Part.Id, terminal);
                isTerminal[node] = true;
                terminals.Add(node);
            }
        }

        foreach (int start in terminals)
        {
            while (_supply[start] > SmallestAmps && Walk(start, isTerminal))
            {
            }
        }
    }

    /// <summary>Follows the largest current onward; takes a way, or a ring met on the way, off what is left. False at a dead end.</summary>
    private bool Walk(int start, bool[] isTerminal)
    {
        List<DrainBranch> way = [];
        Dictionary<int, int> stepAt = new() { [start] = 0 };
        int node = start;
        while (node == start || !isTerminal[node] || _supply[node] > -SmallestAmps)
        {
            DrainBranch? next = null;
            foreach (DrainBranch branch in _outOf[node] ?? [])
            {
                next = branch.Left > SmallestAmps && (next is null || branch.Left > next.Left) ? branch : next;
            }

            if (next is null)
            {
                return false;
            }

            way.Add(next);
            node = next.To;
            if (stepAt.TryGetValue(node, out int step))
            {
                Take(way, step, Thinnest(way, step));
                return true;
            }

            stepAt[node] = way.Count;
        }

        double amps = Math.Min(Thinnest(way, 0), Math.Min(_supply[start], -_supply[node]));
        Take(way, 0, amps);
        _supply[start] -= amps;
        _supply[node] += amps;
        Book(way, amps);
        return true;
    }

    private static double Thinnest(List<DrainBranch> way, int from)
    {
        double amps = double.PositiveInfinity;
        for (int i = from; i < way.Count; i++)
        {
            amps = Math.Min(amps, way[i].Left);
        }

        return amps;
    }

    private static void Take(List<DrainBranch> way, int from, double amps)
    {
        for (int i = from; i < way.Count; i++)
        {
            way[i].Left -= amps;
        }
    }

    private void Book(List<DrainBranch> way, double amps)
    {
        string id = UserOf(way).PartId;
        _amps[id] = _amps.GetValueOrDefault(id) + amps;
        if (!_largest.TryGetValue(id, out (double Amps, IReadOnlyList<string> Chain) held) || amps > held.Amps)
        {
            List<string> chain = [];
            foreach (DrainBranch branch in way)
            {
                if (branch.PartId != id && (chain.Count == 0 || chain[^1] != branch.PartId))
                {
                    chain.Add(branch.PartId);
                }
            }

            _largest[id] = (amps, chain);
        }
    }

    private static DrainBranch UserOf(List<DrainBranch> way)
    {
        DrainBranch user = way[0];
        foreach (DrainBranch branch in way)
        {
            if (branch.Element is ConverterStage && branch.Uses)
            {
                return branch;
            }

            bool better = branch.Uses == user.Uses ? branch.Volts > user.Volts : branch.Uses;
            user = better ? branch : user;
        }

        return user;
    }
}
