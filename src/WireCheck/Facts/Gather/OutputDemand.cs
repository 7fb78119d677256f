using UnitsNet;
using WireCheck.Circuit.Wiring;
using WireCheck.Description.Kinds;
using WireCheck.Facts.Catalogue;
using WireCheck.Quantities;
using WireCheck.States;

namespace WireCheck.Facts.Gather;

/// <summary>Gathers what the loads on an inverter or converter ask of its output.</summary>
internal static class OutputDemand
{
    internal static void Add(Inverter part, FactSubject subject, GatherContext context)
    {
        Load[] loads = [.. context.Pack.Of<Load>().Where(l => l.At?.Value == part.Id)];
        subject.SetNumber(OutputDemandFacts.Inverter.SurgeRating, (part.Surge?.Power.Value ?? part.Power.Value).ToWatts());
        Add(new Output(part.Id, part.AcVoltage.Value.Volts, loads), OutputDemandFacts.Inverter, subject, context);
    }

    internal static void Add(Converter part, FactSubject subject, GatherContext context)
    {
        Load[] loads = [.. context.Wiring.Of<WiredLoad>().Where(l => IsFedBy(l, part, context)).Select(l => l.Load)];
        subject.SetNumber(OutputDemandFacts.Converter.SurgeRating, part.Power.Value.ToWatts());
        Add(new Output(part.Id, part.Output.Value.Volts, loads), OutputDemandFacts.Converter, subject, context);
    }

    /// <summary>What hangs on one output.</summary>
    /// <param name="Id">Id of the inverter or converter.</param>
    /// <param name="Volts">Nominal voltage of the output, V.</param>
    /// <param name="Loads">Loads on it.</param>
    private sealed record Output(string Id, double Volts, Load[] Loads);

    private static bool IsFedBy(WiredLoad load, Converter converter, GatherContext context) =>
        load.Load.At?.Value == converter.Id
        || (ConsumerEnds.Of(load, context) is { } ends
            && ends.Bank(context) is null
            && ends.FeedingConverter(context)?.Part.Id == converter.Id);

    private static void Add(Output output, OutputDemandFacts facts, FactSubject subject, GatherContext context)
    {
        if (output.Loads.Length > 0)
        {
            subject.SetNumber(facts.DemandTogether, output.Loads.Sum(l => l.WattsAt(output.Volts) ?? 0));
            subject.SetNumber(facts.LargestLoad, output.Loads.Max(l => l.WattsAt(output.Volts) ?? 0));
        }

        // What is asked is the same at every corner, so one point of each mode will do.
        double most = 0;
        foreach (OperatingPoint point in context.Box.Points.DistinctBy(p => p.Mode.Id).Where(p => !p.Mode.Added && p.Mode.Steady))
        {
            double asked = point.Mode.Watts.GetValueOrDefault(output.Id)
                + output.Loads.Sum(l => AskedWatts(l, point.Mode, output.Volts));
            if (asked > 0)
            {
                subject.Largest(facts.Demand, asked, point);
            }

            foreach (Load load in output.Loads.Where(l => l.Surge is not null && AskedWatts(l, point.Mode, output.Volts) > 0))
            {
                double starting = asked - AskedWatts(load, point.Mode, output.Volts) + load.Surge!.Power.Value.ToWatts();
                subject.Largest(facts.Starting, starting, point);
                if (starting > most)
                {
                    most = starting;
                    subject.SetWord(facts.StartingLoad, load.Id);
                }
            }
        }
    }

    private static double AskedWatts(Load load, BoxMode mode, double volts)
    {
        if (mode.Watts.TryGetValue(load.Id, out double watts))
        {
            return watts;
        }

        return mode.Load(load.Id) is LoadUse.Full or LoadUse.Surge ? load.WattsAt(volts) ?? 0 : 0;
    }
}
