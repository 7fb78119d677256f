namespace WireCheck.Facts.Catalogue;

/// <summary>
/// Facts about what uses power from the bank: a load, a converter, an inverter, a meter. For a load on an alternating-current
/// outlet or behind a converter, those about its feed from the bank are absent.
/// </summary>
public sealed class ConsumerFacts : FactGroup
{
    private ConsumerFacts(string kind)
        : base(kind)
    {
        At = Word("at", "The port, inverter or converter it hangs on; absent when it is wired.");
        NominalVoltage = Number("nominal_voltage", "V", "Nominal voltage of the bank that feeds it.");
        Power = Number("power", "W", "Steady power it is rated for: of a converter or inverter at its output.");
        VoltageLow = Worst("voltage_low", "V", "Lowest voltage at its terminals while it draws its steady power, as though it did not cut off by itself.");
        VoltageHigh = Worst("voltage_high", "V", "Highest voltage at its terminals, drawing or not.");
        SurgeVoltageLow = Worst("surge_voltage_low", "V", "Lowest voltage at its terminals during its surge (steady power where it has none), as though it did not cut off by itself.");
        WindowLow = Number("window_low", "V", "Lowest voltage it is made for.");
        WindowHigh = Number("window_high", "V", "Highest voltage it is made for.");
        CutOff = Number("cut_off", "V", "Voltage below which it stops: its cut-off, else the low end of its window.");
        FeedDrop = Worst("feed_drop", "V", "Voltage lost between the bank's terminals and its own, both poles, at its steady power.");
        DropShare = Worst("drop_share", "", "feed_drop over nominal_voltage.");
        DropLimit = Number("drop_limit", "", "Share of nominal_voltage that the description's paths allow it to lose; absent when they name none.");
        GreatestDropPart = Word("greatest_drop_part", "Id of the part or conductor that takes most of feed_drop.");
        GreatestDrop = Number("greatest_drop", "V", "What that part takes.");
        UndeliveredPower = Worst("undelivered_power", "W", "Power asked of it that the wiring cannot carry at any voltage; 0 when all is delivered.");
        FedBy = Word("fed_by", "Id of the converter whose output feeds it; absent when a bank does, or an outlet.");
        NoWayBackTo = Word("no_way_back_to", "Id of the source that feeds its positive and to whose negative its own does not lead; absent when it leads to one that feeds it.");
        MissedParts = Names("missed_parts", "Parts its path in the description names that its whole current does not pass through; absent when no path is described.");
    }

    public Fact At { get; }

    public Fact NominalVoltage { get; }

    public Fact Power { get; }

    public Fact VoltageLow { get; }

    public Fact VoltageHigh { get; }

    public Fact SurgeVoltageLow { get; }

    public Fact WindowLow { get; }

    public Fact WindowHigh { get; }

    public Fact CutOff { get; }

    public Fact FeedDrop { get; }

    public Fact DropShare { get; }

    public Fact DropLimit { get; }

    public Fact GreatestDropPart { get; }

    public Fact GreatestDrop { get; }

    public Fact UndeliveredPower { get; }

    public Fact FedBy { get; }

    public Fact NoWayBackTo { get; }

    public Fact MissedParts { get; }

    public static ConsumerFacts Load { get; } = new("load");

    public static ConsumerFacts Converter { get; } = new("converter");

    public static ConsumerFacts Inverter { get; } = new("inverter");

    public static ConsumerFacts Meter { get; } = new("meter");

    /// <summary>The group for a kind; null for kinds that are no consumers.</summary>
    public static ConsumerFacts? Of(string kind) => kind switch
    {
        "load" => Load,
        "converter" => Converter,
        "inverter" => Inverter,
        "meter" => Meter,
        _ => null,
    };
}
