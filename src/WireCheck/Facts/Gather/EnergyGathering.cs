using WireCheck.Circuit.Wiring;
using WireCheck.Description;
using WireCheck.Description.Kinds;
using WireCheck.Energy;
using WireCheck.Facts.Catalogue;
using WireCheck.Quantities;

namespace WireCheck.Facts.Gather;

/// <summary>Gathers how long the box lasts through its days, and how loads are told to run.</summary>
internal static class EnergyGathering
{
    /// <summary>How near a draw must come to power times duty to be taken for it, as a share.</summary>
    private const double SameWithin = 0.05;

    internal static void Add(FactSubject subject, GatherContext context)
    {
        if (context.Energy.AgedDays is not { } days)
        {
            return;
        }

        double label = 0;
        double counted = 0;
        foreach (WiredBank bank in context.Wiring.Of<WiredBank>())
        {
            double volts = context.Data.NominalVolts(bank.Cells);
            label += EnergyCondition.RatedCoulombs(bank) * volts;
            counted += days.Condition.CountedCoulombs(bank) * volts;
        }

        subject.SetNumber(PackEnergyFacts.LabelEnergy, label);
        subject.SetNumber(PackEnergyFacts.CountedEnergy, counted);
        subject.SetNumber(PackEnergyFacts.DayDraw, DrawOf(context.Pack));
        AddFirstDay(subject, days);
        AddRecharge(subject, context, days);
    }

    /// <summary>Sets how much of the time a load runs.</summary>
    internal static void AddLoad(Load load, FactSubject subject, GatherContext context)
    {
        subject.SetNumber(LoadEnergyFacts.Duty, load.Duty?.Value.DecimalFractions);
        subject.SetNumber(LoadEnergyFacts.StartingPower, load.Surge?.Power.Value.ToWatts());
        double longest = 0;
        foreach (Mode mode in context.Pack.Modes)
        {
            foreach (ModeDraw draw in mode.Draws)
            {
                if (draw.PartId.Value == load.Id && draw.Power.Value.ToWatts() > 0)
                {
                    if (mode.For is { } time && time.Value.Seconds > longest)
                    {
                        longest = time.Value.Seconds;
                        subject.SetNumber(LoadEnergyFacts.LongestUse, longest);
                        subject.SetWord(LoadEnergyFacts.LongestUseMode, mode.Id);
                    }

                    if (IsAverage(load, draw.Power.Value.ToWatts()))
                    {
                        subject.SetWord(LoadEnergyFacts.AverageToldIn, mode.Id);
                    }
                }
            }
        }
    }

    /// <summary>A draw that is the power times the duty, and not near the power itself.</summary>
    private static bool IsAverage(Load load, double watts)
    {
        if (load.Duty is not { } duty || load.Power is not { } power)
        {
            return false;
        }

        double peak = power.Value.ToWatts();
        double average = peak * duty.Value.DecimalFractions;
        return Math.Abs(watts - average) <= SameWithin * average && watts < peak * (1 - SameWithin);
    }

    private static double DrawOf(Pack pack)
    {
        double joules = 0;
        foreach (Mode mode in pack.Modes)
        {
            foreach (ModeDraw draw in mode.Draws)
            {
                double duty = (pack.Find(draw.PartId.Value) as Load)?.Duty?.Value.DecimalFractions ?? 1;
                joules += draw.Power.Value.ToWatts() * duty * (mode.For?.Value.Seconds ?? 0);
            }
        }

        return joules;
    }

    private static void AddFirstDay(FactSubject subject, DayMarch days)
    {
        double length = 0;
        double missing = 0;
        foreach (DayStep step in days.Steps)
        {
            if (step.Day != 1 || step.Mode == days.RestMode || !step.Starts)
            {
                continue;
            }

            length += step.Seconds;
            missing += step.End is null ? 0 : step.Seconds - step.Ran;
            if (step.End is { } end && subject.Find(PackEnergyFacts.DayStoppedIn.Name) is null)
            {
                subject.SetWord(PackEnergyFacts.DayStoppedIn, step.Mode);
                subject.SetWord(PackEnergyFacts.DayStoppedBy, end.PartId);
                subject.SetNumber(PackEnergyFacts.DayStoppedCharge, Math.Max(0, step.After));
            }
        }

        subject.SetNumber(PackEnergyFacts.DayLength, length);
        subject.SetNumber(PackEnergyFacts.DayMissing, missing);
    }

    private static void AddRecharge(FactSubject subject, GatherContext context, DayMarch days)
    {
        subject.SetNames(PackEnergyFacts.ChargingModes, days.ChargingModes);
        subject.SetNumber(PackEnergyFacts.DayOfStop, days.FirstStop?.Day);
        if (days.ChargingModes.Count > 0)
        {
            subject.SetNumber(PackEnergyFacts.DayShortfall, Math.Max(0, days.AfterDay(1) - days.AfterDay(2)));
        }

        foreach (Panel panel in context.Pack.Of<Panel>())
        {
            subject.Assume($"{panel.Id} brings {Keeping.Words(100 * context.Data.Assumed("panel_derating"), "%")} of its label in an hour of sunshine", "day_shortfall", "day_missing");
        }
    }
}
