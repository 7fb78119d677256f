using WireCheck.Charging;
using WireCheck.Circuit.Wiring;
using WireCheck.Facts.Catalogue;
using WireCheck.States;

namespace WireCheck.Facts.Gather;

/// <summary>Gathers what a diode in the way of a charge costs: heat, and volts that are missing at the end.</summary>
internal static class DiodeCharging
{
    internal static void Add(WiredDiode diode, FactSubject subject, GatherContext context)
    {
        double charging = context.Data.Assumed("charging_above");
        foreach (ChargePoint charge in context.Charging.Points)
        {
            OperatingPoint point = charge.Point;
            double amps = point.Amps(diode.Element);
            if (amps > charging)
            {
                double volts = point.Volts(diode.Element.A, diode.Element.B);
                subject.Largest(DiodeChargeFacts.ChargeCurrent, amps, point);
                subject.Largest(DiodeChargeFacts.ChargePower, amps * volts, point);
                subject.Largest(DiodeChargeFacts.ChargeDrop, volts, point);
            }
        }

        foreach (ChargeEnd end in context.Charging.Ends)
        {
            if (end.Point.Amps(diode.Element) > charging && SourceOf(end, context) is { } source)
            {
                AddEnd(end, source, subject, context);
            }
        }
    }

    /// <summary>The source of a mode in which one charges alone; null where several do.</summary>
    private static ChargeSource? SourceOf(ChargeEnd end, GatherContext context) =>
        context.Charging.Source(end.Mode.Id[Modes.ChargingPrefix.Length..]);

    private static void AddEnd(ChargeEnd end, ChargeSource source, FactSubject subject, GatherContext context)
    {
        if (Banks.ChargedFrom(context, source.Plus) is not { } bank)
        {
            return;
        }

        double cell = ChargerCharging.CellVoltsAt(end, bank.Part.Id);
        if (subject.Find(ChargeVoltageFacts.Diode.EndCellVoltage.Name) is { Value: double held } && held <= cell)
        {
            return;
        }

        subject.Smallest(ChargeVoltageFacts.Diode.EndCellVoltage, cell, end.Point);
        subject.SetNumber(DiodeChargeFacts.SourceVoltagePerCell, source.HighestVolts / context.Stacks.CellsInSeries(bank));
        ChargerCharging.AddBms(ChargeVoltageFacts.Diode, bank, subject, context);
    }
}
