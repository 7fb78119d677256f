namespace WireCheck.Facts.Catalogue;

/// <summary>Facts about an inverter's alternating-current side, its thresholds and its idling. As a consumer it is in <see cref="ConsumerFacts"/>.</summary>
public static class InverterFacts
{
    private const string Kind = "inverter";

    public static readonly Fact Isolated = Fact.YesNo(
        Kind, "isolated", "Its outlets are isolated from its direct-current side; absent when the description does not say.");

    public static readonly Fact Neutral = Fact.Word(
        Kind, "neutral", "floating, or bonded to its earth; absent when the description does not say.");

    public static readonly Fact ResidualCurrentDevice = Fact.YesNo(
        Kind, "residual_current_device", "A residual-current device guards its outlets; absent when the description does not say.");

    public static readonly Fact Outlets = Fact.Number(Kind, "outlets", "", "Number of its outlets; absent when the description does not say.");

    public static readonly Fact Earth = Fact.Word(
        Kind, "earth", "What its earth terminal is joined to: case, earth, vehicle or none; absent when the description does not say.");

    public static readonly Fact MetalBox = Fact.YesNo(Kind, "metal_box", "The box around the parts conducts.");

    public static readonly Fact MetalLoads = Fact.Names(Kind, "metal_loads", "Loads on its outlets that have a metal housing.");

    public static readonly Fact DcBonds = Fact.Names(
        Kind, "dc_bonds", "Those of case, earth and vehicle that its direct-current side is joined to, contacts and plugs counted as closed.");

    public static readonly Fact MainsInlet = Fact.YesNo(
        Kind, "mains_inlet", "Its outlets can be fed from the wall as well; absent when the description does not say.");

    public static readonly Fact MainsInside = Fact.Names(
        Kind, "mains_inside", "Mains chargers that are wired into the box, so that the wall's mains comes into it.");

    public static readonly Fact Transfer = Fact.Word(
        Kind, "transfer", "What keeps the wall and the inverter apart: both-poles, one-pole or none; absent when the description does not say.");

    public static readonly Fact AcCurrent = Fact.Number(
        Kind, "ac_current", "A", "Most current at its outlets: its surge, or its rated power where it has none, over its output voltage.");

    public static readonly Fact OutletBreaker = Fact.Number(Kind, "outlet_breaker", "A", "Rating of the breaker ahead of its outlets; absent when the description names none.");

    public static readonly Fact AcWireAmpacity = Fact.Number(
        Kind, "ac_wire_ampacity", "A", "Ampacity of the wire to its outlets, insulation for 75 °C; absent when the description does not give its size.");

    public static readonly Fact AcSegregated = Fact.YesNo(
        Kind, "ac_segregated", "Its outlet wiring lies apart from the low-voltage wiring or behind a barrier; absent when the description does not say.");

    public static readonly Fact Place = Fact.Word(Kind, "place", "inside or outside the box; inside unless the description says otherwise.");

    public static readonly Fact Alarm = Fact.Number(Kind, "alarm", "V", "Input voltage at which it sounds its alarm; absent when not given.");

    public static readonly Fact Restart = Fact.Number(Kind, "restart", "V", "Input voltage at which it starts again; absent when not given.");

    public static readonly Fact BmsCutOff = Fact.Number(
        Kind, "bms_cut_off", "V", "Voltage of the bank at which its BMS opens: lower cell cut-off times the cells in series; absent without a BMS.");

    public static readonly Fact VoltageAtFull = Fact.Number(
        Kind, "voltage_at_full", "V", "Highest voltage that can reach it: the top of the cell window times the cells in series, or voltage_high where that is more.");

    public static readonly Fact VoltageAtFullIn = Fact.Word(
        Kind, "voltage_at_full_in", "The mode of which the charge makes that voltage; absent where the full cells do.");

    public static readonly Fact IdleCurrent = Fact.Worst(
        Kind, "idle_current", "A", "Largest current it takes from the bank, switched on and with nothing on its outlets, in any mode.");

    public static readonly Fact IdleSharePerDay = Fact.Number(
        Kind, "idle_share_per_day", "", "Share of the banks' full charge that idle_current takes in a day.");
}
