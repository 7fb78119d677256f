using WireCheck.Charging;
using WireCheck.Circuit.Topology;
using WireCheck.Circuit.Wiring;
using WireCheck.Description;
using WireCheck.Description.Kinds;
using WireCheck.Facts.Catalogue;

namespace WireCheck.Facts.Gather;

/// <summary>
/// Which way round a source is joined to what it is to feed: the cells, or the input of a charger that is drawn. Judged by
/// the wiring, contacts counted as closed, since a blocking diode keeps every voltage in order however the source is wired.
/// </summary>
internal static class SourcePolarity
{
    /// <summary>Names the part whose poles a source is joined to the wrong way round, and the port it is plugged into.</summary>
    internal static void Add(Part part, PolarityFacts facts, FactSubject subject, GatherContext context)
    {
        if (context.Charging.Source(part.Id) is { } source && BackwardsTo(source, context) is { } to)
        {
            subject.Set(facts.BackwardsTo, to);
            subject.Set(facts.BackwardsToCharger, context.Wiring[to] is WiredCharger);
            subject.SetWord(facts.BackwardsAt, PortOf(part, context));
        }
    }

    /// <summary>The bank or charger whose poles a source is joined to the wrong way round; null when it is to none.</summary>
    internal static string? BackwardsTo(ChargeSource source, GatherContext context)
    {
        (HashSet<string> positive, HashSet<string> negative) plus = PolesAt(source.Plus, source.Id, context);
        (HashSet<string> positive, HashSet<string> negative) minus = PolesAt(source.Minus, source.Id, context);
        bool right = plus.positive.Count > 0 || minus.negative.Count > 0 || plus.negative.Count == 0 || minus.positive.Count == 0;
        return right ? null : plus.negative.Order(StringComparer.Ordinal).First();
    }

    private static string? PortOf(Part part, GatherContext context)
    {
        string? at = part switch
        {
            Charger charger => charger.At?.Value,
            Vehicle vehicle => vehicle.At?.Value,
            Panel panel => panel.At?.Value,
            _ => null,
        };
        return at is not null && context.Pack.Find(at) is Port ? at : null;
    }

    /// <summary>
    /// The parts whose positive and whose negative pole a node is joined to: by metal alone or, where that joins it to none,
    /// through diodes too, whichever way they point.
    /// </summary>
    private static (HashSet<string> Positive, HashSet<string> Negative) PolesAt(int node, string source, GatherContext context)
    {
        (HashSet<string> positive, HashSet<string> negative) metal = Walk(node, source, false, context);
        return metal.positive.Count + metal.negative.Count > 0 ? metal : Walk(node, source, true, context);
    }

    /// <summary>Goes along metal, and through other panels since they stand in series; ends at each pole it meets.</summary>
    private static (HashSet<string> Positive, HashSet<string> Negative) Walk(int start, string source, bool diodes, GatherContext context)
    {
        List<(string Id, int Plus, int Minus)> poles = PolesOf(source, context);
        WiredPanel[] panels = [.. context.Wiring.Of<WiredPanel>().Where(p => p.Part.Id != source && p.Element is not null)];
        HashSet<string> positive = new(StringComparer.Ordinal);
        HashSet<string> negative = new(StringComparer.Ordinal);
        HashSet<int> reached = [start];
        Queue<int> open = new([start]);
        while (open.TryDequeue(out int node))
        {
            List<int> next = [];
            positive.UnionWith(poles.Where(p => p.Plus == node).Select(p => p.Id));
            negative.UnionWith(poles.Where(p => p.Minus == node).Select(p => p.Id));
            if (!poles.Exists(p => p.Plus == node || p.Minus == node))
            {
                next.AddRange(context.Graph.At(node).Where(e => e.LimitingOhms is null && (diodes || !e.OneWay)).Select(e => e.Other(node)));
                next.AddRange(panels.Where(p => p.Element!.A == node).Select(p => p.Element!.B));
                next.AddRange(panels.Where(p => p.Element!.B == node).Select(p => p.Element!.A));
            }

            foreach (int other in next.Where(reached.Add))
            {
                open.Enqueue(other);
            }
        }

        return (positive, negative);
    }

    /// <summary>Poles of every bank, and of the drawn input of every charger but the source itself.</summary>
    private static List<(string Id, int Plus, int Minus)> PolesOf(string source, GatherContext context)
    {
        List<(string, int, int)> poles = [];
        foreach (WiredBank bank in context.Wiring.Of<WiredBank>())
        {
            poles.Add((bank.Part.Id, context.Wiring.Node(bank.Part.Id, "+"), context.Wiring.Node(bank.Part.Id, "-")));
        }

        foreach (WiredCharger charger in context.Wiring.Of<WiredCharger>())
        {
            if (charger.Part.Id != source && charger.Stage is { } stage)
            {
                poles.Add((charger.Part.Id, stage.A, stage.B));
            }
        }

        return poles;
    }
}
