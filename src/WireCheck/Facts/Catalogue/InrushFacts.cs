namespace WireCheck.Facts.Catalogue;

/// <summary>
/// Facts about what flows when the contact of a switch or a relay joins discharged capacitors to a full, fresh and warm bank,
/// everything else being switched on; absent where nothing is charged through it.
/// </summary>
public sealed class ContactInrushFacts : FactGroup
{
    private ContactInrushFacts(string kind)
        : base(kind)
    {
        Peak = Number("inrush_peak", "A", "Largest current through its contact at that moment, the inductance of the conductors counted; what a precharge leaves where there is one.");
        Step = Number("inrush_step", "V", "Voltage that then stands across the loop: the bank's, or what a precharge ended at 95 % has left.");
        Capacitance = Number("inrush_capacitance", "F", "Sum of the capacitances that it charges.");
        Parts = Names("inrush_parts", "Parts whose capacitors it charges.");
        Resistance = Number("inrush_resistance", "Ω", "Resistance of the loop: cells, links, wire, joints, contacts and the capacitors' own.");
        TimeConstant = Number("inrush_time_constant", "s", "Resistance of the loop times the capacitance.");
        Energy = Number("inrush_energy", "J", "Energy burnt in the loop while they charge.");
        JouleIntegral = Number("inrush_joule_integral", "A²s", "Joule integral of the charge through its contact.");
        PrechargedBy = Word("precharged_by", "Id of the resistor that precharges them; absent when none does.");
        MakeCurrent = Number("make_current", "A", "Current its contact may close onto.");
        OnWhenWelded = Names("on_when_welded", "Wired loads, converters and inverters that stay live when its contact does not open and every other switch and breaker is open; what is live anyway and what can be unplugged is left out.");
        FeedsInverterWhenWelded = YesNo("feeds_inverter_when_welded", "An inverter is among them.");
    }

    public Fact Peak { get; }

    public Fact Step { get; }

    public Fact Capacitance { get; }

    public Fact Parts { get; }

    public Fact Resistance { get; }

    public Fact TimeConstant { get; }

    public Fact Energy { get; }

    public Fact JouleIntegral { get; }

    public Fact PrechargedBy { get; }

    public Fact MakeCurrent { get; }

    public Fact OnWhenWelded { get; }

    public Fact FeedsInverterWhenWelded { get; }

    public static ContactInrushFacts Switch { get; } = new("switch");

    public static ContactInrushFacts Relay { get; } = new("relay");
}

/// <summary>Facts about what capacitor inrush does to a fuse.</summary>
public static class FuseInrushFacts
{
    private const string Kind = "fuse";

    public static readonly Fact JouleIntegral = Fact.Number(
        Kind, "inrush_joule_integral", "A²s", "Largest Joule integral through it when a contact closes onto discharged capacitors; absent when none flows through it.");

    public static readonly Fact At = Fact.Word(
        Kind, "inrush_at", "Id of what closes then: a switch, a relay, a port that is plugged, or the fuse itself when it is put in.");

    public static readonly Fact Parts = Fact.Names(Kind, "inrush_parts", "Parts whose capacitors are charged then.");

    public static readonly Fact MeltingEnergy = Fact.Number(
        Kind, "melting_energy", "A²s", "Smallest Joule integral at which its element may melt in so short a time: its own figure, else the square of its highest tested current times the shortest time its class allows there.");
}

/// <summary>Facts about plugging a load with capacitors at its input into a live port.</summary>
public static class PortInrushFacts
{
    private const string Kind = "port";

    public static readonly Fact Peak = Fact.Number(
        Kind, "plug_in_peak", "A", "Largest current through its contacts when a described load with discharged capacitors is plugged in live; absent when none has any.");

    public static readonly Fact Energy = Fact.Number(Kind, "plug_in_energy", "J", "Energy burnt in the loop then.");
}

/// <summary>Facts about a resistor that precharges the capacitors behind a contact; absent for any other.</summary>
public static class PrechargeFacts
{
    private const string Kind = "resistor";

    public static readonly Fact Contact = Fact.Word(
        Kind, "precharges", "Id of the relay or switch that it goes round.");

    public static readonly Fact Parts = Fact.Names(Kind, "precharged_parts", "Parts whose capacitors it charges.");

    public static readonly Fact Capacitance = Fact.Number(Kind, "precharged_capacitance", "F", "Sum of those capacitances.");

    public static readonly Fact ComesFirst = Fact.YesNo(
        Kind, "comes_first", "In some position of the switches it has a feed while the relay it goes round stays open; false when that relay closes first in all of them.");

    public static readonly Fact AlwaysAcross = Fact.YesNo(
        Kind, "always_across", "No switch or relay stands in its branch: it lies across the contact at all times.");

    public static readonly Fact FinalShare = Fact.Number(
        Kind, "precharge_share", "", "Share of the bank's voltage that the capacitors reach with what hangs behind them idle, at the worse of full and empty.");

    public static readonly Fact FinalVoltage = Fact.Number(Kind, "precharge_voltage", "V", "That voltage.");

    public static readonly Fact HeldDownBy = Fact.Word(
        Kind, "held_down_by", "Id of a converter or an inverter that starts during the precharge and takes the voltage down to its cut-off again, or of the relay that the precharge goes round, when its coil hangs on what is charged and pulls in at that voltage; absent when there is none.");

    public static readonly Fact SecondsTo95 = Fact.Number(
        Kind, "seconds_to_95", "s", "Time until 95 % of the bank's voltage; absent when it is never reached.");

    public static readonly Fact SecondsTo99 = Fact.Number(
        Kind, "seconds_to_99", "s", "Time until 99 % of the bank's voltage; absent when it is never reached.");

    public static readonly Fact Energy = Fact.Number(Kind, "precharge_energy", "J", "Energy it burns at each precharge.");

    public static readonly Fact PulseEnergy = Fact.Number(
        Kind, "pulse_energy", "J", "Energy of one pulse that it stands: its own figure, else from its power rating.");

    public static readonly Fact HeldPower = Fact.Number(
        Kind, "held_power", "W", "Heat in it while its branch is held closed onto a short or onto a load that works.");

    public static readonly Fact OffCurrent = Fact.Worst(
        Kind, "off_current", "A", "Largest current through it with every switch open, loads and chargers plugged in or not.");

    public static readonly Fact OffVoltage = Fact.Worst(
        Kind, "off_voltage", "V", "Highest voltage at the capacitors behind it with every switch open.");
}
