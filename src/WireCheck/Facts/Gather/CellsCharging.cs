using WireCheck.Charging;
using WireCheck.Circuit.Wiring;
using WireCheck.Description.Kinds;
using WireCheck.Facts.Catalogue;
using WireCheck.States;

namespace WireCheck.Facts.Gather;

/// <summary>Gathers what keeps a bank from being charged in the cold, and what happened when its strings were joined.</summary>
internal static class CellsCharging
{
    internal static void Add(WiredBank bank, FactSubject subject, GatherContext context)
    {
        Cells cells = bank.Cells;
        double ambient = context.Pack.Surroundings.Ambient.Value.From.DegreesCelsius;
        subject.SetNumber(CellsChargeFacts.Coldest, Math.Max(ambient, cells.HeatedTo?.Value.DegreesCelsius ?? double.NegativeInfinity));
        subject.SetNumber(CellsChargeFacts.ChargeColdest, cells.Charge.Temperature.Value.From.DegreesCelsius);
        AddGates(bank, subject, context);
        AddJoin(bank, subject, context);
        AddSpread(cells, subject);
    }

    private static void AddGates(WiredBank bank, FactSubject subject, GatherContext context)
    {
        List<string> ungated = [];
        List<string> undecided = [];
        string? wrong = null;
        bool charged = false;
        foreach (ChargeSource source in context.Charging.Sources)
        {
            if (!Charges(source, bank, context))
            {
                continue;
            }

            charged = true;
            string? here = GateFault(source, bank, context);
            if (here is not null)
            {
                (here == Unknown ? undecided : ungated).Add(source.Id);
                wrong = wrong is null || wrong == Unknown ? here : wrong;
            }
        }

        if (charged)
        {
            subject.SetNames(CellsChargeFacts.ColdUngatedSources, ungated);
            subject.SetNames(CellsChargeFacts.ColdUndecidedSources, undecided);
            subject.SetWord(CellsChargeFacts.ColdGate, wrong);
        }
    }

    /// <summary>Word of a gate that works if the probe sits on a cell, which is not said.</summary>
    private const string Unknown = "unknown";

    private static bool Charges(ChargeSource source, WiredBank bank, GatherContext context)
    {
        foreach (ChargePoint point in context.Charging.Points)
        {
            if (point.Point.Mode.Id != Modes.ChargingPrefix + source.Id)
            {
                continue;
            }

            foreach (BankCharge held in point.Banks)
            {
                if (held.Id == bank.Part.Id && held.CellAmps > context.Data.Assumed("charging_above"))
                {
                    return true;
                }
            }
        }

        return false;
    }

    /// <summary>What is wrong with what should stop a source in the cold; null when something stops it.</summary>
    private static string? GateFault(ChargeSource source, WiredBank bank, GatherContext context)
    {
        double coldest = bank.Cells.Charge.Temperature.Value.From.DegreesCelsius;
        if (source.Part is WiredCharger { Charger.ColdChargeCutoff: { } own } && own.Value.DegreesCelsius >= coldest)
        {
            return null;
        }

        if (Banks.BmsOf(context, bank)?.Bms is not { } bms)
        {
            return "no-bms";
        }

        return IsBypassed(source.Id, context) ? "bypassed"
            : bms.ColdChargeCutoff is not { } cutOff ? "no-cut-off"
            : cutOff.Value.DegreesCelsius < coldest ? "too-cold"
            : bms.Probe?.Value switch
            {
                ProbePlace.Cell => null,
                ProbePlace.Loose => "loose",
                ProbePlace.None => "no-probe",
                _ => Unknown,
            };
    }

    /// <summary>True when a source goes on charging cells with the BMS open.</summary>
    internal static bool IsBypassed(string source, GatherContext context)
    {
        foreach (OpenBms open in context.Charging.WithBmsOpen)
        {
            if (open.Mode.Id == Modes.ChargingPrefix + source && open.CellAmps > context.Data.Assumed("charging_above"))
            {
                return true;
            }
        }

        return false;
    }

    private static void AddJoin(WiredBank bank, FactSubject subject, GatherContext context)
    {
        if (context.Wiring.Of<WiredBank>().Count() < 2)
        {
            return;
        }

        foreach (BankJoin join in context.Charging.Joins)
        {
            if (join.BankId != bank.Part.Id)
            {
                continue;
            }

            bool some = bank.Cells.JoinedAt is not null
                || join.OtherIds.Any(id => context.Wiring[id] is WiredBank { Cells.JoinedAt: not null });
            subject.SetNames(CellsChargeFacts.JoinedWith, join.OtherIds);
            subject.SetNumber(CellsChargeFacts.JoinDifference, join.DifferenceVolts);
            subject.SetNumber(CellsChargeFacts.JoinCurrent, join.Amps);
            subject.Set(CellsChargeFacts.JoinUndecided, some && join.DifferenceVolts is null);
            subject.SetNumber(CellsChargeFacts.JoinWorstCurrent, join.FullOntoEmptyAmps);
        }
    }

    private static void AddSpread(Cells cells, FactSubject subject)
    {
        int columns = cells.Parallel.Value;
        if (columns < 2)
        {
            return;
        }

        double capacity = double.NaN;
        double resistance = double.NaN;
        for (int group = 0; (group + 1) * columns <= cells.Individual.Count; group++)
        {
            MeasuredCell[] side = [.. cells.Individual.Skip(group * columns).Take(columns)];
            capacity = Larger(capacity, Spread(side, c => c.Capacity?.Value.AmpereHours));
            resistance = Larger(resistance, Spread(side, c => c.Resistance?.Value.Ohms));
        }

        // Cells that were not measured one by one may still be told by their spread.
        capacity = double.IsNaN(capacity) && cells.Spread is { } spread ? spread.Value.DecimalFractions : capacity;
        subject.SetNumber(CellsChargeFacts.GroupCapacitySpread, capacity);
        subject.SetNumber(CellsChargeFacts.GroupResistanceSpread, resistance);
    }

    private static double Larger(double held, double found) => double.IsNaN(held) || found > held ? found : held;

    /// <summary>Largest less smallest over the mean; NaN where a cell is not measured.</summary>
    private static double Spread(MeasuredCell[] cells, Func<MeasuredCell, double?> value)
    {
        double[] values = [.. cells.Select(value).OfType<double>()];
        return values.Length < cells.Length ? double.NaN : (values.Max() - values.Min()) / values.Average();
    }
}
