namespace WireCheck.Facts.Catalogue;

/// <summary>Facts about the whole box.</summary>
public static class PackFacts
{
    private const string Kind = FactCatalogue.PackKind;

    public static readonly Fact NominalVoltage = Fact.Number(
        Kind, "nominal_voltage", "V", "Nominal voltage of the bank: the chemistry's nominal cell voltage times the cells in series.");

    public static readonly Fact HighestVoltage = Fact.Number(
        Kind, "highest_voltage", "V", "Highest voltage of the bank: the top of the cell window times the cells in series, or the highest charger voltage where that is more.");

    public static readonly Fact Capacity = Fact.Number(
        Kind, "capacity", "C", "Charge that all banks hold together when full.");

    public static readonly Fact InsideTemperature = Fact.Worst(
        Kind, "inside_temperature", "°C", "Hottest air inside the box.");

    public static readonly Fact StoredCurrent = Fact.Number(
        Kind, "stored_current", "A", "Current that leaves the cells with all switches open and nothing plugged in, without self-discharge.");

    public static readonly Fact StoredConsumers = Fact.Names(
        Kind, "stored_consumers", "Parts that draw current in the stored state, largest first, each with its current in words.");

    public static readonly Fact TimeToCutOff = Fact.Number(
        Kind, "time_to_cut_off", "s", "Time on the shelf from full until the BMS opens (or the cells reach the bottom of their window), self-discharge at the middle of the ambient counted, from the usable part of the capacity.");

    public static readonly Fact TimeFromCutOffToDamage = Fact.Number(
        Kind, "time_from_cut_off_to_damage", "s", "Time from that cut-off until a cell is down to its damage voltage, with only what is drawn on the cell side of the open BMS and self-discharge.");

    public static readonly Fact BestMove = Fact.Word(
        Kind, "best_move", "The consumer that, taken off the stored box, lengthens the time to the cut-off most; one that is meant to stay live only where no other helps. Absent when none helps.");

    public static readonly Fact BestMoveBehind = Fact.Word(
        Kind, "best_move_behind", "A switch or relay behind which it would be dead in the stored box and fed in use; absent when there is none.");

    public static readonly Fact TimeToCutOffAfterMove = Fact.Number(
        Kind, "time_to_cut_off_after_move", "s", "time_to_cut_off, solved again without that consumer.");

    public static readonly Fact UnsolvedStates = Fact.Names(
        Kind, "unsolved_states", "States (mode and corner) for which the circuit has no solution that meets Kirchhoff's laws.");
}
