using WireCheck.Circuit.Solving;
using WireCheck.Circuit.Topology;
using WireCheck.Circuit.Wiring;
using WireCheck.Description;
using WireCheck.Description.Kinds;
using WireCheck.Faults.Coordination;
using WireCheck.Knowledge;
using WireCheck.Physics;
using WireCheck.Quantities;
using WireCheck.States;

namespace WireCheck.Faults;

/// <summary>What the study takes from the box that has been solved.</summary>
/// <param name="Pack">The box.</param>
/// <param name="Data">The library's values.</param>
/// <param name="Corners">Its corners; the two extreme ones are taken.</param>
/// <param name="Graph">Its ways.</param>
/// <param name="Poles">The pole of each node.</param>
/// <param name="Ampacity">What a conductor may carry for ever where it lies, A; 0 where no table has it.</param>
/// <param name="Ambient">Air around a conductor, °C.</param>
/// <param name="LeadAmpacity">The same as the ampacity for the lead of a load, by its size, A.</param>
/// <param name="HottestInside">Hottest air in the box, °C: around its fuses and breakers.</param>
public sealed record FaultInput(
    Pack Pack, WiringData Data, IReadOnlyList<Corner> Corners, WiringGraph Graph, Pole[] Poles,
    Func<Conductor, double> Ampacity, Func<Conductor, double> Ambient, Func<ConductorSize, double> LeadAmpacity, double HottestInside);

/// <summary>
/// A bolted short at every place of a box, for every source, at its highest and at its lowest: the current, what opens and
/// when, what gets hot, which devices in series would open together.
/// </summary>
public sealed class FaultStudy
{
    private readonly FaultCircuit _circuit;
    private readonly FaultDevice[] _devices;
    private readonly FaultWires _wires;
    private readonly SeriesPairs _pairs;
    private readonly ClearingSequence _sequence;
    private readonly DarkFinder _dark;
    private readonly double _stoppedAmps;
    private readonly double _henriesPerMetre;
    private readonly WiredConductor[] _conductors;
    private readonly List<FaultOutcome>?[] _known;
    private readonly int? _case;
    private readonly Dictionary<string, List<PointFaults>> _byPart = new(StringComparer.Ordinal);
    private readonly FaultPoint?[] _byNode;

    private FaultStudy(FaultInput input)
    {
        _circuit = new FaultCircuit(input.Pack, input.Data, input.Corners);
        BoxWiring wiring = _circuit.Wiring;
        FaultParts parts = new(wiring, input);
        _devices = parts.Devices;
        _wires = new FaultWires(parts.Wires);
        _pairs = new SeriesPairs(parts.OwnDevices, input.Graph, input.Data.Assumed("same_current"));
        _stoppedAmps = input.Data.Assumed("fault_current_stopped");
        _sequence = new ClearingSequence(_circuit.Network, _devices, _wires, [.. wiring.Of<WiredBms>()], _stoppedAmps, input.Data.Assumed("in_the_way"));
        _dark = new DarkFinder(wiring, input.Graph);
        _conductors = [.. wiring.Of<WiredConductor>()];
        _henriesPerMetre = input.Data.Assumed("conductor_inductance_per_metre");
        _known = new List<FaultOutcome>?[wiring.Network.NodeCount];
        _case = IsMetal(input.Pack) ? wiring.Node("case", "") : null;
        _byNode = new FaultPoint?[wiring.Network.NodeCount];
        List<PointFaults> points = [];
        foreach (FaultPoint point in FaultPoints.In(wiring, input.Graph, input.Poles))
        {
            PointFaults faults = new(point);
            points.Add(faults);
            _byNode[point.Node] ??= point;
            if (!_byPart.TryGetValue(point.PartId, out List<PointFaults>? own))
            {
                own = [];
                _byPart.Add(point.PartId, own);
            }

            own.Add(faults);
        }

        Points = points;
    }

    /// <summary>Every place with what was found there, conductors first.</summary>
    public IReadOnlyList<PointFaults> Points { get; }

    /// <summary>Devices in series, with the range of currents over which they would open together.</summary>
    public IReadOnlyList<SeriesPair> Pairs { get; private set; } = [];

    /// <summary>Shorts that were solved, sequences counted once.</summary>
    public int Solved { get; private set; }

    /// <summary>Shorts without an answer; none is expected.</summary>
    public IReadOnlyList<FaultPoint> Unsolved => _unsolved;

    /// <summary>Works out every fault of a box.</summary>
    public static FaultStudy Of(FaultInput input)
    {
        FaultStudy study = new(input);
        foreach (FaultCase faultCase in study._circuit.Cases())
        {
            study.Run(faultCase);
        }

        study.Pairs = study._pairs.Compared();
        return study;
    }

    /// <summary>The places that belong to a part or conductor leg.</summary>
    public IReadOnlyList<PointFaults> PointsOf(string partId) => _byPart.TryGetValue(partId, out List<PointFaults>? points) ? points : [];

    /// <summary>Ids of what goes dark when the devices of an outcome have opened.</summary>
    public IReadOnlyList<string> Dark(FaultOutcome outcome) => _dark.After([.. outcome.Steps.Select(s => s.DeviceId)]);

    /// <summary>Ids of what goes dark when one device opens.</summary>
    public IReadOnlyList<string> DarkAfter(string deviceId) => _dark.After([deviceId]);

    /// <summary>Highest current of any fault through a fuse or breaker, A, and the fault; null when none reaches it.</summary>
    public (double Amps, FaultOutcome In)? HighestThrough(string deviceId)
    {
        FaultDevice? device = Array.Find(_devices, d => d.Id == deviceId);
        return device?.HighestIn is { } outcome ? (device.HighestAmps, outcome) : null;
    }

    /// <summary>Opening times of a fuse or breaker.</summary>
    public TimeCurrentBand? BandOf(string deviceId) => Array.Find(_devices, d => d.Id == deviceId)?.Band;

    /// <summary>The hottest a conductor becomes in any fault, and the fault; null when none warms it.</summary>
    public (WireHeat Heat, FaultOutcome In)? HottestOf(string wireId)
    {
        FaultWire? wire = Array.Find(_wires.All, w => w.Id == wireId);
        return wire is { Worst: { } worst, WorstIn: { } outcome } ? (worst, outcome) : null;
    }

    /// <summary>Largest current above its ampacity that no device ends in a conductor, A, and the fault; null when there is none.</summary>
    public (double Amps, FaultOutcome In)? SustainedIn(string wireId)
    {
        FaultWire? wire = Array.Find(_wires.All, w => w.Id == wireId);
        return wire?.SustainedIn is { } outcome ? (wire.SustainedAmps, outcome) : null;
    }

    /// <summary>Shorts that hurt more than one conductor, in the order in which they were worked out.</summary>
    public IReadOnlyList<FaultOutcome> HurtingSeveral => _hurting;

    private readonly List<FaultOutcome> _hurting = [];

    /// <summary>The first place with the node that an outcome shorts.</summary>
    public FaultPoint PointOf(FaultOutcome outcome) => _byNode[outcome.From]!;

    private readonly List<FaultPoint> _unsolved = [];

    /// <summary>True when the case conducts and something joins it to the circuit.</summary>
    private bool IsMetal(Pack pack)
    {
        int node = _circuit.Wiring.Node("case", "");
        return pack.Surroundings.Enclosure is { } box
            && (box.Conducts)
            && _circuit.Wiring.Network.Elements.Any(e => e.A == node || e.B == node);
    }

    private void Run(FaultCase faultCase)
    {
        if (!_circuit.SetUp(faultCase))
        {
            _unsolved.AddRange(Points.Select(p => p.Point));
            return;
        }

        Array.Clear(_known);
        foreach (PointFaults faults in Points)
        {
            FaultOutcome? outcome = faultCase.Highest ? ToWorstBank(faultCase, faults.Point) : Short(faultCase, faults.Point, faults.Point.ReturnNode);
            faults.Keep(outcome);
            if (_case is { } metal && metal != faults.Point.Node)
            {
                faults.KeepCase(Short(faultCase, faults.Point, metal));
            }
        }
    }

    /// <summary>
    /// L/R of the loop of the present short, s. Half L I² of the whole is the sum of the halves of its wires, each by the square of
    /// its share of the current.
    /// </summary>
    private double LoopSeconds(double volts, double amps)
    {
        double metres = 0;
        foreach (WiredConductor wire in _conductors)
        {
            double share = _circuit.Network.Amps[wire.Element.Index] / amps;
            metres += share * share * wire.Conductor.Length.Value.Meters;
        }

        return SeriesCharge.LoopTimeConstant(volts / amps, metres * _henriesPerMetre);
    }

    /// <summary>The short straight to the negative of the bank that drives the most.</summary>
    private FaultOutcome? ToWorstBank(FaultCase faultCase, FaultPoint point)
    {
        int worst = -1;
        double most = 0;
        int banks = 0;
        foreach (WiredBank bank in _circuit.Wiring.Parts.OfType<WiredBank>())
        {
            int minus = _circuit.Wiring.Node(bank.Part.Id, "-");
            banks++;
            worst = worst < 0 ? minus : worst;
            if (banks > 1)
            {
                most = banks == 2 ? FirstAmps(point.Node, worst) : most;
                double amps = FirstAmps(point.Node, minus);
                (worst, most) = amps > most ? (minus, amps) : (worst, most);
            }
        }

        return worst < 0 ? Short(faultCase, point, point.ReturnNode) : Short(faultCase, point, worst);
    }

    private double FirstAmps(int from, int to)
    {
        double amps = from != to && _circuit.Network.Short(from, to, 0) ? Math.Abs(_circuit.Network.ShortAmps) : 0;
        _circuit.Network.End();
        return amps;
    }

    /// <summary>One short with all that follows; null when nothing feeds it.</summary>
    private FaultOutcome? Short(FaultCase faultCase, FaultPoint point, int to)
    {
        if (point.Node == to)
        {
            return null;
        }

        List<FaultOutcome> known = _known[point.Node] ??= [];
        foreach (FaultOutcome earlier in known)
        {
            if (earlier.To == to)
            {
                return earlier.Amps >= _stoppedAmps ? earlier : null;
            }
        }

        ShortedNetwork network = _circuit.Network;
        double volts = Math.Abs(network.Volts(point.Node, to));
        bool solved = network.Short(point.Node, to, 0);
        Solved++;
        FaultOutcome outcome = new() { Case = faultCase, From = point.Node, To = to, Amps = solved ? Math.Abs(network.ShortAmps) : 0 };
        known.Add(outcome);
        if (solved && outcome.Amps >= _stoppedAmps)
        {
            if (faultCase.FromBank)
            {
                _pairs.Note(network, outcome);
                outcome.LoopSeconds = LoopSeconds(volts, outcome.Amps);
            }

            solved = _sequence.Follow(outcome);
            if (outcome.FirstHurt is not null)
            {
                _hurting.Add(outcome);
            }
        }

        network.End();
        if (!solved)
        {
            _unsolved.Add(point);
        }

        return outcome.Amps >= _stoppedAmps ? outcome : null;
    }
}
