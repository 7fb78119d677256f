namespace WireCheck.Facts.Catalogue;

/// <summary>Facts about the way round in which a part with a direction is wired.</summary>
public sealed class PolarityFacts : FactGroup
{
    private PolarityFacts(string kind)
        : base(kind)
    {
        ReversedVoltage = Worst("reversed_voltage", "V", "Largest voltage by which the negative terminal of a consumer stands above its positive one; 0 when it never does, absent for other kinds.");
        ReverseCurrent = Worst("reverse_current", "A", "Largest current from 87 to 30 of a relay that may carry current one way only; absent for other kinds.");
        KeepsApart = Names("keeps_apart", "Sources and consumers that a diode cuts off and would not if it were turned round; absent for other kinds.");
        ShortsPoles = YesNo("shorts_poles", "The diode conducts from a positive to a negative pole of the same source; absent for other kinds.");
        FacesAway = YesNo("faces_away", "Of a shunt, the terminal for the battery is on the side of the loads; absent for other kinds.");
        BackwardsTo = Word("backwards_to", "Of a source, the bank or charger to whose negative pole its positive one is joined, and its negative one to the positive; absent when it is the right way round, and for other kinds.");
        BackwardsToCharger = YesNo("backwards_to_charger", "That is the input of a charger, and no bank; absent when backwards_to is.");
        BackwardsAt = Word("backwards_at", "The port at which it then is plugged in; absent for what is wired.");
    }

    public Fact BackwardsTo { get; }

    public Fact BackwardsToCharger { get; }

    public Fact BackwardsAt { get; }

    public Fact ReversedVoltage { get; }

    public Fact ReverseCurrent { get; }

    public Fact KeepsApart { get; }

    public Fact ShortsPoles { get; }

    public Fact FacesAway { get; }

    public static PolarityFacts Load { get; } = new("load");

    public static PolarityFacts Converter { get; } = new("converter");

    public static PolarityFacts Inverter { get; } = new("inverter");

    public static PolarityFacts Meter { get; } = new("meter");

    public static PolarityFacts Relay { get; } = new("relay");

    public static PolarityFacts Diode { get; } = new("diode");

    public static PolarityFacts Shunt { get; } = new("shunt");

    public static PolarityFacts Charger { get; } = new("charger");

    public static PolarityFacts Vehicle { get; } = new("vehicle");

    public static PolarityFacts Panel { get; } = new("panel");

    /// <summary>The group for a kind; null for kinds without a direction.</summary>
    public static PolarityFacts? Of(string kind) => kind switch
    {
        "load" => Load,
        "converter" => Converter,
        "inverter" => Inverter,
        "meter" => Meter,
        "relay" => Relay,
        "diode" => Diode,
        "shunt" => Shunt,
        "charger" => Charger,
        "vehicle" => Vehicle,
        "panel" => Panel,
        _ => null,
    };
}
