using WireCheck.Facts;
using WireCheck.Facts.Catalogue;
using WireCheck.Facts.Gather;
using WireCheck.Numbers;
using WireCheck.Quantities;
using WireCheck.Reports.Numbers;
using WireCheck.Reports.Pages;
using WireCheck.Reports.Svg;
using WireCheck.Switching;

namespace WireCheck;

/// <summary>What the studies computed, as the pages and plots of a report.</summary>
internal static class BoxPages
{
    /// <summary>One page for each study.</summary>
    internal static IReadOnlyList<NumbersPage> Of(GatherContext context)
    {
        string title = context.Pack.Title.Value;
        return
        [
            Page("modes", "Modes", "", w => ModeSummaryText.Write(w, ModeSummary.Of(context.Box))),
            Page("faults", "Short circuits and single faults", title, w => FaultsText.Write(w, title, FaultNumbers.Of(context.Box))),
            Page("states", "What each switch leaves live", title, w => StatesText.Write(w, title, SwitchingStudy.Of(context.Pack, context.Data))),
            Page("standby", "Standby", title, w => NumbersText.WriteStandby(w, title, StandbyNumbers.Of(context.Box))),
            Page("energy", "Runtime and energy", title, w => EnergyText.Write(w, title, EnergyNumbers.Of(context.Box))),
            Page("heat", "Heat", title, w => HeatText.Write(w, title, HeatNumbers.Of(context.Box))),
            Page("charging", "Charging", title, w => ChargingText.Write(w, title, ChargingNumbers.Of(context.Box))),
        ];
    }

    /// <summary>Each fuse against what it guards, and who draws at rest.</summary>
    internal static IReadOnlyList<ReportPlot> PlotsOf(GatherContext context, FactTable facts)
    {
        List<ReportPlot> plots = [];
        foreach (TimeCurrentNumbers fuse in TimeCurrentNumbers.Of(context))
        {
            FactSubject? subject = facts.Subjects.FirstOrDefault(s => s.Id == fuse.Id);
            Plot plot = TimeCurrentPlot.Of(fuse, null, subject?.Find(OvercurrentFacts.Of(subject.Kind).FaultCurrent.Name)?.Value as double?);
            plots.Add(new ReportPlot(plot.Title, id => PlotSvg.Write(plot, id)));
        }

        foreach (PathNumbers path in PathNumbers.Of(context))
        {
            plots.Add(PathPlot(path));
        }

        if (ChargePlot.Of(EnergyNumbers.Of(context.Box).Days) is { } charge)
        {
            plots.Add(new ReportPlot(charge.Title, id => PlotSvg.Write(charge, id)));
        }

        if (StandbyNumbers.Of(context.Box).States is [{ Consumers.Count: > 0 } stored, ..])
        {
            string title = $"Who draws while the box is {stored.Mode}";
            plots.Add(new ReportPlot(title, id => ShareBars.Write(
                title, id, [.. stored.Consumers.Select(c => (c.Id, c.Share, c.Amps))], "A")));
        }

        return plots;
    }

    /// <summary>Where the voltage stays on the way to a load.</summary>
    private static ReportPlot PathPlot(PathNumbers path)
    {
        double lost = path.Steps.Sum(s => s.Volts);
        string title = $"{path.Load}: {QuantityText.WithPrefix(lost, "V")} lost on the way, {QuantityText.WithPrefix(path.Volts, "V")} left ({path.Mode}, {path.Corner})";
        return new ReportPlot(title, id => ShareBars.Write(
            title, id, [.. path.Steps.Select(s => (s.Part, lost > 0 ? s.Volts / lost : 0, s.Volts))], "V"));
    }

    /// <summary>A page of what a study writes; its first line, the title of the box, stands on the report already.</summary>
    private static NumbersPage Page(string id, string heading, string title, Action<TextWriter> write)
    {
        using PageWriter writer = new();
        write(writer);
        NumbersPage page = writer.ToPage(id, heading);
        return page with { Blocks = [.. page.Blocks.SkipWhile(b => b.Table is null && b.Words == title)] };
    }
}
