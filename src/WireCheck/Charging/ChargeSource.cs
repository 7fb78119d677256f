using WireCheck.Circuit.Elements;
using WireCheck.Circuit.Topology;
using WireCheck.Circuit.Wiring;
using WireCheck.Description.Kinds;
using WireCheck.States;

namespace WireCheck.Charging;

/// <summary>What keeps a source from giving more.</summary>
public enum ChargeLimit
{
    /// <summary>It gives nothing.</summary>
    Nothing,

    /// <summary>Its current limit.</summary>
    Current,

    /// <summary>What its own input brings.</summary>
    Input,

    /// <summary>Its voltage limit: the end of the charge is near.</summary>
    Voltage,

    /// <summary>Nothing but the resistance of the way, as from a vehicle's battery.</summary>
    Resistance,

    /// <summary>The panel's own curve, no regulator being between.</summary>
    Panel,
}

/// <summary>A place where charge current comes into the box: a charger's output, a vehicle's outlet, a bare panel.</summary>
/// <param name="Part">The charger, vehicle or panel.</param>
/// <param name="Plus">Its positive node.</param>
/// <param name="Minus">Its negative node.</param>
public sealed record ChargeSource(WiredPart Part, int Plus, int Minus)
{
    /// <summary>A source that gives less than this gives nothing, A.</summary>
    internal const double SmallestAmps = 1e-6;

    /// <summary>How near to a limit counts as at it, as a share: a current limit is met but for rounding.</summary>
    private const double AtLimitShare = 1 - 1e-6;

    /// <summary>Id of the part.</summary>
    public string Id => Part.Part.Id;

    /// <summary>Highest voltage it can give, V.</summary>
    public double HighestVolts => Part switch
    {
        WiredCharger charger => charger.Charger.Voltage.Value.Volts,
        WiredVehicle vehicle => vehicle.Vehicle.Voltage.Value.To.Volts,
        WiredPanel panel => panel.Panel.OpenCircuit.Value.Volts,
        _ => 0,
    };

    /// <summary>Every source of a box that ends on its wiring, in the order of the description.</summary>
    public static IReadOnlyList<ChargeSource> In(BoxWiring wiring)
    {
        List<ChargeSource> sources = [];
        foreach (WiredPart part in wiring.Parts)
        {
            switch (part)
            {
                case WiredCharger { Output: { } output }:
                    sources.Add(new ChargeSource(part, output.A, output.B));
                    break;
                case WiredCharger { Stage: { } stage }:
                    sources.Add(new ChargeSource(part, stage.OutA, stage.OutB));
                    break;
                case WiredVehicle vehicle when vehicle.Vehicle.At is not null
                    || TerminalReferences.IsWired(wiring.Pack, part.Part.Id, "+"):
                    sources.Add(new ChargeSource(part, vehicle.Plus, vehicle.Minus));
                    break;
                case WiredPanel { Element: { } element }:
                    sources.Add(new ChargeSource(part, element.A, element.B));
                    break;
            }
        }

        return sources;
    }

    /// <summary>Current it gives, A; negative when it takes.</summary>
    public double Amps(OperatingPoint point) => Part switch
    {
        WiredCharger { Output: { } output } charger => -point.Amps(output) - point.Amps(charger.Leakage),
        WiredCharger { Stage: { } stage } charger => point.Solution.OutputCurrent(stage) - point.Amps(charger.Leakage),
        WiredVehicle vehicle => -point.Amps(vehicle.Element),
        WiredPanel { Element: { } element } => -point.Amps(element),
        _ => 0,
    };

    /// <summary>Voltage between its poles, V.</summary>
    public double Volts(OperatingPoint point) => point.Volts(Plus, Minus);

    /// <summary>What limits it at a point.</summary>
    public ChargeLimit LimitAt(OperatingPoint point) => Amps(point) < SmallestAmps
        ? ChargeLimit.Nothing
        : Part switch
        {
            WiredCharger { Output: { } output } => LimitOf(output.Curve, Volts(point)),
            WiredCharger { Stage: { } stage } => LimitOf(stage.Curve, Volts(point)),
            WiredVehicle => ChargeLimit.Resistance,
            _ => ChargeLimit.Panel,
        };

    /// <summary>
    /// The bank whose poles it reaches by wire, contacts and diodes alone, nothing between that regulates; null when it
    /// reaches none.
    /// </summary>
    public WiredBank? DirectBank(BoxWiring wiring, WiringGraph graph)
    {
        bool[] plus = Reach.From(graph, Plus, _ => true);
        bool[] minus = Reach.From(graph, Minus, _ => true, against: true);
        foreach (WiredBank bank in wiring.Of<WiredBank>())
        {
            if (plus[wiring.Node(bank.Part.Id, "+")] && minus[wiring.Node(bank.Part.Id, "-")])
            {
                return bank;
            }
        }

        return null;
    }

    private static ChargeLimit LimitOf(OutputCurve curve, double volts)
    {
        double amps = curve.Delivered(volts, out _);
        return amps >= curve.LimitAmps * AtLimitShare ? ChargeLimit.Current
            : amps * volts >= curve.PowerLimitWatts * AtLimitShare ? ChargeLimit.Input
            : ChargeLimit.Voltage;
    }
}
