using WireCheck.Circuit.Wiring;
using WireCheck.Description.Kinds;
using WireCheck.Facts.Catalogue;
using WireCheck.States;

namespace WireCheck.Facts.Gather;

/// <summary>Gathers what a charger is set for and delivers.</summary>
public sealed class ChargerGatherer : Gatherer<Charger>
{
    public override void Gather(Charger part, FactSubject subject, GatherContext context)
    {
        WiredCharger charger = (WiredCharger)context.Wiring[part.Id];
        subject.Set(ChargerFacts.ChargerKind, Word(part.ChargerKind.Value));
        subject.SetNumber(ChargerFacts.CellCount, part.CellCount?.Value);
        subject.SetNumber(ChargerFacts.Voltage, part.Voltage.Value.Volts);
        int? plus = charger.Output?.A ?? charger.Stage?.OutA;
        WiredBank? bank = plus is { } node ? Banks.ChargedFrom(context, node) : null;
        if (bank is not null)
        {
            subject.Set(ChargerFacts.BankSeries, (double)context.Stacks.CellsInSeries(bank));
        }

        NoteIfAssumed(subject, part, part.Voltage, $"voltage {Keeping.Words(part.Voltage.Value)}", "voltage", "voltage_per_cell", "end_cell_voltage", "without_battery_voltage");
        ChargerCharging.Add(charger, bank, subject, context);
        ChargerInput.Add(charger, subject, context);
        SingleFaultGathering.AddLostBattery(charger, LostBatteryFacts.Charger, subject, context);
        foreach (OperatingPoint point in context.SteadyPoints())
        {
            double amps = charger.Stage is { } stage ? point.Solution.OutputCurrent(stage)
                : charger.Output is { } output ? -point.Amps(output)
                : 0;
            subject.Largest(ChargerFacts.Current, Math.Max(0, amps), point);
        }
    }

    private static string Word(ChargerKind kind) => kind switch
    {
        ChargerKind.CcCv => "cc-cv",
        ChargerKind.DcDc => "dc-dc",
        ChargerKind.Solar => "solar",
        _ => "trickle",
    };
}
