using WireCheck.Circuit.Topology;
using WireCheck.Circuit.Wiring;

namespace WireCheck.Switching;

/// <summary>What a bank feeds, and what charges a bank, by ways that pass no shunt.</summary>
internal sealed class Uncounted
{
    /// <summary>Stands for a shunt that is taken out, Ω: no current of any size passes it.</summary>
    private const double ShuntOutOhms = 1e9;

    private readonly SwitchedBox _box;
    private readonly Settling _settling;
    private readonly SneakFinder _finder;
    private readonly Rails _rails;
    private readonly WiredShunt[] _shunts;
    private readonly double[] _ohms;

    internal Uncounted(SwitchedBox box, Settling settling, SneakFinder finder)
    {
        _box = box;
        _settling = settling;
        _finder = finder;
        _shunts = [.. box.Wiring.Of<WiredShunt>()];
        _ohms = [.. _shunts.Select(s => s.Element.Ohms)];
        _rails = Rails.Of(box.Wiring, p => p is WiredShunt);
    }

    /// <summary>Every such way; nothing for a box without a shunt. Meters are left out: they may feed themselves.</summary>
    internal List<SneakPath> Find(IReadOnlyList<PlugCase> plugs)
    {
        List<SneakPath> found = [];
        if (_shunts.Length == 0)
        {
            return found;
        }

        foreach (ulong closed in _box.AllClosed == 0 ? [0UL] : new[] { _box.AllClosed, 0UL })
        {
            FindConsumers(found, plugs[0], closed, withLinks: false);
            FindConsumers(found, plugs[0], closed, withLinks: true);
            foreach (PlugCase plug in plugs.Skip(1))
            {
                FindSources(found, plug, closed);
            }
        }

        PutBack();
        return found;
    }

    private void FindConsumers(List<SneakPath> found, PlugCase plugs, ulong closed, bool withLinks)
    {
        SourcePoint[] banks = [.. _box.Sources.Where(s => _box.Wiring[s.PartId] is WiredBank)];
        PlainFeed plain = Settle(plugs, closed, banks, withLinks);
        for (int i = 0; i < _box.Points.Count; i++)
        {
            LivePoint point = _box.Points[i];
            if (point.Kind != LivePointKind.Part || point.PartKind == "meter" || found.Exists(f => f.PartId == point.Id)
                || !plain.Feeds(point.Plus, point.Minus) || _finder.LoopOf(i) is not { } loop)
            {
                continue;
            }

            List<string> links = _finder.LinksIn(loop.Steps);
            if (!withLinks || links.Count > 0)
            {
                found.Add(new SneakPath(SneakKind.RoundShunt, point.Id, plugs.Id, _finder.Ids(closed), loop.Loop, links) { Size = loop.Volts });
            }
        }
    }

    private void FindSources(List<SneakPath> found, PlugCase plugs, ulong closed)
    {
        SourcePoint[] plugged = [.. _box.Sources.Where(s => plugs.Sources.GetValueOrDefault(s.PartId) == SourceState.Powered)];
        PlainFeed plain = Settle(plugs, closed, plugged, withLinks: false);
        foreach (WiredBank bank in _box.Wiring.Of<WiredBank>())
        {
            int plus = _box.Wiring.Node(bank.Part.Id, "+");
            int minus = _box.Wiring.Node(bank.Part.Id, "-");
            if (!plain.Feeds(plus, minus))
            {
                continue;
            }

            (List<LoopStep> feed, List<LoopStep> back, string? source) = _finder.Tracer.Trace(_box.Solver.Solve(), plus, minus);
            if (source is not null && _box.Wiring[source] is not WiredBank && !found.Exists(f => f.PartId == source))
            {
                found.Add(new SneakPath(
                    SneakKind.RoundShunt, source, plugs.Id, _finder.Ids(closed), LoopTracer.Ids(source, feed, bank.Part.Id, back), []));
            }
        }
    }

    private PlainFeed Settle(PlugCase plugs, ulong closed, SourcePoint[] sources, bool withLinks)
    {
        PutBack();
        _box.Plug(plugs);
        _box.SetSwitches(closed);
        _settling.FromRest();
        PlainFeed plain = new(_box, _rails, sources, withLinks);
        plain.Find();

        // The state is settled; from here on only the way that passes no shunt is followed.
        foreach (WiredShunt shunt in _shunts)
        {
            shunt.Element.Ohms = ShuntOutOhms;
        }

        return plain;
    }

    private void PutBack()
    {
        for (int i = 0; i < _shunts.Length; i++)
        {
            _shunts[i].Element.Ohms = _ohms[i];
        }
    }
}
