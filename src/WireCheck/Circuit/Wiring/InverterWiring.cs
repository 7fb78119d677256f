using WireCheck.Circuit.Elements;
using WireCheck.Description.Kinds;

namespace WireCheck.Circuit.Wiring;

/// <summary>An inverter as a constant-power input; what hangs on its outlets adds to the power.</summary>
public sealed class WiredInverter(Inverter inverter, ConstantPowerSink element, int? enable) : WiredPart(inverter), IPoweredInput
{
    public Inverter Inverter { get; } = inverter;

    /// <summary>Watts is the power at its outlets.</summary>
    public ConstantPowerSink Element { get; } = element;

    public int InputPlus => Element.A;

    public int InputMinus => Element.B;

    public int? EnableNode { get; } = enable;

    public string? EnabledBy => Inverter.EnabledBy?.Value;

    public double CutOffVolts => Inverter.CutOff.Value.Volts;

    public bool On
    {
        get => Element.On;
        set => Element.On = value;
    }

    public override IEnumerable<Element> Elements => [Element];
}

/// <summary>How an inverter becomes elements.</summary>
public sealed class InverterWiring : KindWiring<Inverter>
{
    public override WiredPart AddElements(Inverter part, WiringBuilder builder)
    {
        ConstantPowerSink element = builder.Add(new ConstantPowerSink(
            part.Id, builder.Node(part.Id, "in+"), builder.Node(part.Id, "in-"))
        {
            Efficiency = part.Efficiency.Value.DecimalFractions,
            IdleWatts = part.Idle.Value.Amperes * builder.Data.NominalInputVolts(part.Window.Value, builder.Pack),
            OffLeakageAmps = part.OffLeakage?.Value.Amperes ?? 0,
        });
        int? enable = TerminalReferences.IsWired(builder.Pack, part.Id, "enable") ? builder.Node(part.Id, "enable") : null;
        return new WiredInverter(part, element, enable);
    }
}
