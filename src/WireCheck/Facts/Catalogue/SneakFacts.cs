namespace WireCheck.Facts.Catalogue;

/// <summary>
/// What every combination of switches and plugs tells of a part: whether it is live when all is open, and the loops by
/// which current reaches it, passes round the BMS or round the shunt.
/// </summary>
public sealed class SneakFacts : FactGroup
{
    private SneakFacts(string kind, bool consumer, bool bypass = true)
        : base(kind)
    {
        if (consumer)
        {
            LiveWhenOff = YesNo("live_when_off", "More than 1 V stands between its poles, into 10 kΩ, with every switch open and nothing plugged in; absent for what hangs on a port or an outlet, and for a port that only takes power in.");
            MeantLive = YesNo("meant_live", "It is listed under stays_live.");
            LiveChain = Names("live_chain", "Parts and conductors of the loop that then keeps it live, from the source round to it.");
            LiveByPowerWhen = Word("live_by_power_when", "What is plugged in and gives power when it is live with every switch open, though dead with nothing plugged in; absent when nothing makes it so, and for what hangs on a port or an outlet.");
            LiveByPowerChain = Names("live_by_power_chain", "Parts and conductors of the loop that then keeps it live.");
            KilledBy = Names("killed_by", "Switches of which one alone, opened while all others are closed, makes it dead; absent for what is then not live, and in a box in which a sneak path keeps something live.");
        }

        if (consumer || kind == "relay")
        {
            BackFedWhen = Word("back_fed_when", "The state of fewest closed switches in which it is live, or its coil above its release voltage, only by way of another consumer.");
            BackFedBy = Names("back_fed_by", "Lamps, loads or coils through which that current comes.");
            BackFedLoop = Names("back_fed_loop", "Parts and conductors of that loop.");
            BackFedVoltage = Number("back_fed_voltage", "V", "Voltage it then has, into 10 kΩ; of a relay, across its coil.");
            BackFedInSeries = YesNo("back_fed_in_series", "In no state is it fed any other way: it lies in series with them.");
            LinkFedWhen = Word("link_fed_when", "The state of fewest closed switches in which it is fed only by way of a link outside the box; absent when it is listed under stays_live.");
            LinkFedBy = Names("link_fed_by", "Those links.");
            LinkFedLoop = Names("link_fed_loop", "Parts, conductors and links of that loop.");
        }

        if (consumer)
        {
            ResistorFedWhen = Word("resistor_fed_when", "The state of fewest closed switches in which it is live only through a resistor that lies across an open contact; absent where that resistor precharges something, or it is listed under stays_live.");
            ResistorFedBy = Names("resistor_fed_by", "Those resistors.");
            ResistorFedLoop = Names("resistor_fed_loop", "Parts and conductors of that loop.");
            ResistorFedVoltage = Number("resistor_fed_voltage", "V", "Voltage it then has, into 10 kΩ.");
        }

        if (bypass)
        {
            BmsBypassLoop = Names("bms_bypass_loop", "Loop by which current goes on flowing between it and the cells with the BMS open.");
            BmsBypassLinks = Names("bms_bypass_links", "Links outside the box that this loop takes; empty for one inside.");
            BmsBypassDropsOut = YesNo("bms_bypass_drops_out", "A relay in that loop lets go once the BMS is open, and the current ends.");
            ShuntBypassLoop = Names("shunt_bypass_loop", "Loop of its current that no shunt counts.");
            ShuntBypassLinks = Names("shunt_bypass_links", "Links outside the box that this loop takes; empty for one inside.");
        }
    }

    public Fact? LiveWhenOff { get; }

    public Fact? MeantLive { get; }

    public Fact? LiveChain { get; }

    public Fact? LiveByPowerWhen { get; }

    public Fact? LiveByPowerChain { get; }

    public Fact? KilledBy { get; }

    public Fact? BackFedWhen { get; }

    public Fact? BackFedBy { get; }

    public Fact? BackFedLoop { get; }

    public Fact? BackFedVoltage { get; }

    public Fact? BackFedInSeries { get; }

    public Fact? ResistorFedWhen { get; }

    public Fact? ResistorFedBy { get; }

    public Fact? ResistorFedLoop { get; }

    public Fact? ResistorFedVoltage { get; }

    public Fact? LinkFedWhen { get; }

    public Fact? LinkFedBy { get; }

    public Fact? LinkFedLoop { get; }

    public Fact? BmsBypassLoop { get; }

    public Fact? BmsBypassLinks { get; }

    public Fact? BmsBypassDropsOut { get; }

    public Fact? ShuntBypassLoop { get; }

    public Fact? ShuntBypassLinks { get; }

    public static SneakFacts Load { get; } = new("load", consumer: true);

    public static SneakFacts Port { get; } = new("port", consumer: true);

    public static SneakFacts Meter { get; } = new("meter", consumer: true);

    public static SneakFacts Converter { get; } = new("converter", consumer: true);

    public static SneakFacts Inverter { get; } = new("inverter", consumer: true);

    public static SneakFacts Switch { get; } = new("switch", consumer: true);

    public static SneakFacts Relay { get; } = new("relay", consumer: false);

    public static SneakFacts Charger { get; } = new("charger", consumer: false);

    public static SneakFacts Vehicle { get; } = new("vehicle", consumer: false);

    public static SneakFacts Panel { get; } = new("panel", consumer: false);

    /// <summary>The group for a kind; null for kinds that have none.</summary>
    public static SneakFacts? Of(string kind) => kind switch
    {
        "load" => Load,
        "port" => Port,
        "meter" => Meter,
        "converter" => Converter,
        "inverter" => Inverter,
        "switch" => Switch,
        "relay" => Relay,
        "charger" => Charger,
        "vehicle" => Vehicle,
        "panel" => Panel,
        _ => null,
    };
}
