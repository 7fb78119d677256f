using WireCheck.Circuit.Elements;
using WireCheck.Description.Kinds;

namespace WireCheck.Circuit.Wiring;

/// <summary>A relay: its coil, what clamps the coil, and its contacts. Who is energised is decided by the states.</summary>
public sealed class WiredRelay : WiredPart
{
    private readonly WiringData _data;
    private double _airCelsius = 20;

    internal WiredRelay(Relay relay, WiringData data, RelayElements elements)
        : base(relay)
    {
        Relay = relay;
        _data = data;
        Coil = elements.Coil;
        HoldingCoil = elements.HoldingCoil;
        Clamp = elements.Clamp;
        Make = elements.Make;
        Rest = elements.Rest;
    }

    public Relay Relay { get; }

    /// <summary>The coil's resistance; null when an economiser or a latch takes its place.</summary>
    public Resistance? Coil { get; }

    /// <summary>The steady current of a coil with an economiser; null for a plain coil.</summary>
    public ConstantCurrentSink? HoldingCoil { get; }

    /// <summary>What draws the coil's current, of either kind; null for a latching relay, which draws none when it rests.</summary>
    public Element? CoilElement => (Element?)Coil ?? HoldingCoil;

    /// <summary>Suppression across the coil that can conduct in the steady state.</summary>
    public Element? Clamp { get; }

    /// <summary>Contact 30 to 87.</summary>
    public Contact Make { get; }

    /// <summary>Contact 30 to 87a of a change-over relay.</summary>
    public Contact? Rest { get; }

    public override IEnumerable<Element> Elements =>
        new Element?[] { Coil, HoldingCoil, Clamp, Make, Rest }.OfType<Element>();

    /// <summary>True when the contact 30-87 is closed.</summary>
    public bool Energised
    {
        get => Make.Closed;
        set
        {
            bool closed = Held ?? value;
            Make.Closed = closed;
            if (Rest is not null)
            {
                Rest.Closed = !closed;
            }
        }
    }

    /// <summary>
    /// Where a study holds the contact 30-87 whatever the coil says: true as though welded, false as though it had not moved
    /// yet. Null, as always outside such a study, lets it follow its coil.
    /// </summary>
    public bool? Held { get; set; }

    /// <summary>Temperature of the coil's copper, °C, as last settled.</summary>
    public double CoilCelsius { get; private set; } = 20;

    /// <summary>Voltage at which the coil pulls in at its present temperature, V.</summary>
    public double OperateVolts => Relay.Coil.Operate.Value.Volts * VoltageFactor;

    /// <summary>Voltage at which it lets go at its present temperature, V.</summary>
    public double ReleaseVolts => Relay.Coil.Release.Value.Volts * VoltageFactor;

    // A coil needs a certain current; hot copper needs more volts for it. Electronics hold current by themselves.
    private double VoltageFactor => Coil is null ? 1 : Physics.Coil.ResistanceFactor(CoilCelsius);

    public override void SetConditions(Conditions conditions)
    {
        _airCelsius = conditions.CoilAirCelsius;
        SettleCoil(0);
    }

    /// <summary>
    /// Warms the coil to the balance of its own heat at a voltage: T = T_air + k V²/R(T), with R(T) of copper.
    /// Returns true when its resistance moved by more than a part in ten thousand.
    /// </summary>
    public bool SettleCoil(double volts)
    {
        if (Coil is null)
        {
            return false;
        }

        double cold = _data.CoilOhms(Relay);
        CoilCelsius = Physics.Coil.SettledTemperature(Math.Abs(volts), cold, _data.CoilKelvinPerWatt(Relay), _airCelsius);
        double ohms = cold * Physics.Coil.ResistanceFactor(CoilCelsius);
        bool moved = Math.Abs(ohms - Coil.Ohms) > 1e-4 * ohms;
        Coil.Ohms = ohms;
        return moved;
    }
}

/// <summary>The elements of one relay.</summary>
internal sealed record RelayElements(
    Resistance? Coil, ConstantCurrentSink? HoldingCoil, Element? Clamp, Contact Make, Contact? Rest);

/// <summary>How a relay becomes elements.</summary>
public sealed class RelayWiring : KindWiring<Relay>
{
    public override WiredPart AddElements(Relay part, WiringBuilder builder)
    {
        int plus = builder.Node(part.Id, "86");
        int minus = builder.Node(part.Id, "85");
        int common = builder.Node(part.Id, "30");
        double contact = part.Contact.Resistance.Value.Ohms;
        Resistance? coil = null;
        ConstantCurrentSink? holding = null;
        if (part.Coil.Economiser is { } economiser)
        {
            holding = builder.Add(new ConstantCurrentSink(
                part.Id + ".coil", plus, minus, economiser.HoldCurrent.Value.Amperes));
        }
        else if (part.Latching?.Value != true)
        {
            coil = builder.Add(new Resistance(part.Id + ".coil", plus, minus, builder.Data.CoilOhms(part)));
        }

        Element? clamp = part.Coil.Suppression?.Value switch
        {
            CoilSuppression.Diode => builder.Add(new Elements.Diode(part.Id + ".clamp", minus, plus, SupplyModels.ClampDiode)),
            _ => null,
        };
        Contact make = builder.Add(new Contact(part.Id, common, builder.Node(part.Id, "87"), contact));
        Contact? rest = part.Form.Value == RelayForm.ChangeOver
            ? builder.Add(new Contact(part.Id + ".rest", common, builder.Node(part.Id, "87a"), contact) { Closed = true })
            : null;
        return new WiredRelay(part, builder.Data, new RelayElements(coil, holding, clamp, make, rest));
    }
}
