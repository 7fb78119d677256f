using WireCheck.Circuit.Wiring;
using WireCheck.Description.Kinds;
using WireCheck.Facts.Catalogue;
using WireCheck.Quantities;

namespace WireCheck.Facts.Gather;

/// <summary>Gathers a load as a consumer.</summary>
public sealed class LoadGatherer : Gatherer<Load>
{
    public override void Gather(Load part, FactSubject subject, GatherContext context)
    {
        ConsumerFacts facts = ConsumerFacts.Load;
        WiredLoad wired = (WiredLoad)context.Wiring[part.Id];
        subject.SetWord(facts.At, part.At?.Value);
        subject.SetNumber(facts.Power, part.WattsAt(FeedVolts(wired, context)));
        if (part.Window is { } window)
        {
            subject.SetNumber(facts.WindowLow, window.Value.From.Volts);
            subject.SetNumber(facts.WindowHigh, window.Value.To.Volts);
            subject.SetNumber(facts.CutOff, window.Value.From.Volts);
            NoteIfAssumed(
                subject, part, window, $"window {Keeping.Words(window.Value.From)} to {Keeping.Words(window.Value.To)}", "window_low", "window_high", "cut_off");
        }

        NoteIfAssumed(subject, part, part.Power, $"power {Keeping.Words(part.Power?.Value.ToWatts() ?? 0, "W")}", "power", "drop_share", "surge_voltage_low", "voltage_low", "undelivered_power");
        EnergyGathering.AddLoad(part, subject, context);
        ConsumerGathering.Add(part, facts, subject, context);
    }

    /// <summary>Nominal voltage of what feeds a load, V: an outlet, a converter, or the bank.</summary>
    private static double FeedVolts(WiredLoad load, GatherContext context)
    {
        if (load.Inverter is { } inverter)
        {
            return context.Wiring.Find<WiredInverter>(inverter)?.Inverter.AcVoltage.Value.Volts ?? 0;
        }

        ConsumerEnds? ends = ConsumerEnds.Of(load, context);
        return ends?.Bank(context) is null && ends?.FeedingConverter(context) is { } converter
            ? converter.Converter.Output.Value.Volts
            : context.Data.NominalBankVolts(context.Pack);
    }
}
