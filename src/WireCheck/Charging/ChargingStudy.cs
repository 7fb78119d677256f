using WireCheck.Circuit.Solving;
using WireCheck.Circuit.Topology;
using WireCheck.Circuit.Wiring;
using WireCheck.States;

namespace WireCheck.Charging;

/// <summary>
/// How a box is charged, and what flows back: every question is answered once, when it is first asked. A box without a
/// source answers all of them with nothing.
/// </summary>
public sealed class ChargingStudy
{
    private readonly SolvedBox _box;
    private readonly WiringGraph _graph;
    private readonly Lazy<StateSolver> _states;
    private readonly Lazy<IReadOnlyList<ChargePoint>> _points;
    private readonly Lazy<IReadOnlyList<ChargeEnd>> _ends;
    private readonly Lazy<IReadOnlyList<VehicleCurve>> _vehicles;
    private readonly Lazy<IReadOnlyList<OperatingPoint>> _withoutPower;
    private readonly Lazy<IReadOnlyList<NightDraw>> _nights;
    private readonly Lazy<IReadOnlyList<ColdPanel>> _cold;
    private readonly Lazy<IReadOnlyList<OpenBms>> _openBms;
    private readonly Lazy<IReadOnlyList<ReversedPlug>> _reversed;
    private readonly Lazy<IReadOnlyList<BankJoin>> _joins;
    private readonly Lazy<IReadOnlyList<PortShort>> _shorts;
    private readonly Lazy<IReadOnlyList<BmsWake>> _wakes;

    /// <summary>Prepares the study; nothing is solved yet.</summary>
    /// <param name="box">The solved box.</param>
    /// <param name="graph">Its ways, contacts counted as closed.</param>
    public ChargingStudy(SolvedBox box, WiringGraph graph)
    {
        _box = box;
        _graph = graph;
        Sources = ChargeSource.In(box.Wiring);
        Modes = ChargingModes.In(box);
        _states = new Lazy<StateSolver>(() => new StateSolver(box.Wiring));
        _points = new Lazy<IReadOnlyList<ChargePoint>>(FindPoints);
        _ends = new Lazy<IReadOnlyList<ChargeEnd>>(FindEnds);
        _vehicles = new Lazy<IReadOnlyList<VehicleCurve>>(FindVehicles);
        _withoutPower = new Lazy<IReadOnlyList<OperatingPoint>>(() => Charging.WithoutPower.Find(box, _states.Value));
        _nights = new Lazy<IReadOnlyList<NightDraw>>(() =>
            box.Wiring.Of<WiredPanel>().Any() ? NightDraw.Find(box, graph, WithoutPower) : []);
        _cold = new Lazy<IReadOnlyList<ColdPanel>>(() => ColdPanel.AtControllers(box, _states.Value, graph));
        _openBms = new Lazy<IReadOnlyList<OpenBms>>(FindOpenBms);
        _reversed = new Lazy<IReadOnlyList<ReversedPlug>>(() => ReversedPlug.Find(box));
        _joins = new Lazy<IReadOnlyList<BankJoin>>(() => BankJoin.Find(box, _states.Value, graph));
        _shorts = new Lazy<IReadOnlyList<PortShort>>(() => PortShort.Find(box));
        _wakes = new Lazy<IReadOnlyList<BmsWake>>(() => BmsWake.Find(box, _states.Value, Sources));
    }

    /// <summary>Every place where charge comes in.</summary>
    public IReadOnlyList<ChargeSource> Sources { get; }

    /// <summary>The modes in which something charges and no load runs.</summary>
    public IReadOnlyList<BoxMode> Modes { get; }

    /// <summary>Each of those modes at each corner, where it has a solution.</summary>
    public IReadOnlyList<ChargePoint> Points => _points.Value;

    /// <summary>Where each of those modes ends: with the highest resistances, so that what is lost on the way is seen.</summary>
    public IReadOnlyList<ChargeEnd> Ends => _ends.Value;

    /// <summary>The curve of each vehicle that feeds a bank by wire alone.</summary>
    public IReadOnlyList<VehicleCurve> Vehicles => _vehicles.Value;

    /// <summary>The full box with every source plugged in and without power, switches closed and open.</summary>
    public IReadOnlyList<OperatingPoint> WithoutPower => _withoutPower.Value;

    /// <summary>Each panel by night.</summary>
    public IReadOnlyList<NightDraw> Nights => _nights.Value;

    /// <summary>Voltage in frost at each controller that panels feed.</summary>
    public IReadOnlyList<ColdPanel> ColdPanels => _cold.Value;

    /// <summary>Each of the modes with the BMS open; nothing for a box without one.</summary>
    public IReadOnlyList<OpenBms> WithBmsOpen => _openBms.Value;

    /// <summary>Each source on a port, the wrong way round.</summary>
    public IReadOnlyList<ReversedPlug> Reversed => _reversed.Value;

    /// <summary>Strings that stand side by side, at the moment of joining.</summary>
    public IReadOnlyList<BankJoin> Joins => _joins.Value;

    /// <summary>A tool across the pins of each port that takes charge.</summary>
    public IReadOnlyList<PortShort> Shorts => _shorts.Value;

    /// <summary>What brings each BMS back after it has cut off at low charge.</summary>
    public IReadOnlyList<BmsWake> Wakes => _wakes.Value;

    /// <summary>The source of that id; null when it is none or does not end on the wiring.</summary>
    public ChargeSource? Source(string id)
    {
        foreach (ChargeSource source in Sources)
        {
            if (source.Id == id)
            {
                return source;
            }
        }

        return null;
    }

    /// <summary>The bank that a source feeds by wire, contacts and diodes alone; null when it feeds none so.</summary>
    public WiredBank? DirectBank(ChargeSource source) => source.DirectBank(_box.Wiring, _graph);

    /// <summary>The voltage in frost of a panel and those in series with it.</summary>
    public ColdPanel ColdOf(WiredPanel panel) => ColdPanel.Of(_box, _graph, panel);

    private IReadOnlyList<ChargePoint> FindPoints()
    {
        List<ChargePoint> found = [];
        foreach (OperatingPoint point in _box.Points)
        {
            if (point.Solution.Outcome == SolveOutcome.Solved && Modes.Contains(point.Mode))
            {
                found.Add(new ChargePoint(
                    point,
                    [.. Powered(point.Mode).Select(s => new SourceCharge(s.Id, s.Amps(point), s.Volts(point), s.LimitAt(point)))],
                    [.. _box.Wiring.Of<WiredBank>().Select(b => BankCharge.Of(_box.Wiring, b, point))]));
            }
        }

        return found;
    }

    private IReadOnlyList<ChargeEnd> FindEnds()
    {
        List<ChargeEnd> ends = [];
        Corner corner = _box.Corners.First(c => c.Charge == Charge.Full && c.HighestResistance);
        foreach (BoxMode mode in Modes.Where(m => !Powered(m).Any(IsBarePanel)))
        {
            double highest = 0;
            foreach (ChargeSource source in Powered(mode))
            {
                highest = Math.Max(highest, source.HighestVolts);
            }

            if (_box.Wiring.Of<WiredBank>().Any() && ChargeEnd.Find(_states.Value, _box.Wiring, mode, corner, highest) is { } end)
            {
                ends.Add(end);
            }
        }

        return ends;
    }

    private IReadOnlyList<VehicleCurve> FindVehicles()
    {
        List<VehicleCurve> curves = [];
        Corner corner = _box.Corners.First(c => c.Charge == Charge.Full && !c.HighestResistance);
        foreach (ChargeSource source in Sources)
        {
            BoxMode? alone = Modes.FirstOrDefault(m => m.Source(source.Id) == SourceState.Powered);
            if (source.Part is WiredVehicle && alone is not null && DirectBank(source) is { } bank
                && VehicleCurve.Find(_states.Value, _box.Wiring, source, bank, alone, corner) is { } curve)
            {
                curves.Add(curve);
            }
        }

        return curves;
    }

    private IReadOnlyList<OpenBms> FindOpenBms()
    {
        List<OpenBms> found = [];
        if (!_box.Wiring.Of<WiredBms>().Any())
        {
            return found;
        }

        Corner corner = _box.Corners.First(c => c.Charge == Charge.Empty && !c.HighestResistance);
        foreach (BoxMode mode in Modes)
        {
            IEnumerable<ChargeSource> bare = Powered(mode).Where(s => s.Part is not WiredPanel || IsBarePanel(s));
            if (OpenBms.Find(_states.Value, _box.Wiring, bare, mode, corner) is { } open)
            {
                found.Add(open);
            }
        }

        return found;
    }

    private bool IsBarePanel(ChargeSource source) =>
        source.Part is WiredPanel panel && NightDraw.ControllerOf(_box.Wiring, _graph, panel) is null;

    private IEnumerable<ChargeSource> Powered(BoxMode mode) => Sources.Where(s => mode.Source(s.Id) == SourceState.Powered);
}
