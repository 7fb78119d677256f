using WireCheck.Circuit.Elements;
using WireCheck.Circuit.Solving;
using WireCheck.Circuit.Topology;
using WireCheck.Circuit.Wiring;
using WireCheck.States;

namespace WireCheck.Switching;

/// <summary>
/// The box with every BMS open: what still takes current from the cells, and which charger still gives them some, once the
/// relays have settled again. What lets go by then is told as such.
/// </summary>
internal sealed class OpenBms
{
    private readonly SwitchedBox _box;
    private readonly Settling _settling;
    private readonly LiveTester _tester;
    private readonly SneakFinder _finder;

    internal OpenBms(SwitchedBox box, Settling settling, LiveTester tester, SneakFinder finder)
    {
        _box = box;
        _settling = settling;
        _tester = tester;
        _finder = finder;
    }

    /// <summary>Every way round the BMS; nothing for a box without one.</summary>
    internal List<SneakPath> Find(IReadOnlyList<PlugCase> plugs)
    {
        List<SneakPath> found = [];
        if (!_box.Wiring.Of<WiredBms>().Any())
        {
            return found;
        }

        foreach (ulong closed in _box.AllClosed == 0 ? [0UL] : new[] { 0UL, _box.AllClosed })
        {
            FindConsumers(found, plugs[0], closed);
            for (int i = 1; i < plugs.Count; i++)
            {
                FindSources(found, plugs[i], closed);
            }
        }

        return found;
    }

    private void FindConsumers(List<SneakPath> found, PlugCase plugs, ulong closed)
    {
        byte[] before = new byte[_box.Points.Count];
        byte[] after = new byte[_box.Points.Count];
        Open(plugs, closed);
        Solution solution = _box.Solver.Solve();
        _tester.MarkBurdened(solution, before);
        (SneakPath?[] first, SneakPath?[] last) = (new SneakPath?[before.Length], new SneakPath?[before.Length]);
        Trace(first, before, plugs, closed);
        solution = _settling.GoOn();
        _tester.MarkBurdened(solution, after);
        Trace(last, after, plugs, closed);
        foreach (WiredRelay relay in _box.Relays)
        {
            AddCoil(found, relay, solution, plugs, closed);
        }

        for (int i = 0; i < before.Length; i++)
        {
            SneakPath? path = last[i] ?? (first[i] is { } passing ? passing with { DropsOut = true } : null);
            if (path is null)
            {
                continue;
            }

            int known = found.FindIndex(f => f.PartId == path.PartId);
            if (known < 0)
            {
                found.Add(path);
            }
            else if (found[known].DropsOut && !path.DropsOut)
            {
                found[known] = path;
            }
        }

        _box.SetBms(true);
    }

    /// <summary>A coil that a bank still holds, once all is settled.</summary>
    private void AddCoil(List<SneakPath> found, WiredRelay relay, Solution solution, PlugCase plugs, ulong closed)
    {
        string id = relay.Part.Id;
        int plus = _box.Wiring.Node(id, "86");
        int minus = _box.Wiring.Node(id, "85");
        double volts = solution.Voltage(plus, minus);
        if (Math.Abs(volts) <= _box.Wiring.Data.Assumed("live_above") || found.Exists(f => f.PartId == id))
        {
            return;
        }

        (List<LoopStep> feed, List<LoopStep> back, string? source) =
            volts > 0 ? _finder.Tracer.Trace(solution, plus, minus) : _finder.Tracer.Trace(solution, minus, plus);
        if (source is not null && _box.Wiring[source] is WiredBank)
        {
            List<LoopStep> steps = [.. feed, .. back];
            found.Add(Path(id, steps, LoopTracer.Ids(source, feed, id, back), plugs, closed) with { Size = Math.Abs(volts) });
        }
    }

    private void Trace(SneakPath?[] paths, byte[] live, PlugCase plugs, ulong closed)
    {
        for (int i = 0; i < live.Length; i++)
        {
            LivePoint point = _box.Points[i];
            if (live[i] != 0 && point.Kind == LivePointKind.Part && _finder.LoopOf(i) is { } loop)
            {
                paths[i] = Path(point.Id, loop.Steps, loop.Loop, plugs, closed) with { Size = loop.Volts };
            }
        }
    }

    private void FindSources(List<SneakPath> found, PlugCase plugs, ulong closed)
    {
        if (!plugs.Sources.Values.Contains(SourceState.Powered))
        {
            return;
        }

        Open(plugs, closed);
        Solution solution = _settling.GoOn();
        foreach (WiredBank bank in _box.Wiring.Of<WiredBank>())
        {
            int plus = _box.Wiring.Node(bank.Part.Id, "+");
            int minus = _box.Wiring.Node(bank.Part.Id, "-");
            if (GroupAmps.Into(bank, 0, solution) < _box.Wiring.Data.Assumed("cross_feed_current"))
            {
                continue;
            }

            (List<LoopStep> feed, List<LoopStep> back, string? source) = _finder.Tracer.Trace(solution, plus, minus);
            if (source is not null && _box.Wiring[source] is not WiredBank && !found.Exists(f => f.PartId == source))
            {
                List<LoopStep> steps = [.. feed, .. back];
                found.Add(Path(source, steps, LoopTracer.Ids(source, feed, bank.Part.Id, back), plugs, closed) with { Size = GroupAmps.Into(bank, 0, solution) });
            }
        }

        _box.SetBms(true);
    }

    private SneakPath Path(string part, List<LoopStep> steps, List<string> loop, PlugCase plugs, ulong closed)
    {
        List<string> links = _finder.LinksIn(steps);
        return new SneakPath(
            links.Count > 0 ? SneakKind.RoundBmsByOutsideLink : SneakKind.RoundBms,
            part, plugs.Id, _finder.Ids(closed), loop, links);
    }

    /// <summary>Settles a state with the BMS conducting and then opens it.</summary>
    private void Open(PlugCase plugs, ulong closed)
    {
        _box.Plug(plugs);
        _box.SetSwitches(closed);
        _settling.FromRest();
        _box.SetBms(false);
        _box.Solver.ForgetIslands();
    }
}
