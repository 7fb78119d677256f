using WireCheck.Energy;
using WireCheck.Numbers;
using WireCheck.Quantities;
using WireCheck.Reports.Text;

namespace WireCheck.Reports.Numbers;

/// <summary>How long a box runs and charges, as aligned tables for a terminal.</summary>
public static class EnergyText
{
    /// <summary>Parts of a mode that are told; the JSON has all.</summary>
    private const int MostParts = 8;

    private const double SecondsPerHour = 3600;

    /// <summary>What is counted on, runtimes, where the energy goes, days, charges.</summary>
    public static void Write(TextWriter output, string title, EnergyNumbers energy)
    {
        output.Write($"{PlainText.Escape(title)}\n");
        output.Write($"\nBy the label {WattHours(energy.LabelJoules)}; counted on are {AmpereHours(energy.CountedFresh)} of fresh warm cells, {AmpereHours(energy.CountedAged)} of aged cold ones\n");
        output.Write("\nFrom full until something stops the mode; loads by their duty, cut-offs by all of them at once\n");
        WriteRuns(output, energy.Modes);
        foreach (ModeEnergy mode in energy.Modes)
        {
            WriteParts(output, mode);
        }

        foreach (DayMarch days in energy.Days)
        {
            WriteDays(output, days);
        }

        if (energy.Charges.Count > 0)
        {
            output.Write("\nFrom empty to the end of the charge, nothing else running\n");
            WriteRuns(output, energy.Charges);
        }
    }

    private static void WriteRuns(TextWriter output, IReadOnlyList<ModeEnergy> modes)
    {
        TextTable table = new("mode", "cells", "", "lasts", "mean current", "left", "used", "lost", "cells at", "ended by");
        foreach (ModeEnergy mode in modes)
        {
            ModeRun run = mode.Run;
            table.Add(
                run.Mode, run.Condition.Words, Direction(run.Direction), Time(run.Seconds), QuantityText.WithPrefix(Math.Abs(run.MeanAmps), "A"),
                run.Direction == TrailDirection.Still ? "" : Percent(run.EndCharge), WattHours(mode.Used), WattHours(mode.Lost),
                QuantityText.WithUnit(Math.Round(run.CellCelsius, 1), "°C"), EnergyWords.Of(run.End));
        }

        table.Write(output);
    }

    private static void WriteParts(TextWriter output, ModeEnergy mode)
    {
        // The losses of one condition tell where to look; the JSON has both.
        if (mode.Parts.Count == 0 || mode.Run.Condition.IsAgedAndCold)
        {
            return;
        }

        output.Write($"\n{mode.Run.Mode}, {mode.Run.Condition.Words}: {WattHours(mode.Given)} given\n");
        TextTable table = new("part", "kind", "given", "used", "lost");
        foreach (PartEnergy part in mode.Parts.Take(MostParts))
        {
            table.Add(part.Id, part.Kind, WattHours(part.Given), WattHours(part.Used), WattHours(part.Lost));
        }

        table.Write(output);
    }

    private static void WriteDays(TextWriter output, DayMarch days)
    {
        output.Write($"\nDays in a row from full, {days.Condition.Words}; the rest of each day: {days.RestMode}\n");
        TextTable table = new("day", "mode", "meant to last", "lasts", "charge before", "after", "ended by");
        for (int i = 0; i < days.Steps.Count; i++)
        {
            // The first day whole; of the others their end and what does not last.
            DayStep step = days.Steps[i];
            bool last = i + 1 == days.Steps.Count || days.Steps[i + 1].Day != step.Day;
            if (step.Day > 1 && !last && step.End is null)
            {
                continue;
            }

            table.Add(
                QuantityText.Plain(step.Day, 3), step.Mode, Time(step.Seconds), Time(step.Ran), Percent(step.Before), Percent(step.After),
                step.End is { } end ? EnergyWords.Of(end) : "");
        }

        table.Write(output);
    }

    private static string Direction(TrailDirection direction) => direction switch
    {
        TrailDirection.Discharging => "empties",
        TrailDirection.Charging => "fills",
        _ => "stands still",
    };

    private static string Time(double seconds) => double.IsFinite(seconds) ? QuantityText.Time(seconds) : "for ever";

    private static string WattHours(double joules) => QuantityText.WithUnit(Math.Abs(joules) < Smallest ? 0 : joules / SecondsPerHour, "Wh");

    private static string AmpereHours(double coulombs) => QuantityText.WithUnit(coulombs / SecondsPerHour, "Ah");

    private static string Percent(double share) => QuantityText.WithUnit(Math.Round(Math.Clamp(share, 0, 1) * 100, 1), "%");

    /// <summary>Less than this is printed as 0.</summary>
    private const double Smallest = 1e-6;
}
