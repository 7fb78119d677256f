using WireCheck.Circuit.Topology;
using WireCheck.Circuit.Wiring;
using WireCheck.Description;
using WireCheck.Description.Kinds;

namespace WireCheck.Switching;

/// <summary>
/// Loads between two feeds: what leaves them goes on into a coil or another consumer, as with a pilot lamp between two
/// switched wires. Whatever they are described to draw, at rest they pass current on, so that they are wired as the
/// resistance that takes that at nominal voltage. A lamp is colder and passes more.
/// </summary>
internal static class BridgingLoads
{
    /// <summary>Wires a box with such loads as resistances.</summary>
    internal static BoxWiring Wire(Pack pack, WiringData data)
    {
        BoxWiring wiring = BoxWiring.Build(pack, data);
        Dictionary<string, Part> changed = new(StringComparer.Ordinal);
        foreach (WiredLoad load in Between(wiring))
        {
            double volts = data.NominalLoadVolts(load.Load, pack);
            if (load.Load.WattsAt(volts) is double watts and > 0)
            {
                changed.Add(load.Load.Id, load.Load.AsResistance(volts * volts / watts));
            }
        }

        return changed.Count == 0 ? wiring : BoxWiring.Build(pack.With(changed), data);
    }

    private static List<WiredLoad> Between(BoxWiring wiring)
    {
        WiredLoad[] loads = [.. wiring.Of<WiredLoad>().Where(l => l.PowerElement is not null && l.ResistanceElement is null)];
        List<WiredLoad> between = [];
        if (loads.Length == 0)
        {
            return between;
        }

        Rails rails = Rails.Of(wiring);
        HashSet<int> returns = [.. SourcePoint.In(wiring).Select(s => rails.Of(s.Minus)), rails.Of(wiring.Network.Reference)];
        HashSet<int> feeds =
        [
            .. wiring.Parts.Select(LivePoints.Poles).OfType<(int Plus, int Minus)>().Select(p => rails.Of(p.Plus)),
            .. wiring.Of<WiredRelay>().Select(r => rails.Of(wiring.Node(r.Part.Id, "86"))),
        ];
        foreach (WiredLoad load in loads)
        {
            int leaving = rails.Of(LivePoints.Poles(load)!.Value.Minus);
            if (!returns.Contains(leaving) && feeds.Contains(leaving))
            {
                between.Add(load);
            }
        }

        return between;
    }
}
