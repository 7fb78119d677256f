using WireCheck.Circuit.Wiring;
using WireCheck.Description.Kinds;
using WireCheck.Facts.Catalogue;
using WireCheck.States;

namespace WireCheck.Facts.Gather;

/// <summary>Gathers what a vehicle's outlet delivers.</summary>
public sealed class VehicleGatherer : Gatherer<Vehicle>
{
    public override void Gather(Vehicle part, FactSubject subject, GatherContext context)
    {
        WiredVehicle vehicle = (WiredVehicle)context.Wiring[part.Id];
        subject.SetNumber(VehicleFacts.FuseRating, part.Fuse.Value.Amperes);
        NoteIfAssumed(subject, part, part.Resistance, FormattableString.Invariant($"resistance {part.Resistance.Value.Milliohms:0.###} mΩ"), "peak_current", "peak_charge", "peak_cell_current", "lead_current");
        VehicleCharging.Add(vehicle, subject, context);
        SingleFaultGathering.AddLostBattery(vehicle, LostBatteryFacts.Vehicle, subject, context);
        foreach (OperatingPoint point in context.SteadyPoints())
        {
            subject.Largest(VehicleFacts.Current, Math.Max(0, -point.Amps(vehicle.Element)), point);
        }
    }
}
