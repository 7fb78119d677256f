using WireCheck.Circuit.Elements;
using WireCheck.Circuit.Topology;
using WireCheck.Circuit.Wiring;
using WireCheck.Description;
using WireCheck.Description.Kinds;
using WireCheck.Facts.Catalogue;
using WireCheck.States;

namespace WireCheck.Facts.Gather;

/// <summary>Gathers which way round a part with a direction is wired.</summary>
public static class PolarityGathering
{
    /// <summary>Sets the facts of a part; does nothing for a kind without a direction.</summary>
    public static void Gather(Part part, FactSubject subject, GatherContext context)
    {
        if (PolarityFacts.Of(part.Kind) is not { } facts)
        {
            return;
        }

        switch (context.Wiring[part.Id])
        {
            case WiredRelay relay:
                AddRelay(relay, facts, subject, context);
                break;
            case WiredDiode diode:
                AddDiode(diode, facts, subject, context);
                break;
            case WiredShunt shunt:
                AddShunt(shunt, facts, subject, context);
                break;
            case WiredCharger or WiredVehicle or WiredPanel:
                SourcePolarity.Add(part, facts, subject, context);
                break;
            case WiredLoad { Load.Polarised.Value: false }:
                break;
            case { } consumer when ConsumerEnds.Of(consumer, context) is { } ends:
                foreach (OperatingPoint point in context.SteadyPoints())
                {
                    if (point.Solution.Island(ends.FeedPlus) == point.Solution.Island(ends.FeedMinus))
                    {
                        subject.Largest(facts.ReversedVoltage, Math.Max(0, point.Volts(ends.FeedMinus, ends.FeedPlus)), point);
                    }
                }

                break;
        }
    }

    private static void AddRelay(WiredRelay relay, PolarityFacts facts, FactSubject subject, GatherContext context)
    {
        foreach (OperatingPoint point in context.SteadyPoints())
        {
            if (TurnedDiodes.AmpsInside(relay, point) is { } amps)
            {
                subject.Largest(RelayFacts.DiodeCurrent, Math.Max(0, amps), point);
            }
        }

        if (relay.Relay.Polarised?.Value != true)
        {
            return;
        }

        // Positive current of the contact flows from its first node, 30.
        foreach (OperatingPoint point in context.SolvedPoints())
        {
            subject.Largest(facts.ReverseCurrent, Math.Max(0, -point.Amps(relay.Make)), point);
        }
    }

    /// <summary>
    /// A diode is the wrong way round when a source finds no bank, or a consumer no source, that it would find if the
    /// diode were turned; or when it joins a positive pole to a negative one in the direction in which it conducts.
    /// </summary>
    private static void AddDiode(WiredDiode diode, PolarityFacts facts, FactSubject subject, GatherContext context)
    {
        int anode = diode.Element.A;
        int cathode = diode.Element.B;
        List<string> apart = [.. context.Sources.Select(s => s.PartId).Where(id => CutsOff(diode, id, context))];

        foreach (WiredPart part in context.Wiring.Parts)
        {
            if (ConsumerEnds.Of(part, context) is { } ends && !FedBySome(ends.FeedPlus, context)
                && context.Sources.Any(s => Turned(s.Plus, anode, cathode, context, n => n == ends.FeedPlus)))
            {
                apart.Add(part.Part.Id);
            }
        }

        subject.SetNames(facts.KeepsApart, apart);
        subject.Set(facts.ShortsPoles, ShortsPoles(diode, context));
    }

    /// <summary>True when a charger or vehicle finds no bank and would find one if a diode were turned round.</summary>
    internal static bool CutsOff(WiredDiode diode, string sourceId, GatherContext context)
    {
        if (context.Wiring[sourceId] is not (WiredCharger or WiredVehicle)
            || context.Sources.FirstOrDefault(s => s.PartId == sourceId) is not { } source)
        {
            return false;
        }

        return !ReachesBank(source.Plus, context)
            && Turned(source.Plus, diode.Element.A, diode.Element.B, context, n => IsBankPlus(n, context));
    }

    /// <summary>True when a diode conducts from the positive to the negative pole of a source.</summary>
    internal static bool ShortsPoles(WiredDiode diode, GatherContext context) => context.Sources.Any(s => Shorts(diode, s, context));

    /// <summary>True when a source's positive reaches the anode and the cathode its negative, and nothing else joins the two.</summary>
    private static bool Shorts(WiredDiode diode, SourcePoint source, GatherContext context)
    {
        bool Passes(WiringEdge edge) => edge.PartId != diode.Part.Id && edge.LimitingOhms is null;
        bool[] fed = Reach.From(context.Graph, source.Plus, Passes);
        return fed[diode.Element.A] && !fed[source.Minus]
            && Reach.From(context.Graph, source.Minus, Passes, against: true)[diode.Element.B];
    }

    private static bool ReachesBank(int plus, GatherContext context)
    {
        bool[] reached = Reach.From(context.Graph, plus, _ => true);
        return context.Wiring.Of<WiredBank>().Any(b => reached[context.Wiring.Node(b.Part.Id, "+")]);
    }

    private static bool FedBySome(int plus, GatherContext context) =>
        context.Sources.Any(s => context.Guards.Against(s)[plus].Reached);

    private static bool IsBankPlus(int node, GatherContext context) =>
        context.Wiring.Of<WiredBank>().Any(b => context.Wiring.Node(b.Part.Id, "+") == node);

    /// <summary>True when current from a node would reach a goal if it could pass a diode from its cathode to its anode.</summary>
    private static bool Turned(int start, int anode, int cathode, GatherContext context, Func<int, bool> goal)
    {
        bool[] reached = Reach.From(context.Graph, start, _ => true);
        if (!reached[cathode])
        {
            return false;
        }

        bool[] beyond = Reach.From(context.Graph, anode, e => !(e.OneWay && e.From == anode && e.To == cathode));
        for (int node = 0; node < beyond.Length; node++)
        {
            if (beyond[node] && goal(node))
            {
                return true;
            }
        }

        return false;
    }

    /// <summary>A shunt faces away when only its load terminal comes to a bank without passing the shunt.</summary>
    private static void AddShunt(WiredShunt shunt, PolarityFacts facts, FactSubject subject, GatherContext context)
    {
        bool battery = ComesToBank(shunt.Element.A, shunt, context);
        bool load = ComesToBank(shunt.Element.B, shunt, context);
        subject.Set(facts.FacesAway, load && !battery);
    }

    private static bool ComesToBank(int node, WiredShunt shunt, GatherContext context)
    {
        bool[] reached = Reach.From(context.Graph, node, e => e.PartId != shunt.Part.Id);
        return context.Wiring.Of<WiredBank>().Any(b =>
            reached[context.Wiring.Node(b.Part.Id, "-")] || reached[context.Wiring.Node(b.Part.Id, "+")]);
    }
}
