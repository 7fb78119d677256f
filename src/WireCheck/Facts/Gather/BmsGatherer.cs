using WireCheck.Circuit.Wiring;
using WireCheck.Description.Kinds;
using WireCheck.Facts.Catalogue;
using WireCheck.States;

namespace WireCheck.Facts.Gather;

/// <summary>Gathers what a BMS carries against what it is made for.</summary>
public sealed class BmsGatherer : Gatherer<Bms>
{
    /// <summary>How the names of modes in which one load surges begin.</summary>
    internal const string SurgePrefix = "surge-";

    public override void Gather(Bms part, FactSubject subject, GatherContext context)
    {
        WiredBms bms = (WiredBms)context.Wiring[part.Id];
        subject.Set(BmsFacts.CellCount, (double)part.Series.Value);
        if (Banks.BanksBehind(context, bms) is [{ } bank, ..])
        {
            subject.Set(BmsFacts.BankSeries, (double)bank.Cells.Series.Value);
        }

        subject.SetNumber(BmsFacts.Continuous, part.Continuous.Value.Amperes);
        subject.SetNumber(BmsFacts.ChargeContinuous, (part.ChargeContinuous ?? part.Continuous).Value.Amperes);
        subject.SetNumber(BmsFacts.TripCurrent, part.Trip.Current.Value.Amperes);
        subject.SetNumber(BmsFacts.TripAfter, part.Trip.After.Value.Seconds);
        NoteIfAssumed(subject, part, part.Continuous, $"continuous current {Keeping.Words(part.Continuous.Value)}");
        NoteIfAssumed(subject, part, part.Trip.Current, $"trip current {Keeping.Words(part.Trip.Current.Value)}");
        AddCurrents(bms, subject, context);
    }

    private static void AddCurrents(WiredBms bms, FactSubject subject, GatherContext context)
    {
        foreach (OperatingPoint point in context.SteadyPoints())
        {
            double through = bms.DischargeSign * point.Amps(bms.Path);
            double separate = bms.ChargePath is null ? 0 : bms.DischargeSign * point.Amps(bms.ChargePath);
            subject.Largest(BmsFacts.Current, Math.Max(0, through), point);
            subject.Largest(BmsFacts.ChargeCurrent, Math.Max(0, Math.Max(-through, -separate)), point);
        }

        OperatingPoint[] surges = [.. context.SolvedPoints().Where(p => !p.Mode.Steady)];
        foreach (OperatingPoint point in surges.Length > 0 ? surges : context.SteadyPoints())
        {
            subject.Largest(BmsFacts.SurgeCurrent, Math.Max(0, bms.DischargeSign * point.Amps(bms.Path)), point);
        }

        if (subject.Find(BmsFacts.SurgeCurrent.Name) is { Place: { } place })
        {
            subject.SetNumber(BmsFacts.SurgeTime, SurgeSeconds(place.Mode, context));
        }
    }

    /// <summary>How long the load of a surge mode surges, s; 0 for any other mode.</summary>
    private static double SurgeSeconds(string mode, GatherContext context) =>
        mode.StartsWith(SurgePrefix, StringComparison.Ordinal)
        && context.Pack.Find(mode[SurgePrefix.Length..]) is Load { Surge: { } surge }
            ? surge.For.Value.Seconds
            : 0;
}
