namespace WireCheck.Facts.Catalogue;

/// <summary>Facts about the leads between cells and a BMS: of a conductor that is one, or of a BMS that tells them in short.</summary>
public sealed class SenseLeadFacts : FactGroup
{
    private SenseLeadFacts(string kind)
        : base(kind)
    {
        Unfused = YesNo("sense_unfused", "A sense lead is joined to the cells with no fuse between; absent for what is no sense lead.");
        Size = Word("sense_size", "Size of the sense lead.");
        Length = Number("sense_length", "m", "Length of the sense lead.");
        Fuse = Number("sense_fuse", "A", "Rating of the fuse at the cell; absent where there is none.");
        Ampacity = Number("sense_ampacity", "A", "Steady current the sense lead is good for.");
        Exposed = YesNo("sense_exposed", "The sense lead lies outside the box or passes a metal wall.");
    }

    public Fact Unfused { get; }

    public Fact Size { get; }

    public Fact Length { get; }

    public Fact Fuse { get; }

    public Fact Ampacity { get; }

    public Fact Exposed { get; }

    public static SenseLeadFacts Conductor { get; } = new("conductor");

    public static SenseLeadFacts Bms { get; } = new("bms");
}
