using WireCheck.Charging;
using WireCheck.Circuit.Wiring;
using WireCheck.Description.Kinds;
using WireCheck.Facts.Catalogue;
using WireCheck.Knowledge;
using WireCheck.States;

namespace WireCheck.Facts.Gather;

/// <summary>Gathers what a charger does to the cells, what its input gets and what flows back into it.</summary>
internal static class ChargerCharging
{
    internal static void Add(WiredCharger charger, WiredBank? bank, FactSubject subject, GatherContext context)
    {
        Charger part = charger.Charger;
        if (bank is not null)
        {
            AddVoltages(ChargeVoltageFacts.Charger, part.Id, HighestVolts(part), bank, subject, context);
            subject.SetNumber(ChargeVoltageFacts.Charger.FloatPerCell, PerCell(part.Float?.Value.Volts, bank, context));
            subject.SetWord(ChargerInputFacts.LoopedThrough, LoopedThrough(charger, bank, context));
        }

        subject.SetNumber(ChargerInputFacts.InputMax, part.InputMax?.Value.Volts);
        foreach (ColdPanel cold in context.Charging.ColdPanels)
        {
            if (cold.Id == part.Id)
            {
                subject.SetNumber(ChargerInputFacts.InputOpenVoltage, cold.Volts);
                subject.SetNumber(ChargerInputFacts.InputOpenVoltageCold, cold.ColdVolts);
                subject.SetNumber(ChargerInputFacts.Coldest, cold.Celsius);
                subject.SetNumber(ChargerInputFacts.OpenCircuitRise, cold.RisePerKelvin);
                if (cold.RiseAssumed)
                {
                    subject.Assume(FormattableString.Invariant($"open-circuit rise {cold.RisePerKelvin * 100:0.###} %/K taken from the library"), "input_open_voltage_cold");
                }
            }
        }

        double ownUse = part.OwnUse?.Value.Amperes ?? 0;
        foreach (OperatingPoint point in context.Charging.WithoutPower)
        {
            subject.Largest(ChargerInputFacts.BleedCurrent, Math.Max(0, point.Amps(charger.Leakage) - ownUse), point);
        }
    }

    /// <summary>Sets the voltages of a source against the cells of a bank and their BMS.</summary>
    internal static void AddVoltages(
        ChargeVoltageFacts facts, string sourceId, double? highestVolts, WiredBank bank, FactSubject subject, GatherContext context)
    {
        CellVoltages chemistry = context.Library.Chemistries[bank.Cells.Chemistry.Value].Voltages;
        subject.SetNumber(facts.VoltagePerCell, PerCell(highestVolts, bank, context));
        subject.SetNumber(facts.CellVoltageLimit, bank.Cells.Window.Value.To.Volts);
        subject.SetNumber(facts.CellNominalVoltage, chemistry.Nominal);
        AddBms(facts, bank, subject, context);
        foreach (ChargeEnd end in context.Charging.Ends)
        {
            if (end.Mode.Id == Modes.ChargingPrefix + sourceId)
            {
                subject.Smallest(facts.EndCellVoltage, CellVoltsAt(end, bank.Part.Id), end.Point);
            }
        }
    }

    /// <summary>A voltage over the cells in series, V; the last bits are rounded off, so that 18.25 V of five cells is 3.65 V.</summary>
    private static double? PerCell(double? volts, WiredBank bank, GatherContext context) =>
        volts is { } given ? Math.Round(given / context.Stacks.CellsInSeries(bank), RoundedDigits) : null;

    private const int RoundedDigits = 9;

    /// <summary>Sets what the BMS of a bank does at the end of a charge.</summary>
    internal static void AddBms(ChargeVoltageFacts facts, WiredBank bank, FactSubject subject, GatherContext context)
    {
        if (Banks.BmsOf(context, bank) is { } bms)
        {
            subject.SetNumber(facts.BmsCellCutOff, bms.Bms.CellCutoff.Value.To.Volts);
            subject.SetNumber(facts.BalanceFrom, bms.Bms.BalanceFrom?.Value.Volts);
        }
    }

    /// <summary>Highest voltage of a cell of a bank at the end of a charge, V; NaN for a bank that is not in it.</summary>
    internal static double CellVoltsAt(ChargeEnd end, string bankId)
    {
        foreach (BankCharge bank in end.Banks)
        {
            if (bank.Id == bankId)
            {
                return bank.CellVolts;
            }
        }

        return double.NaN;
    }

    /// <summary>A trickle charger has no defined end: it goes to what it gives without a battery.</summary>
    private static double HighestVolts(Charger part) => part.ChargerKind.Value == ChargerKind.Trickle
        ? Math.Max(part.Voltage.Value.Volts, part.OutputWithoutBattery?.Value.Volts ?? 0)
        : part.Voltage.Value.Volts;

    private static string? LoopedThrough(WiredCharger charger, WiredBank bank, GatherContext context)
    {
        if (charger.Stage is { } stage)
        {
            return Banks.Feeding(context, stage.A) == bank ? bank.Part.Id : null;
        }

        if (charger.Charger.From is not { } from)
        {
            return null;
        }

        int? feed = context.Wiring[from.Value] switch
        {
            WiredInverter inverter => inverter.InputPlus,
            WiredPort { Port.Direction.Value: not PortDirection.In } port => port.Plus.A,
            _ => null,
        };
        return feed is { } node && Banks.Feeding(context, node) == bank ? from.Value : null;
    }
}
