using WireCheck.Circuit.Elements;
using WireCheck.Circuit.Solving;
using WireCheck.Circuit.Topology;
using WireCheck.Circuit.Wiring;
using WireCheck.Description;
using WireCheck.States;

namespace WireCheck.Switching;

/// <summary>
/// A box wired once more for the study of its switches, full, at its lowest resistances and with cold coils, which is when
/// most is live: loads at standby, those that are resistances or lie between two feeds as such, and a test burden ready at each point of the table.
/// </summary>
internal sealed class SwitchedBox
{
    private readonly BoxMode _loadsAtStandby;

    internal SwitchedBox(Pack pack, WiringData data)
    {
        Wiring = BridgingLoads.Wire(pack, data);
        Rails = Rails.Of(Wiring);
        Points = LivePoints.Of(Wiring, Rails);
        BurdenOhms = data.Assumed("test_burden");
        Burdens = new Contact?[Points.Count];
        for (int i = 0; i < Points.Count; i++)
        {
            LivePoint point = Points[i];
            if (point.Kind != LivePointKind.Outlet && point.Plus != point.Minus)
            {
                Burdens[i] = Wiring.Network.Add(new Contact("burden " + point.Id, point.Plus, point.Minus, BurdenOhms));
            }
        }

        Switches = [.. Wiring.Of<WiredSwitch>()];
        for (int i = 0; i < Switches.Length && i < SwitchStates.MostSwitches; i++)
        {
            AllClosed |= Switches[i].Switch.Momentary?.Value == true ? 0 : 1UL << i;
        }

        Relays = [.. Wiring.Of<WiredRelay>()];
        Inputs = [.. Wiring.Parts.OfType<IPoweredInput>()];
        Inverters = [.. Wiring.Of<WiredInverter>()];
        Sources = SourcePoint.In(Wiring);
        Corner = Corner.For(pack, data)[0];
        Wiring.SetConditions(Corner.Conditions);
        Solver = new OperatingPointSolver(Wiring.Network);
        _loadsAtStandby = new BoxMode
        {
            Id = "switching",
            Words = "loads at standby",
            Added = true,
            ClosedSwitches = new HashSet<string>(),
            Sources = new Dictionary<string, SourceState>(),
            Loads = pack.Of<Description.Kinds.Load>().ToDictionary(l => l.Id, _ => LoadUse.Standby),
        };
    }

    internal BoxWiring Wiring { get; }

    internal Rails Rails { get; }

    /// <summary>What can be live.</summary>
    internal IReadOnlyList<LivePoint> Points { get; }

    /// <summary>The test burden at each point, open; null where none is needed.</summary>
    internal Contact?[] Burdens { get; }

    /// <summary>Resistance of a test burden, Ω.</summary>
    internal double BurdenOhms { get; }

    internal WiredSwitch[] Switches { get; }

    /// <summary>Switches that stay closed by themselves, one bit each.</summary>
    internal ulong AllClosed { get; }

    internal WiredRelay[] Relays { get; }

    /// <summary>Converters and inverters.</summary>
    internal IPoweredInput[] Inputs { get; }

    internal WiredInverter[] Inverters { get; }

    internal IReadOnlyList<SourcePoint> Sources { get; }

    internal Corner Corner { get; }

    internal OperatingPointSolver Solver { get; }

    /// <summary>Opens every switch and plugs what a case names.</summary>
    internal void Plug(PlugCase plugs)
    {
        ModeSetter.Apply(Wiring, new BoxMode
        {
            Id = _loadsAtStandby.Id,
            Words = plugs.Id,
            Added = true,
            ClosedSwitches = _loadsAtStandby.ClosedSwitches,
            Sources = plugs.Sources,
            Loads = _loadsAtStandby.Loads,
        });
        foreach (WiredLoad load in Wiring.Of<WiredLoad>())
        {
            if (load.ResistanceElement is not null)
            {
                load.SetFull();
            }
        }
    }

    /// <summary>True when a source holds a voltage up at the moment.</summary>
    internal bool GivesPower(SourcePoint source) => Wiring[source.PartId] switch
    {
        WiredBank => true,
        WiredCharger charger => charger.Output?.Connected == true || charger.Stage?.On == true,
        WiredConverter converter => converter.On,
        WiredVehicle vehicle => vehicle.Element.Connected,
        WiredPanel panel => panel.Element is { Connected: true, Lit: true },
        _ => false,
    };

    /// <summary>Closes or opens every BMS.</summary>
    internal void SetBms(bool conducts)
    {
        foreach (WiredBms bms in Wiring.Of<WiredBms>())
        {
            bms.SetConducting(conducts);
        }
    }

    /// <summary>Puts the switches into a state, one bit each.</summary>
    internal void SetSwitches(ulong closed)
    {
        for (int i = 0; i < Switches.Length; i++)
        {
            bool now = i < SwitchStates.MostSwitches && (closed & (1UL << i)) != 0;
            if (Switches[i].Closed != now)
            {
                Switches[i].Closed = now;
            }
        }
    }
}
