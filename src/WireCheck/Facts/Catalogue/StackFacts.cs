namespace WireCheck.Facts.Catalogue;

/// <summary>Facts about how a bank's cells are held and in which order they are joined.</summary>
public static class StackFacts
{
    private const string Kind = "cells";

    public static readonly Fact CellsInBank = Fact.Number(Kind, "cell_count", "", "Cells in the bank: groups in series times cells side by side.");

    public static readonly Fact Separators = Fact.YesNo(
        Kind, "separators", "Insulating sheets stand between neighbouring cells; absent when the description does not say.");

    public static readonly Fact Clamp = Fact.YesNo(
        Kind, "clamp", "Plates or bands hold the cells together; absent when the description does not say.");

    public static readonly Fact Packaged = Fact.YesNo(
        Kind, "packaged", "It is a finished battery with a BMS of its own inside, not a bank of bare cells.");

    public static readonly Fact HasBms = Fact.YesNo(
        Kind, "has_bms", "A BMS stands at its end, or it is a finished battery that has one inside.");

    public static readonly Fact TurnedBms = Fact.Word(
        Kind, "turned_bms", "Id of a BMS that stands at its end with the side of the loads towards the cells; absent when none does.");

    public static readonly Fact WatchedInstead = Fact.Word(
        Kind, "watched_instead", "Id of the bank beside it whose cells its BMS feels instead of its own; absent when its own are felt, when it is a finished battery, and without a BMS.");

    public static readonly Fact WatchingBms = Fact.Word(Kind, "watching_bms", "Id of that BMS; absent when watched_instead is.");

    public static readonly Fact MaxSeries = Fact.Number(
        Kind, "max_series", "", "Most such batteries that its maker allows in series; absent when the description does not say.");

    public static readonly Fact BatteriesInSeries = Fact.Number(
        Kind, "batteries_in_series", "", "Banks in series in the longest row it stands in, contacts counted as closed; 1 when it stands alone.");

    public static readonly Fact ShortedTerminals = Fact.Names(
        Kind, "shorted_terminals", "Pairs of its own terminals that wire or a closed contact joins in some mode, with cells between them.");

    public static readonly Fact JoinedAtOtherCount = Fact.Names(
        Kind, "joined_at_other_count", "Pairs of a terminal of its own and one of another bank that are joined in some mode although a different number of cells lies below them.");
}
