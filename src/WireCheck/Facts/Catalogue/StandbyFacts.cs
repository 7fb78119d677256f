namespace WireCheck.Facts.Catalogue;

/// <summary>What a part draws while the box is stored: all switches open, nothing plugged in.</summary>
public sealed class StandbyFacts : FactGroup
{
    private StandbyFacts(string kind)
        : base(kind)
    {
        StoredCurrent = Number("stored_current", "A", "Current it draws with all switches open and nothing plugged in, whatever feeds it.");
        BoxStoredCurrent = Number("box_stored_current", "A", "Current that the whole box then takes from its cells.");
        StoredChain = Names("stored_chain", "Parts and conductors that this current flows through, from the bank's positive to its negative.");
    }

    public Fact StoredCurrent { get; }

    public Fact BoxStoredCurrent { get; }

    public Fact StoredChain { get; }

    public static StandbyFacts Bms { get; } = new("bms");

    public static StandbyFacts Switch { get; } = new("switch");

    public static StandbyFacts Relay { get; } = new("relay");

    public static StandbyFacts Meter { get; } = new("meter");

    public static StandbyFacts Resistor { get; } = new("resistor");

    public static StandbyFacts Converter { get; } = new("converter");

    public static StandbyFacts Inverter { get; } = new("inverter");

    public static StandbyFacts Load { get; } = new("load");

    public static StandbyFacts Charger { get; } = new("charger");

    /// <summary>The group for a kind; null for kinds that draw nothing themselves.</summary>
    public static StandbyFacts? Of(string kind) => kind switch
    {
        "bms" => Bms,
        "switch" => Switch,
        "relay" => Relay,
        "meter" => Meter,
        "resistor" => Resistor,
        "converter" => Converter,
        "inverter" => Inverter,
        "load" => Load,
        "charger" => Charger,
        _ => null,
    };
}
