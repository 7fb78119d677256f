namespace WireCheck.Facts.Catalogue;

/// <summary>Facts about one leg of wire: what it is and what it carries.</summary>
public static class ConductorFacts
{
    private const string Kind = "conductor";

    public static readonly Fact From = Fact.Word(Kind, "from", "The terminal it starts at.");

    public static readonly Fact To = Fact.Word(Kind, "to", "The terminal it ends at.");

    public static readonly Fact Size = Fact.Word(Kind, "size", "Its size as written, such as 6 AWG or 16 mm².");

    public static readonly Fact Length = Fact.Number(Kind, "length", "m", "Its length, one way.");

    public static readonly Fact Material = Fact.Word(
        Kind, "material", "copper, tinned, aluminium or copper-clad-aluminium.");

    public static readonly Fact Insulation = Fact.Word(Kind, "insulation", "Its class of insulation.");

    public static readonly Fact Strands = Fact.Word(Kind, "strands", "fine, coarse or solid.");

    public static readonly Fact Moving = Fact.YesNo(Kind, "moving", "It moves in use.");

    public static readonly Fact IsReturn = Fact.YesNo(
        Kind, "is_return", "It is on the negative side: it stays joined to the bank's negative when every consumer, coil, lamp and fuse is taken out.");

    public static readonly Fact IsSense = Fact.YesNo(Kind, "is_sense", "One end is a sense input of a BMS.");

    public static readonly Fact Current = Fact.Worst(
        Kind, "current", "A", "Largest steady current it carries, over all modes and corners.");

    public static readonly Fact SameAs = Fact.Word(
        Kind, "same_as", "The first conductor of those that follow one another, or lie side by side, and are worth and bear the same as this one: it speaks for all; absent for itself.");

    public static readonly Fact Alike = Fact.Names(
        Kind, "alike", "The conductors it speaks for; absent where another speaks for it.");

    public static readonly Fact Ampacity = Fact.Number(
        Kind, "ampacity", "A", "Steady current it may carry, by size, material and insulation, in its bundle and at the ambient it lies in.");

    public static readonly Fact AmpacityBasis = Fact.Word(
        Kind, "ampacity_basis", "The table and factors that ampacity was taken from, in words.");

    public static readonly Fact Ambient = Fact.Number(
        Kind, "ambient", "°C", "Hottest air around it: the box's inside temperature, or the outside air where it lies outside.");

    public static readonly Fact BundleCount = Fact.Number(
        Kind, "bundle_count", "", "Conductors tied together with it that carry current, itself included; 1 when it lies alone.");

    public static readonly Fact SizeNeeded = Fact.Word(
        Kind, "size_needed", "Smallest size, in the system of its own size, whose ampacity in the same place reaches its current and the rating that protects it; absent when none does.");

    public static readonly Fact Drop = Fact.Worst(Kind, "drop", "V", "Largest voltage lost along it, joints included.");

    public static readonly Fact ResistanceRatio = Fact.Number(
        Kind, "resistance_ratio", "", "The resistance per length written in the description over that of the table for its size and material; absent when none is written.");

    public static readonly Fact SolderEnd = Fact.YesNo(
        Kind, "solder_end", "An end is held by solder alone.");

    public static readonly Fact UnfitEnds = Fact.Names(
        Kind, "unfit_ends", "Ends whose class does not take this size, each in words with the sizes it takes.");

    public static readonly Fact EndRating = Fact.Number(
        Kind, "end_rating", "A", "Lowest steady current that the classes of its ends allow for this size; absent when they name none.");

    public static readonly Fact EndRatingWhere = Fact.Word(Kind, "end_rating_where", "Which end that is, in words.");

    public static readonly Fact ParallelCount = Fact.Number(
        Kind, "parallel_count", "", "Conductors that join the same two terminals, itself included.");

    public static readonly Fact ParallelShare = Fact.Worst(
        Kind, "parallel_share", "", "Its current over the mean of the conductors beside it at the largest current; absent when it lies alone.");
}
