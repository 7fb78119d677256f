using WireCheck.Circuit.Topology;
using WireCheck.Circuit.Wiring;
using WireCheck.Description;
using WireCheck.Description.Kinds;
using WireCheck.Facts.Catalogue;

namespace WireCheck.Facts.Gather;

/// <summary>Compares the path that the builder means a current to take with the ways that are wired.</summary>
internal static class PathIntents
{
    internal static void Add(WiredPart wired, ConsumerFacts facts, FactSubject subject, GatherContext context)
    {
        Part part = wired.Part;

        // What a load on an outlet may lose is lost on the way to its inverter.
        double[] limits = [.. context.Pack.Paths
            .Where(p => p.LoadId == part.Id || (context.Pack.Find(p.LoadId) is Load load && load.At?.Value == part.Id && part is Inverter))
            .Where(p => p.Drop is not null)
            .Select(p => p.Drop!.Value.DecimalFractions)];
        if (limits.Length > 0)
        {
            subject.SetNumber(facts.DropLimit, limits.Min());
        }

        PathIntent[] own = [.. context.Pack.Paths.Where(p => p.LoadId == part.Id)];
        if (own.Length > 0)
        {
            subject.SetNames(
                facts.MissedParts,
                own.SelectMany(p => p.Through).Select(t => t.Value).Distinct().Where(id => !Passes(wired, id, context)));
        }
    }

    /// <summary>
    /// True when the whole current of a consumer passes a part: taking the part out leaves it without one of its poles.
    /// Resistors are no way round, and neither is anything behind a converter or inverter that feeds it.
    /// </summary>
    private static bool Passes(WiredPart consumer, string partId, GatherContext context)
    {
        WiredPart? at = consumer;
        HashSet<string> seen = [];
        while (at is not null && seen.Add(at.Part.Id))
        {
            if (at.Part.Id == partId)
            {
                return true;
            }

            if (ConsumerEnds.Of(at, context) is not { } ends)
            {
                at = at is WiredLoad { Inverter: { } inverter } ? context.Wiring[inverter] : null;
                continue;
            }

            WiredBank? bank = ends.Bank(context);
            WiredConverter? converter = bank is null ? ends.FeedingConverter(context) : null;
            SourcePoint? source = context.Sources.FirstOrDefault(s => s.PartId == (bank?.Part.Id ?? converter?.Part.Id));
            if (source is null)
            {
                return false;
            }

            if (source.PartId == partId || Cuts(source, ends, partId, context))
            {
                return true;
            }

            at = converter;
        }

        return false;
    }

    private static bool Cuts(SourcePoint source, ConsumerEnds ends, string partId, GatherContext context)
    {
        bool[] fed = Reach.From(context.Graph, source.Plus, Counts);
        bool[] returned = Reach.From(context.Graph, source.Minus, Counts, against: true);
        return (fed[ends.Plus] && !Reach.From(context.Graph, source.Plus, Kept)[ends.Plus])
            || (returned[ends.Minus] && !Reach.From(context.Graph, source.Minus, Kept, against: true)[ends.Minus]);

        static bool Counts(WiringEdge edge) => edge.LimitingOhms is null;
        bool Kept(WiringEdge edge) => Counts(edge) && edge.PartId != partId;
    }
}
