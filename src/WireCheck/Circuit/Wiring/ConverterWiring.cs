using WireCheck.Circuit.Elements;
using WireCheck.Description.Kinds;
using WireCheck.Quantities;

namespace WireCheck.Circuit.Wiring;

/// <summary>A part that takes power at a DC input and may be switched on or off.</summary>
public interface IPoweredInput
{
    /// <summary>Positive input node.</summary>
    int InputPlus { get; }

    /// <summary>Negative input node.</summary>
    int InputMinus { get; }

    /// <summary>Node of the enable terminal; null when nothing is wired to it.</summary>
    int? EnableNode { get; }

    /// <summary>Id of the switch or relay that enables it; null when none does.</summary>
    string? EnabledBy { get; }

    /// <summary>Input voltage below which it stops, V.</summary>
    double CutOffVolts { get; }

    /// <summary>True while it runs.</summary>
    bool On { get; set; }
}

/// <summary>A DC-DC converter: its stage, the tie of a common negative, and what is plugged into its own outlets.</summary>
public sealed class WiredConverter : WiredPart, IPoweredInput
{
    internal WiredConverter(Converter converter, ConverterStage stage, ConstantPowerSink outlet, Resistance? negativeTie, int? enable)
        : base(converter)
    {
        Converter = converter;
        Stage = stage;
        Outlet = outlet;
        NegativeTie = negativeTie;
        EnableNode = enable;
    }

    public Converter Converter { get; }

    public ConverterStage Stage { get; }

    /// <summary>
    /// Input power for what is plugged into the converter's own outlets and is not described as a load; Watts is
    /// the power at the outlets.
    /// </summary>
    public ConstantPowerSink Outlet { get; }

    /// <summary>Between in- and out- of a common negative.</summary>
    public Resistance? NegativeTie { get; }

    public int InputPlus => Stage.A;

    public int InputMinus => Stage.B;

    public int? EnableNode { get; }

    public string? EnabledBy => Converter.EnabledBy?.Value;

    public double CutOffVolts => (Converter.CutOff?.Value ?? Converter.Window.Value.From).Volts;

    public bool On
    {
        get => Stage.On;
        set
        {
            Stage.On = value;
            Outlet.On = value && Outlet.Watts > 0;
        }
    }

    public override IEnumerable<Element> Elements => new Element?[] { Stage, Outlet, NegativeTie }.OfType<Element>();
}

/// <summary>How a converter becomes elements.</summary>
public sealed class ConverterWiring : KindWiring<Converter>
{
    public override WiredPart AddElements(Converter part, WiringBuilder builder)
    {
        int inPlus = builder.Node(part.Id, "in+");
        int inMinus = builder.Node(part.Id, "in-");
        int outPlus = builder.Node(part.Id, "out+");
        int outMinus = builder.Node(part.Id, "out-");
        double volts = part.Output.Value.Volts;
        double limit = part.OutputLimit?.Value.Amperes ?? part.Power.Value.ToWatts() / volts;
        double idleAmps = part.Idle.Value.Amperes;
        double nominal = builder.Data.NominalInputVolts(part.Window.Value, builder.Pack);
        ConverterStage stage = builder.Add(new ConverterStage(part.Id, inPlus, inMinus, outPlus, outMinus)
        {
            Volts = volts,
            LimitAmps = limit,
            SlopeOhms = SupplyModels.SlopeOhms(volts, limit, builder.Data),
            Efficiency = part.Efficiency.Value.DecimalFractions,
            IdleWatts = idleAmps * nominal,
            OffLeakageAmps = part.OffLeakage?.Value.Amperes ?? 0,
        });
        ConstantPowerSink outlet = builder.Add(new ConstantPowerSink(part.Id + ".outlet", inPlus, inMinus)
        {
            Efficiency = part.Efficiency.Value.DecimalFractions,
        });
        Resistance? tie = part.Negative.Value == ConverterNegative.Common
            ? builder.Add(new Resistance(
                part.Id + ".negative", inMinus, outMinus, part.NegativeResistance?.Value.Ohms ?? builder.Data.Assumed("common_negative_resistance")))
            : null;
        int? enable = TerminalReferences.IsWired(builder.Pack, part.Id, "enable") ? builder.Node(part.Id, "enable") : null;
        return new WiredConverter(part, stage, outlet, tie, enable);
    }
}
