namespace WireCheck.Facts.Catalogue;

/// <summary>
/// Facts about a bolted short at a part: at a conductor's end with the lower current, at the outer side of a port. Highest:
/// all sources, full cells at the top of their window, cold copper, straight to the bank's negative. Lowest: one bank
/// alone, empty, aged and cold, hot copper, back by the place's own return; a supply alone where no bank reaches it.
/// </summary>
public sealed class FaultFacts : FactGroup
{
    private FaultFacts(string kind)
        : base(kind)
    {
        Highest = Number("fault_current_highest", "A", "Highest current of a bolted short at it; absent when nothing feeds it.");
        Lowest = Number("fault_current_lowest", "A", "Lowest current of a bolted short at it.");
        Source = Word("fault_source", "Id of the source that drives the lowest current.");
        At = Word("fault_at", "Terminal at which the lowest current flows.");
        Return = Word("fault_return", "Where that current comes back.");
        Guard = Word("fault_guard", "Id of the smallest fuse or breaker in the way of that current; absent when there is none.");
        Multiple = Number("fault_multiple", "", "The lowest current, when a bank drives it, over the rating of fault_guard.");
        ClearedBy = Word("fault_cleared_by", "Id of the fuse or breaker that ends the lowest current; absent when none does.");
        ClearingTime = Number("fault_clearing_time", "s", "How long the lowest current flows when every device is at its slowest; absent when nothing ends it.");
        Dark = Names("fault_goes_dark", "Loads, ports, converters, inverters and meters that no bank reaches after the lowest current has been cleared.");
    }

    public Fact Highest { get; }

    public Fact Lowest { get; }

    public Fact Source { get; }

    public Fact At { get; }

    public Fact Return { get; }

    public Fact Guard { get; }

    public Fact Multiple { get; }

    public Fact ClearedBy { get; }

    public Fact ClearingTime { get; }

    public Fact Dark { get; }

    public static FaultFacts Conductor { get; } = new("conductor");

    public static FaultFacts Busbar { get; } = new("busbar");

    public static FaultFacts Port { get; } = new("port");

    public static FaultFacts Load { get; } = new("load");

    public static FaultFacts Charger { get; } = new("charger");

    /// <summary>The group of a kind; null for a kind that is not shorted.</summary>
    public static FaultFacts? Of(string kind) => kind switch
    {
        "conductor" => Conductor,
        "busbar" => Busbar,
        "port" => Port,
        "load" => Load,
        "charger" => Charger,
        _ => null,
    };
}
