using WireCheck.Charging;
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
            subject.Set(BmsFacts.BankSeries, (double)context.Stacks.CellsInSeriesAtBms(bank));
        }

        subject.SetNumber(BmsFacts.Continuous, part.Continuous.Value.Amperes);
        subject.SetNumber(BmsFacts.ChargeContinuous, (part.ChargeContinuous ?? part.Continuous).Value.Amperes);
        subject.SetNumber(BmsFacts.TripCurrent, part.Trip.Current.Value.Amperes);
        subject.SetNumber(BmsFacts.TripAfter, part.Trip.After.Value.Seconds);
        NoteIfAssumed(subject, part, part.Continuous, $"continuous current {Keeping.Words(part.Continuous.Value)}", "continuous");
        NoteIfAssumed(subject, part, part.Trip.Current, $"trip current {Keeping.Words(part.Trip.Current.Value)}", "trip_current");
        if (part.RecloseOnCharge is { } recloses)
        {
            subject.Set(BmsChargeFacts.RecloseOnCharge, recloses.Value);
            NoteIfAssumed(subject, part, recloses, "closing again when a charger comes", "recloses_on_charge");
        }

        AddWake(subject, context);
        SenseGuards.Gather(part, subject, context);
        AddCurrents(bms, subject, context);
        SingleFaultGathering.AddStuckBms(bms, subject, context);
        SenseGathering.Add(bms, subject, context);
        BmsPortGathering.Add(bms, subject, context);
    }

    private static void AddWake(FactSubject subject, GatherContext context)
    {
        foreach (BmsWake wake in context.Charging.Wakes)
        {
            if (wake.BmsId == subject.Id)
            {
                subject.SetNames(BmsChargeFacts.WakeSources, wake.Waking);
                subject.SetNames(BmsChargeFacts.WakeUndecided, wake.Undecided);
                subject.SetNames(BmsChargeFacts.WakeNeedBattery, wake.NeedBattery);
                subject.SetNames(BmsChargeFacts.WakeOutOfReach, wake.OutOfReach);
            }
        }
    }

    private static void AddCurrents(WiredBms bms, FactSubject subject, GatherContext context)
    {
        foreach (OperatingPoint point in context.SteadyPoints())
        {
            double through = bms.DischargeSign * point.Amps(bms.Path);
            double separate = bms.ChargePath is null ? 0 : bms.DischargeSign * point.Amps(bms.ChargePath);
            subject.Largest(BmsFacts.Current, Math.Max(0, through), point);
            subject.Largest(BmsFacts.ChargeCurrent, Math.Max(0, Math.Max(-through, -separate)), point);
            if (bms.ChargePath is null && through < 0)
            {
                subject.Largest(BmsChargeFacts.BodyDiodePower, -through * context.Data.Assumed("blocking_drop"), point);
            }
        }

        foreach (OperatingPoint point in WorstSurges(bms, context))
        {
            subject.Largest(BmsFacts.SurgeCurrent, Math.Max(0, bms.DischargeSign * point.Amps(bms.Path)), point);
        }

        if (subject.Find(BmsFacts.SurgeCurrent.Name) is { Place: { } place })
        {
            subject.SetNumber(BmsFacts.SurgeTime, Surges.Seconds(place.Mode, context.Pack));
        }
    }

    /// <summary>
    /// The surges that outlast the trip, where there are any: a larger one that is over before the BMS reacts must not
    /// hide them. All surges otherwise, and the steady states where nothing surges.
    /// </summary>
    private static IEnumerable<OperatingPoint> WorstSurges(WiredBms bms, GatherContext context)
    {
        OperatingPoint[] surges = [.. context.SolvedPoints().Where(p => !p.Mode.Steady)];
        double trip = bms.Bms.Trip.Current.Value.Amperes;
        double after = bms.Bms.Trip.After.Value.Seconds;
        OperatingPoint[] tripping = [.. surges.Where(p =>
            bms.DischargeSign * p.Amps(bms.Path) > trip && Surges.Seconds(p.Mode.Id, context.Pack) > after)];
        return tripping.Length > 0 ? tripping : surges.Length > 0 ? surges : context.SteadyPoints();
    }
}
