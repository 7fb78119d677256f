using WireCheck.Charging;
using WireCheck.Circuit.Wiring;
using WireCheck.Description.Kinds;
using WireCheck.Facts.Catalogue;

namespace WireCheck.Facts.Gather;

/// <summary>Gathers what a vehicle drives straight into a bank.</summary>
internal static class VehicleCharging
{
    internal static void Add(WiredVehicle vehicle, FactSubject subject, GatherContext context)
    {
        string id = vehicle.Part.Id;
        if (context.Charging.Source(id) is not { } source || context.Charging.DirectBank(source) is not { } bank)
        {
            return;
        }

        subject.Set(VehicleChargeFacts.DirectBank, bank.Part.Id);
        ChargerCharging.AddVoltages(ChargeVoltageFacts.Vehicle, id, source.HighestVolts, bank, subject, context);
        subject.SetNumber(VehicleChargeFacts.CellChargeLimit, bank.Cells.Charge.Limit.Value.Amperes);
        if (Banks.BmsOf(context, bank) is { } bms)
        {
            subject.SetNumber(VehicleChargeFacts.BmsChargeLimit, (bms.Bms.ChargeContinuous ?? bms.Bms.Continuous).Value.Amperes);
        }

        if (vehicle.Vehicle.At is { } at && context.Pack.Find(at.Value) is Port port)
        {
            subject.Set(VehicleChargeFacts.Port, port.Id);
            subject.SetNumber(VehicleChargeFacts.PortRated, port.Rated.Value.Amperes);
        }

        foreach (VehicleCurve curve in context.Charging.Vehicles)
        {
            if (curve.VehicleId == id)
            {
                AddPeak(curve.Peak, subject, context);
            }
        }
    }

    private static void AddPeak(VehicleCurvePoint peak, FactSubject subject, GatherContext context)
    {
        subject.SetNumber(VehicleChargeFacts.PeakCurrent, Math.Max(0, peak.Amps));
        subject.SetNumber(VehicleChargeFacts.PeakCharge, peak.StateOfCharge);
        subject.SetNumber(VehicleChargeFacts.PeakCellCurrent, Math.Max(0, peak.CellAmps));
        double worst = 0;
        double inTheWay = context.Data.Assumed("in_the_way");
        foreach (WiredConductor wire in context.Wiring.Of<WiredConductor>())
        {
            double amps = Math.Abs(peak.Point.Amps(wire.Element));
            double ampacity = context.Ampacities.Amps(wire.Conductor);
            if (amps >= inTheWay * peak.Amps && ampacity > 0 && amps / ampacity > worst)
            {
                worst = amps / ampacity;
                subject.Set(VehicleChargeFacts.LeadConductor, wire.Part.Id);
                subject.SetNumber(VehicleChargeFacts.LeadCurrent, amps);
                subject.SetNumber(VehicleChargeFacts.LeadAmpacity, ampacity);
            }
        }
    }
}
