using WireCheck.Circuit.Wiring;
using WireCheck.Description.Kinds;
using WireCheck.Facts.Catalogue;
using WireCheck.States;

namespace WireCheck.Facts.Gather;

/// <summary>Gathers the voltage at the input of a charger from direct current. What a panel brings in frost is reckoned elsewhere.</summary>
internal static class ChargerInput
{
    internal static void Add(WiredCharger charger, FactSubject subject, GatherContext context)
    {
        if (charger.Charger.ChargerKind.Value != ChargerKind.DcDc)
        {
            return;
        }

        foreach (OperatingPoint point in context.SteadyPoints())
        {
            if (charger.Stage is { } stage && point.Solution.Island(stage.A) == point.Solution.Island(stage.B))
            {
                subject.Largest(ChargerWindowFacts.InputVoltageHigh, point.Volts(stage.A, stage.B), point);
            }
            else if (context.Wiring.Find<WiredVehicle>(charger.Charger.From?.Value) is { } vehicle
                && point.Mode.Source(vehicle.Part.Id) == SourceState.Powered)
            {
                subject.Largest(ChargerWindowFacts.InputVoltageHigh, vehicle.Vehicle.Voltage.Value.To.Volts, point);
            }
        }
    }
}
