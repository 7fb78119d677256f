using WireCheck.Circuit.Wiring;
using WireCheck.Facts.Gather;
using WireCheck.States;

namespace WireCheck.Numbers;

/// <summary>Voltage lost in one part of a path.</summary>
/// <param name="Part">Id of the part or conductor.</param>
/// <param name="Volts">Voltage lost in it, V.</param>
public sealed record PathStep(string Part, double Volts);

/// <summary>The way from a source to a load and back, in the lasting state that leaves the load the least voltage.</summary>
/// <param name="Load">Id of the load.</param>
/// <param name="Mode">Id of the mode.</param>
/// <param name="Corner">The corner in words.</param>
/// <param name="Volts">Voltage at the load, V.</param>
/// <param name="Steps">In the order of the current.</param>
public sealed record PathNumbers(string Load, string Mode, string Corner, double Volts, IReadOnlyList<PathStep> Steps)
{
    /// <summary>The path of every consumer that works in some lasting state, in the order of the description.</summary>
    public static IReadOnlyList<PathNumbers> Of(GatherContext context)
    {
        List<PathNumbers> all = [];
        foreach (WiredPart part in context.Wiring.Parts.Where(p => p is WiredLoad or WiredInverter or WiredConverter))
        {
            if (ConsumerEnds.Of(part, context) is { } ends && Worst(part, ends, context) is { } worst)
            {
                CurrentFlow flow = context.States.FlowAt(worst);
                CurrentPath path = CurrentPath.Of(flow, ends.Plus, ends.Minus);
                List<PathStep> steps = [.. path.Branches.Where(b => !b.Gives)
                    .GroupBy(b => b.PartId, StringComparer.Ordinal)
                    .Select(g => new PathStep(g.Key, g.Sum(b => worst.Volts(b.From, b.To))))];
                all.Add(new PathNumbers(part.Part.Id, worst.Mode.Id, worst.Corner.Words, worst.Volts(ends.Plus, ends.Minus), steps));
            }
        }

        return all;
    }

    private static OperatingPoint? Worst(WiredPart part, ConsumerEnds ends, GatherContext context) =>
        context.SolvedPoints()
            .Where(p => p.Mode.Steady)
            .Select(p => ConsumerPoint.Working(part, p, context))
            .OfType<OperatingPoint>()
            .MinBy(p => p.Volts(ends.Plus, ends.Minus));
}
