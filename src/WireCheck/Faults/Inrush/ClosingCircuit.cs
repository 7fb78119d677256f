using WireCheck.Circuit.Elements;
using WireCheck.Circuit.Solving;
using WireCheck.Circuit.Wiring;

namespace WireCheck.Faults.Inrush;

/// <summary>
/// The box at the moment a contact closes: a discharged capacitor is a short through its series resistance, nothing consumes
/// power yet, and relays have not moved.
/// </summary>
internal sealed class ClosingCircuit
{
    private readonly BoxWiring _wiring;
    private readonly Contact[] _shorts;
    private readonly OperatingPointSolver _solver;
    private readonly double _henriesPerMetre;

    internal ClosingCircuit(BoxWiring wiring, IReadOnlyList<InrushCapacitor> capacitors)
    {
        _wiring = wiring;
        _shorts = new Contact[capacitors.Count];
        for (int i = 0; i < _shorts.Length; i++)
        {
            InrushCapacitor capacitor = capacitors[i];
            _shorts[i] = new Contact(capacitor.PartId + ".capacitor", capacitor.Plus, capacitor.Minus, capacitor.Ohms);
        }

        _solver = new OperatingPointSolver(wiring.Network.With(_shorts));
        _henriesPerMetre = wiring.Data.Assumed("conductor_inductance_per_metre");
    }

    /// <summary>Solves with nothing running and no capacitor joined.</summary>
    internal Solution SolveUncharged()
    {
        foreach (WiredPart part in _wiring.Parts)
        {
            if (part is IPoweredInput input)
            {
                input.On = false;
            }
            else if (part is WiredLoad load)
            {
                load.SetRunning(false);
            }
        }

        Array.ForEach(_shorts, s => s.Closed = false);
        _solver.ForgetIslands();
        return _solver.Solve().Snapshot();
    }

    /// <summary>
    /// The first moment with some capacitors joined: the loop they see together and each fuse's share. Null when no current
    /// flows or the moment has no solution.
    /// </summary>
    /// <param name="joined">True for each capacitor that is charged and has no soft start.</param>
    /// <param name="before">The box without them.</param>
    /// <param name="volts">What stands at them before any current flows, V.</param>
    internal (InrushLoop Loop, IReadOnlyList<InrushShare> Fuses)? FirstMoment(bool[] joined, Solution before, double volts)
    {
        for (int i = 0; i < _shorts.Length; i++)
        {
            _shorts[i].Closed = joined[i];
        }

        Solution moment = _solver.Solve();
        double amps = 0;
        for (int i = 0; i < _shorts.Length; i++)
        {
            amps += joined[i] ? moment.Current(_shorts[i]) : 0;
        }

        if (moment.Outcome != SolveOutcome.Solved || !(amps > 0))
        {
            return null;
        }

        double Share(Element element) => (moment.Current(element) - before.Current(element)) / amps;
        double henries = 0;
        List<InrushShare> fuses = [];
        foreach (WiredPart part in _wiring.Parts)
        {
            switch (part)
            {
                // Half L I² of the whole is the sum of the halves of its parts.
                case WiredConductor wire:
                    henries += Squared(Share(wire.Element)) * wire.Conductor.Length.Value.Meters * _henriesPerMetre;
                    break;
                case WiredLoad { LeadPlus: { } plus, LeadMinus: { } minus, Load.Lead: { } lead }:
                    henries += (Squared(Share(plus)) + Squared(Share(minus))) * lead.Length.Value.Meters * _henriesPerMetre;
                    break;
                case WiredFuse fuse when Math.Abs(Share(fuse.Element)) > SmallestShare:
                    fuses.Add(new InrushShare(fuse.Part.Id, Math.Min(1, Math.Abs(Share(fuse.Element)))));
                    break;
            }
        }

        return (new InrushLoop(volts / amps, henries), fuses);
    }

    /// <summary>A fuse that passes less than this part of an inrush is not in its way.</summary>
    private const double SmallestShare = 0.01;

    private static double Squared(double value) => value * value;
}
