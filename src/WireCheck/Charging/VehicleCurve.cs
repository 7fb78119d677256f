using WireCheck.Circuit.Solving;
using WireCheck.Circuit.Wiring;
using WireCheck.States;

namespace WireCheck.Charging;

/// <summary>One point of a vehicle's curve.</summary>
/// <param name="StateOfCharge">Of the cells, 0 to 1.</param>
/// <param name="EngineRuns">At the upper end of the vehicle's voltage, otherwise at the lower.</param>
/// <param name="Amps">What flows into the box, A; negative when the box feeds the vehicle.</param>
/// <param name="BankVolts">Between the bank's terminals, V.</param>
/// <param name="CellAmps">Largest current into a cell, A.</param>
/// <param name="Point">The solved point.</param>
public sealed record VehicleCurvePoint(
    double StateOfCharge, bool EngineRuns, double Amps, double BankVolts, double CellAmps, OperatingPoint Point);

/// <summary>
/// What a vehicle drives straight into a bank, nothing between but wire: ΔV / R, over the whole range of charge and with
/// the engine off and running. The lowest resistances are taken, since the largest current is looked for.
/// </summary>
/// <param name="VehicleId">The vehicle.</param>
/// <param name="BankId">The bank.</param>
/// <param name="Points">By state of charge, engine running first.</param>
/// <param name="Peak">The point of the largest current.</param>
public sealed record VehicleCurve(
    string VehicleId, string BankId, IReadOnlyList<VehicleCurvePoint> Points, VehicleCurvePoint Peak)
{
    /// <summary>Steps of the state of charge from empty to full.</summary>
    private const int Steps = 20;

    /// <summary>The curve of a vehicle; null when no state of it has a solution.</summary>
    /// <param name="states">A solver of the box.</param>
    /// <param name="wiring">The box.</param>
    /// <param name="vehicle">The vehicle.</param>
    /// <param name="bank">The bank it feeds.</param>
    /// <param name="mode">The mode in which only this vehicle charges.</param>
    /// <param name="corner">A corner of lowest resistance.</param>
    internal static VehicleCurve? Find(
        StateSolver states, BoxWiring wiring, ChargeSource vehicle, WiredBank bank, BoxMode mode, Corner corner)
    {
        List<VehicleCurvePoint> points = [];
        VehicleCurvePoint? peak = null;
        foreach (bool engineRuns in new[] { true, false })
        {
            BoxMode here = engineRuns ? mode : ChargingModes.With(mode, vehicle.Id, SourceState.Unpowered);
            for (int step = 0; step <= Steps; step++)
            {
                double charge = (double)step / Steps;
                Corner at = corner with { Conditions = corner.Conditions with { StateOfCharge = charge } };
                OperatingPoint point = states.Solve(here, at);
                if (point.Solution.Outcome != SolveOutcome.Solved)
                {
                    continue;
                }

                BankCharge held = BankCharge.Of(wiring, bank, point);
                VehicleCurvePoint found = new(charge, engineRuns, vehicle.Amps(point), held.Volts, held.CellAmps, point);
                points.Add(found);
                peak = peak is null || found.Amps > peak.Amps ? found : peak;
            }
        }

        return peak is null ? null : new VehicleCurve(vehicle.Id, bank.Part.Id, points, peak);
    }
}
