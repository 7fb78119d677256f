using WireCheck.Circuit.Elements;
using WireCheck.Description.Kinds;

namespace WireCheck.Circuit.Wiring;

/// <summary>A conductor leg as one resistance: its copper and the joints at its two ends.</summary>
public sealed class WiredConductor : WiredPart
{
    private readonly WiringData _data;
    private double _celsius = double.NaN;
    private bool _aged;

    internal WiredConductor(Conductor conductor, WiringData data, Resistance element)
        : base(conductor)
    {
        _data = data;
        Conductor = conductor;
        Element = element;
    }

    /// <summary>A step of temperature that hardly changes a resistance, K: less than 1 %.</summary>
    public const double NoticeableKelvin = 2;

    public Conductor Conductor { get; }

    /// <summary>Current is positive from <c>from</c> to <c>to</c>.</summary>
    public Resistance Element { get; }

    /// <summary>Resistance of the copper at the present corner, Ω.</summary>
    public double WireOhms { get; private set; }

    /// <summary>Resistance of the joint at <c>from</c>, Ω.</summary>
    public double FromJointOhms { get; private set; }

    /// <summary>Resistance of the joint at <c>to</c>, Ω.</summary>
    public double ToJointOhms { get; private set; }

    public override IEnumerable<Element> Elements => [Element];

    public override void SetConditions(Conditions conditions) =>
        SetTemperature(conditions.CopperCelsius, conditions.HighestResistance);

    /// <summary>Sets the temperature of the copper, °C, and whether its joints are aged.</summary>
    public void SetTemperature(double celsius, bool aged)
    {
        if (celsius == _celsius && aged == _aged)
        {
            return;
        }

        (_celsius, _aged) = (celsius, aged);
        WireOhms = _data.OhmsPerMetre(Conductor, celsius) * Conductor.Length.Value.Meters;
        FromJointOhms = _data.JointOhms(Conductor.FromEnd, Conductor.Size.Value, aged);
        ToJointOhms = _data.JointOhms(Conductor.ToEnd, Conductor.Size.Value, aged);
        Element.Ohms = WireOhms + FromJointOhms + ToJointOhms;
    }
}

/// <summary>How a conductor becomes elements.</summary>
public sealed class ConductorWiring : KindWiring<Conductor>
{
    public override WiredPart AddElements(Conductor part, WiringBuilder builder)
    {
        Resistance element = builder.Add(
            new Resistance(part.Id, builder.Node(part.From), builder.Node(part.To), 1));
        return new WiredConductor(part, builder.Data, element);
    }
}
