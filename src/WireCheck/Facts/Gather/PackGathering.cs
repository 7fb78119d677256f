using WireCheck.Circuit.Solving;
using WireCheck.Circuit.Wiring;
using WireCheck.Description.Kinds;
using WireCheck.Facts.Catalogue;
using WireCheck.Standby;
using WireCheck.States;

namespace WireCheck.Facts.Gather;

/// <summary>Gathers what is known of the whole box.</summary>
public static class PackGathering
{
    /// <summary>Sets the facts of the pack.</summary>
    public static void Gather(FactSubject subject, GatherContext context)
    {
        subject.SetNames(
            PackFacts.UnsolvedStates,
            context.Box.Points.Where(p => p.Solution.Outcome != SolveOutcome.Solved)
                .Select(p => $"{p.Mode.Id} ({p.Corner.Words})"));
        PackHeatGathering.Add(subject, context);
        AddVoltages(subject, context);
        AddStored(subject, context);
        EnergyGathering.Add(subject, context);
    }

    private static void AddVoltages(FactSubject subject, GatherContext context)
    {
        if (!context.Pack.Of<Cells>().Any())
        {
            return;
        }

        subject.SetNumber(PackFacts.NominalVoltage, context.Data.NominalBankVolts(context.Pack));
        subject.SetNumber(PackFacts.Capacity, Banks.CoulombsOfAll(context));
        double highest = context.Wiring.Of<WiredBank>().Max(context.Stacks.HighestVolts);
        foreach (WiredCharger charger in context.Wiring.Of<WiredCharger>())
        {
            int? plus = charger.Output?.A ?? charger.Stage?.OutA;
            if (plus is { } node && Banks.Feeding(context, node) is not null)
            {
                highest = Math.Max(highest, charger.Charger.Voltage.Value.Volts);
            }
        }

        subject.SetNumber(PackFacts.HighestVoltage, highest);
    }

    private static void AddStored(FactSubject subject, GatherContext context)
    {
        if (context.Standby.Stored is not { } stored)
        {
            return;
        }

        subject.SetNumber(PackFacts.StoredCurrent, stored.Amps);
        List<string> consumers = [];
        foreach (Drain drain in stored.Drains)
        {
            if (drain.Amps > SmallestToldAmps)
            {
                consumers.Add($"{drain.PartId} {Keeping.CurrentWords(drain.Amps)}");
            }
        }

        subject.SetNames(PackFacts.StoredConsumers, consumers);
        subject.SetNumber(PackFacts.TimeToCutOff, stored.Life.ToCutOff);
        subject.SetNumber(PackFacts.TimeFromCutOffToDamage, stored.Life.ToDamage);
        if (context.Standby.BestMove is { } move)
        {
            subject.SetWord(PackFacts.BestMove, move.PartId);
            subject.SetWord(PackFacts.BestMoveBehind, move.Behind);
            subject.SetNumber(PackFacts.TimeToCutOffAfterMove, move.Life.ToCutOff);
        }
    }

    /// <summary>A current below this is not told by name, A.</summary>
    private const double SmallestToldAmps = 1e-6;
}
