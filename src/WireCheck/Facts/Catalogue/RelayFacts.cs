namespace WireCheck.Facts.Catalogue;

/// <summary>Facts about a relay's coil and behaviour. Its contact is in <see cref="ContactFacts"/>.</summary>
public static class RelayFacts
{
    private const string Kind = "relay";

    public static readonly Fact DiodeCurrent = Fact.Worst(
        Kind, "diode_current", "A", "Largest steady current through the diode inside it that lies across its coil, cathode at 86; next to 0 unless 85 and 86 are changed over. Absent without such a diode.");

    public static readonly Fact RestCurrent = Fact.Worst(
        Kind, "rest_current", "A", "Largest steady current from 30 to the rest contact 87a; absent without one.");

    public static readonly Fact RestRatedCurrent = Fact.Number(
        Kind, "rest_rated_current", "A", "Continuous current the rest contact is rated for.");

    public static readonly Fact PullInVoltage = Fact.Worst(
        Kind, "pull_in_voltage", "V", "Lowest coil voltage, before the contact has moved, in any mode that means to close it.");

    public static readonly Fact Operate = Fact.Number(Kind, "operate", "V", "Voltage at which it must close, coil at 20 °C.");

    public static readonly Fact HotOperate = Fact.Number(
        Kind, "hot_operate", "V", "That voltage times the coil's resistance when hot over its resistance at 20 °C; the coil having been held at pull_in_voltage in the hottest air inside the box.");

    public static readonly Fact CoilVoltage = Fact.Worst(
        Kind, "coil_voltage", "V", "Highest voltage across its coil.");

    public static readonly Fact CoilMax = Fact.Number(
        Kind, "coil_max", "V", "Highest continuous coil voltage in air of 20 °C.");

    public static readonly Fact Suppression = Fact.Word(
        Kind, "suppression", "What takes the coil's kick: none, diode, resistor or zener, in the relay or drawn across its coil; absent when the description does not say.");

    public static readonly Fact CoilPower = Fact.Worst(Kind, "coil_power", "W", "Largest heat in its coil.");

    public static readonly Fact CoilTemperature = Fact.Worst(
        Kind, "coil_temperature", "°C", "Hottest its coil gets, held on in the hottest air inside the box.");

    public static readonly Fact Latching = Fact.YesNo(Kind, "latching", "It keeps its position without coil current.");

    public static readonly Fact HoldingCurrent = Fact.Worst(
        Kind, "holding_current", "A", "Largest current its coil (or economiser) holds with, in any mode in which loads are at standby.");

    public static readonly Fact HoldingSharePerDay = Fact.Number(
        Kind, "holding_share_per_day", "", "Share of the banks' full charge that the holding current takes in a day.");

    public static readonly Fact HasEconomiser = Fact.YesNo(Kind, "economiser", "An economiser holds its coil.");

    public static readonly Fact HoldingChain = Fact.Names(
        Kind, "holding_chain", "Parts and conductors that its holding current flows through, from the bank's positive to its negative.");

    public static readonly Fact TwoStates = Fact.YesNo(
        Kind, "two_states", "In some mode it stays closed if it was closed and stays open if it was open, although it is not latching.");

    public static readonly Fact TwoStatesMode = Fact.Word(Kind, "two_states_mode", "The first such mode.");

    public static readonly Fact TwoStatesLoop = Fact.Names(
        Kind, "two_states_loop", "Parts and conductors of the loop that then holds it.");

    public static readonly Fact OwnContactWhen = Fact.Word(
        Kind, "own_contact_when", "The state of fewest closed switches in which its own contact holds it in, if it was in; absent when there is none.");

    public static readonly Fact OwnContactLoop = Fact.Names(
        Kind, "own_contact_loop", "Parts and conductors of the loop that then holds it.");

    public static readonly Fact ChattersLoop = Fact.Names(
        Kind, "chatters_loop", "Parts and conductors that feed its coil while it chatters with the loads at standby.");

    public static readonly Fact Chatters = Fact.YesNo(
        Kind, "chatters", "In some mode closing its contact takes its own coil below release, and opening it gives it back.");

    public static readonly Fact ChattersMode = Fact.Word(Kind, "chatters_mode", "The first such mode.");
}
