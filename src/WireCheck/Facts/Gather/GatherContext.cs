using WireCheck.Charging;
using WireCheck.Circuit.Topology;
using WireCheck.Circuit.Wiring;
using WireCheck.Description;
using WireCheck.Energy;
using WireCheck.Faults;
using WireCheck.Faults.Inrush;
using WireCheck.Faults.SingleFaults;
using WireCheck.Knowledge;
using WireCheck.Measured;
using WireCheck.Standby;
using WireCheck.States;
using WireCheck.Switching;

namespace WireCheck.Facts.Gather;

/// <summary>What the gatherers share: the solved box and what is worked out of it once.</summary>
public sealed class GatherContext
{
    /// <summary>Prepares a solved box for gathering.</summary>
    /// <param name="box">The box.</param>
    /// <param name="alike">
    /// A box that differs in sizes only, whose studies of switches and of energy are taken for this one; null works them out.
    /// </param>
    public GatherContext(SolvedBox box, GatherContext? alike = null)
    {
        Box = box;
        _switching = alike?.Switching;
        _energy = alike?.Energy;
        Graph = WiringGraph.Of(box.Wiring);
        Sources = [.. SourcePoint.In(box.Wiring).Select(s =>
            box.Wiring[s.PartId] switch
            {
                WiredBank bank => s with { Volts = Stacks.HighestVolts(bank) },
                WiredPanel panel => s with { Volts = Charging.ColdOf(panel).ColdVolts },
                _ => s,
            })];
        Poles = Circuit.Topology.Poles.Of(box.Wiring, Graph, Sources);
        Ampacities = new AmpacityFinder(this);
        Guards = new GuardFinder(this);
        States = new GatherStates(this);
    }

    public SolvedBox Box { get; }

    public BoxWiring Wiring => Box.Wiring;

    public Pack Pack => Box.Pack;

    public WiringData Data => Wiring.Data;

    public Library Library => Data.Library;

    /// <summary>Every way through the wiring, contacts counted as closed.</summary>
    public WiringGraph Graph { get; }

    /// <summary>Everything that can feed power in, banks first, each at its highest voltage: panels in frost, strings of them added up.</summary>
    public IReadOnlyList<SourcePoint> Sources { get; }

    /// <summary>The pole of each node.</summary>
    public Pole[] Poles { get; }

    /// <summary>Ampacity of conductors where they lie.</summary>
    public AmpacityFinder Ampacities { get; }

    /// <summary>What guards each conductor.</summary>
    public GuardFinder Guards { get; }

    /// <summary>How the box is charged, and what flows back.</summary>
    public ChargingStudy Charging => _charging ??= new ChargingStudy(Box, Graph);

    /// <summary>When devices open and when the conductors behind them are hurt.</summary>
    public CoordinationFinder Coordination => _coordination ??= new CoordinationFinder(this);

    /// <summary>Every state of the switches: what is live, and by which ways.</summary>
    public SwitchingStudy Switching => _switching ??= BegunSwitching?.GetAwaiter().GetResult() ?? SwitchingStudy.Of(Pack, Data);

    /// <summary>The same study where it was begun before; null where it is made when it is asked for.</summary>
    internal Task<SwitchingStudy>? BegunSwitching { private get; init; }

    /// <summary>Further solves that gatherers ask for.</summary>
    public GatherStates States { get; }

    /// <summary>What flows when contacts close onto discharged capacitors.</summary>
    public InrushStudy Inrush => _inrush ??= new InrushStudy(Box);

    /// <summary>The box with one thing wrong at a time.</summary>
    public SingleFaultStudy SingleFaults => _singleFaults ??= new SingleFaultStudy(Box, Graph, Poles);

    /// <summary>What a source does when its battery is taken away.</summary>
    public LostBatteryStudy LostBatteries => _lostBatteries ??= new LostBatteryStudy(Box);

    /// <summary>Positive conductors on the metal case.</summary>
    public CaseTouch CaseTouch => _caseTouch ??= new CaseTouch(Box);

    private InrushStudy? _inrush;

    private LostBatteryStudy? _lostBatteries;

    private CaseTouch? _caseTouch;

    private SingleFaultStudy? _singleFaults;

    /// <summary>The box warm in each lasting mode: circuit and heat settled together.</summary>
    public HeatedBox Heat => _heat ??= HeatedBox.Solve(Box, States.Solver);

    /// <summary>
    /// Hottest air inside the box, °C, over all lasting modes in the hottest air around it; not above what cells stand, beyond
    /// which the box is at fault and not each part in it.
    /// </summary>
    public double HottestInsideCelsius => Math.Min(
        Heat.HottestInsideCelsius, Math.Max(Data.Assumed("hottest_inside"), Pack.Surroundings.Ambient.Value.To.DegreesCelsius));

    /// <summary>How long the box runs and charges.</summary>
    public EnergyStudy Energy => _energy ??= new EnergyStudy(Box, Graph);

    private EnergyStudy? _energy;

    /// <summary>Shorts at every place.</summary>
    public FaultStudy Faults => _faults ??= FaultStudy.Of(new FaultInput(
        Pack, Data, Box.Corners, Graph, Poles, Ampacities.Amps, Ampacities.AmbientOf, Ampacities.LeadAmps, HottestInsideCelsius));

    /// <summary>Which wire tells of shorts that are not cleared in time.</summary>
    public UnclearedShorts UnclearedShorts => _unclearedShorts ??= new UnclearedShorts(this);

    private UnclearedShorts? _unclearedShorts;

    /// <summary>The order in which cells are joined.</summary>
    public Stacks Stacks => _stacks ??= new Stacks(this);

    /// <summary>What the box draws at rest.</summary>
    public StandbyStudy Standby => _standby ??= new StandbyStudy(Box);

    /// <summary>Readings from the bench beside the prediction.</summary>
    public ReadingStudy Measured => _measured ??= new ReadingStudy(Box, Graph);

    private ReadingStudy? _measured;
    private StandbyStudy? _standby;
    private Stacks? _stacks;
    private ChargingStudy? _charging;
    private CoordinationFinder? _coordination;
    private HeatedBox? _heat;
    private FaultStudy? _faults;
    private SwitchingStudy? _switching;

    /// <summary>Names a solved point in a fact.</summary>
    public static FactPlace PlaceOf(OperatingPoint point) => new(point.Mode.Id, point.Corner.Words);
}
