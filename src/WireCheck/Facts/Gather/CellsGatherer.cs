using WireCheck.Circuit.Topology;
using WireCheck.Circuit.Wiring;
using WireCheck.Description.Kinds;
using WireCheck.Facts.Catalogue;
using WireCheck.States;

namespace WireCheck.Facts.Gather;

/// <summary>Gathers what a bank carries and how its cells share it. Its link bars are gathered as bars.</summary>
public sealed class CellsGatherer : Gatherer<Cells>
{
    public override void Gather(Cells part, FactSubject subject, GatherContext context)
    {
        WiredBank bank = (WiredBank)context.Wiring[part.Id];
        subject.Set(CellsFacts.Series, (double)part.Series.Value);
        subject.Set(CellsFacts.Parallel, (double)part.Parallel.Value);
        subject.SetNumber(CellsFacts.NominalVoltage, Banks.NominalVolts(context, part));
        subject.SetNumber(CellsFacts.ChargeLimit, part.Charge.Limit.Value.Amperes);
        subject.SetNumber(CellsFacts.DischargeLimit, part.Discharge.Limit.Value.Amperes);
        NoteIfAssumed(subject, part, part.Charge.Limit, $"charge limit {Keeping.Words(part.Charge.Limit.Value)}", "charge_limit");
        NoteIfAssumed(subject, part, part.Discharge.Limit, $"discharge limit {Keeping.Words(part.Discharge.Limit.Value)}", "discharge_limit");
        CoverGathering.Add(part, subject, context);
        AddBalance(bank, subject, context);
        AddCurrents(bank, subject, context);
        AddBms(bank, subject, context);
        AddStrings(bank, subject, context);
        AddSharing(bank, subject, context);
        StackGathering.Add(bank, subject, context);
        CellsCharging.Add(bank, subject, context);
    }

    private static void AddBalance(WiredBank bank, FactSubject subject, GatherContext context)
    {
        Cells cells = bank.Cells;
        if (cells.Balanced is { } balanced)
        {
            subject.Set(CellsFacts.Balanced, balanced.Value);
        }

        subject.SetNumber(CellsFacts.Spread, cells.Spread?.Value.DecimalFractions);
        if (Banks.BmsOf(context, bank) is { Bms.BalanceCurrent: { Value.Amperes: > 0 } balancing })
        {
            double apart = context.Data.Assumed("unlevelled_share") * cells.Capacity.Value.Coulombs * cells.Parallel.Value;
            subject.SetNumber(CellsFacts.LevellingTime, apart / balancing.Value.Amperes);
        }
    }

    private static void AddCurrents(WiredBank bank, FactSubject subject, GatherContext context)
    {
        foreach (OperatingPoint point in context.SteadyPoints())
        {
            double charge = 0;
            double discharge = 0;
            foreach (Circuit.Elements.Source cell in bank.CellElements)
            {
                charge = Math.Max(charge, point.Amps(cell));
                discharge = Math.Max(discharge, -point.Amps(cell));
            }

            subject.Largest(CellsFacts.ChargeCurrent, charge, point);
            subject.Largest(CellsFacts.DischargeCurrent, discharge, point);
            subject.Largest(CellsFacts.BankChargeCurrent, Math.Max(0, -Banks.AmpsLeaving(bank, point)), point);
        }
    }

    private static void AddBms(WiredBank bank, FactSubject subject, GatherContext context)
    {
        if (Banks.BmsOf(context, bank) is not { } bms)
        {
            return;
        }

        int cellsSideBySide = Banks.BanksBehind(context, bms).Sum(b => b.Columns);
        subject.SetNumber(CellsFacts.BmsChargeLimit, (bms.Bms.ChargeContinuous ?? bms.Bms.Continuous).Value.Amperes);
        double passes = bms.Bms.Continuous.Value.Amperes;
        if (FirstFuses(bms, context) is { } fuses)
        {
            passes = Math.Min(passes, fuses);
        }

        subject.SetNumber(CellsFacts.BmsDischargePerCell, passes / cellsSideBySide);
    }

    /// <summary>
    /// Ratings of the first fuses on all ways from the banks behind a BMS, A: together what their cells can be asked for by the
    /// hour. Null when something that takes power hangs on a way without a fuse, or none is there.
    /// </summary>
    private static double? FirstFuses(WiredBms bms, GatherContext context)
    {
        bool[] bare = new bool[context.Graph.NodeCount];
        foreach (WiredBank bank in Banks.BanksBehind(context, bms))
        {
            bool[] from = Reach.From(context.Graph, context.Wiring.Node(bank.Part.Id, "+"), e => e.FuseAmps is null);
            for (int node = 0; node < bare.Length; node++)
            {
                bare[node] |= from[node];
            }
        }

        foreach (PowerTap tap in PowerTap.In(context.Wiring))
        {
            // A meter or a coil takes milliamperes; a lead of its own without a fuse is found by another check.
            if (bare[tap.Plus] && context.Wiring[tap.PartId] is WiredLoad or IPoweredInput or WiredPort)
            {
                return null;
            }
        }

        double amps = 0;
        foreach (WiringEdge edge in context.Graph.Edges)
        {
            amps += bare[edge.From] != bare[edge.To] ? edge.FuseAmps ?? 0 : 0;
        }

        return amps > 0 ? amps : null;
    }

    private static void AddStrings(WiredBank bank, FactSubject subject, GatherContext context)
    {
        List<string> unfused = [];
        int count = 0;
        foreach (WiredBank other in BanksBeside(bank, context))
        {
            count++;
            if (other.Part.Id != bank.Part.Id && LoopIsUnfused(bank, Banks.SourceOf(context, other), context))
            {
                unfused.Add(other.Part.Id);
            }
        }

        subject.Set(CellsFacts.StringCount, (double)count);
        subject.SetNames(CellsFacts.UnfusedBeside, unfused);
    }

    /// <summary>True when neither the way from the other bank's positive to this one's nor the way back passes a fuse.</summary>
    private static bool LoopIsUnfused(WiredBank bank, SourcePoint other, GatherContext context)
    {
        Guard feed = context.Guards.Against(other)[context.Wiring.Node(bank.Part.Id, "+")];
        bool[] back = Reach.From(context.Graph, other.Minus, e => e.FuseAmps is null, against: true);
        return feed.Unfused && back[context.Wiring.Node(bank.Part.Id, "-")];
    }

    private static void AddSharing(WiredBank bank, FactSubject subject, GatherContext context)
    {
        WiredBank[] beside = [.. BanksBeside(bank, context)];
        if (bank.Columns == 1 && beside.Length == 1)
        {
            return;
        }

        OperatingPoint[] points = [.. context.SteadyPoints().Where(p => p.Corner.HighestResistance)];
        // Cells share worst at the temperature of their printed figures: cold ones have more resistance of their own, beside
        // which the bars count less. Over hours it is the direct-current resistance that shares.
        double printedCelsius = context.Data.Assumed("cell_figures");
        double sharingFrom = context.Data.Assumed("sharing_from");
        double largest = points.Select(p => beside.Sum(b => Banks.AmpsLeaving(b, p))).DefaultIfEmpty(0).Max();
        foreach (OperatingPoint found in points)
        {
            if (largest <= 0 || beside.Sum(b => Banks.AmpsLeaving(b, found)) < largest * sharingFrom
                || context.States.WithCellsAt(found, printedCelsius) is not { } point)
            {
                continue;
            }

            Share worst = Worst(bank, beside.Length, beside.Sum(b => Banks.AmpsLeaving(b, point)), point);
            if (subject.Find(CellsFacts.ShareWorst.Name) is not { } held || worst.OverMean > (double)held.Value)
            {
                subject.Largest(CellsFacts.ShareWorst, worst.OverMean, point);
                subject.Set(CellsFacts.ShareWhere, worst.Where);
            }
        }
    }

    private static Share Worst(WiredBank bank, int strings, double together, OperatingPoint point)
    {
        Share worst = strings > 1
            ? new Share(Banks.AmpsLeaving(bank, point) / (together / strings), "The string")
            : new Share(0, "");
        if (bank.Columns == 1)
        {
            return worst;
        }

        for (int group = 0; group < bank.Cells.Series.Value; group++)
        {
            double[] amps = [.. Enumerable.Range(0, bank.Columns)
                .Select(column => -point.Amps(bank.CellElements[(group * bank.Columns) + column]))];
            double mean = amps.Average();
            int most = Array.IndexOf(amps, amps.Max());
            double over = amps[most] / mean;
            if (mean > 0 && over > worst.OverMean)
            {
                worst = new Share(over, FormattableString.Invariant($"Cell {most + 1} of group {group + 1}"));
            }
        }

        return worst;
    }

    /// <summary>Banks of the same series count whose positive terminals are joined, contacts counted as closed; itself too.</summary>
    private static IEnumerable<WiredBank> BanksBeside(WiredBank bank, GatherContext context)
    {
        bool[] reached = Reach.From(context.Graph, context.Wiring.Node(bank.Part.Id, "+"), _ => true);
        return context.Wiring.Of<WiredBank>().Where(b =>
            b.Cells.Series.Value == bank.Cells.Series.Value && reached[context.Wiring.Node(b.Part.Id, "+")]);
    }

    private readonly record struct Share(double OverMean, string Where);
}
