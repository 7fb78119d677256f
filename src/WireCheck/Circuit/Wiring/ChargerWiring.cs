using WireCheck.Circuit.Elements;
using WireCheck.Description.Kinds;

namespace WireCheck.Circuit.Wiring;

/// <summary>How a source that can be plugged stands in a mode.</summary>
public enum SourceState
{
    /// <summary>Not plugged in.</summary>
    Absent,

    /// <summary>Plugged in or wired, but without power: no mains, dark, engine off.</summary>
    Unpowered,

    /// <summary>Plugged in or wired, and giving power.</summary>
    Powered,
}

/// <summary>A charger: an output that is current-limited, then voltage-limited, and what it draws when it is dead.</summary>
public sealed class WiredCharger : WiredPart
{
    internal WiredCharger(Charger charger, ChargerOutput? output, ConverterStage? stage, ConstantCurrentSink leakage)
        : base(charger)
    {
        Charger = charger;
        Output = output;
        Stage = stage;
        Leakage = leakage;
    }

    public Charger Charger { get; }

    /// <summary>The output of a charger whose input is not drawn; null when <see cref="Stage"/> stands for it.</summary>
    public ChargerOutput? Output { get; }

    /// <summary>A charger with a drawn DC input.</summary>
    public ConverterStage? Stage { get; }

    /// <summary>Reverse leakage and own use from the battery.</summary>
    public ConstantCurrentSink Leakage { get; }

    /// <summary>The panels drawn at its input; null when none is.</summary>
    public PanelFeed? Feed { get; internal set; }

    /// <summary>True when it can be unplugged.</summary>
    public bool Pluggable => Charger.At is not null;

    public override IEnumerable<Element> Elements => new Element?[] { Output, Stage, Leakage }.OfType<Element>();

    /// <summary>
    /// Limits a solar controller whose input is drawn to what the panels there bring as they stand: nothing where none
    /// reaches it, or only backwards.
    /// </summary>
    public void LimitToFeed()
    {
        if (Stage is not null && Charger.ChargerKind.Value == ChargerKind.Solar)
        {
            Stage.PowerLimitWatts = Stage.Efficiency * (Feed?.InputWatts() ?? 0);
            Stage.HoldsInput = Stage.PowerLimitWatts > 0;
        }
    }

    /// <summary>Sets how it stands; a wired charger is never absent.</summary>
    public void SetState(SourceState state)
    {
        bool powered = state == SourceState.Powered;
        if (Output is not null)
        {
            Output.Connected = powered;
        }

        if (Stage is not null)
        {
            Stage.On = powered;
        }

        bool there = !Pluggable || state != SourceState.Absent;
        Leakage.Amps = !there ? 0
            : powered ? Charger.OwnUse?.Value.Amperes ?? 0
            : (Charger.ReverseLeakage?.Value.Amperes ?? 0) + (Charger.OwnUse?.Value.Amperes ?? 0);
    }
}

/// <summary>How a charger becomes elements.</summary>
public sealed class ChargerWiring : KindWiring<Charger>
{
    public override void AddNodes(Charger part, WiringBuilder builder)
    {
        if (part.At is null)
        {
            base.AddNodes(part, builder);
        }
    }

    public override WiredPart AddElements(Charger part, WiringBuilder builder)
    {
        (int plus, int minus) = Attachment.Nodes(part, part.At?.Value, builder, "out");
        double volts = part.Voltage.Value.Volts;
        double limit = part.Current.Value.Amperes;
        double slope = SupplyModels.SlopeOhms(volts, limit, builder.Data);
        ChargerOutput? output = null;
        ConverterStage? stage = null;
        string input = part.ChargerKind.Value == ChargerKind.Solar ? "pv" : "in";
        bool inputDrawn = part.At is null && TerminalReferences.IsWired(builder.Pack, part.Id, input + "+");
        if (inputDrawn)
        {
            stage = builder.Add(new ConverterStage(
                part.Id, builder.Node(part.Id, input + "+"), builder.Node(part.Id, input + "-"), plus, minus)
            {
                Volts = volts,
                LimitAmps = limit,
                SlopeOhms = slope,
                Efficiency = part.Efficiency?.Value.DecimalFractions ?? 1,
                PowerLimitWatts = SupplyModels.InputPowerLimitWatts(part, builder.Pack),
            });
            builder.Add(new Resistance(
                part.Id + ".negative", builder.Node(part.Id, input + "-"), minus, builder.Data.Assumed("common_negative_resistance")));
        }
        else
        {
            output = builder.Add(new ChargerOutput(part.Id, plus, minus)
            {
                Volts = volts,
                LimitAmps = limit,
                SlopeOhms = slope,
                PowerLimitWatts = SupplyModels.InputPowerLimitWatts(part, builder.Pack),
            });
        }

        ConstantCurrentSink leakage = builder.Add(new ConstantCurrentSink(part.Id + ".leakage", plus, minus, 0));
        return new WiredCharger(part, output, stage, leakage);
    }
}
