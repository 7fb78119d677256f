namespace WireCheck.Facts.Catalogue;

/// <summary>Facts about a socket or plug in the wall of the box.</summary>
public static class PortFacts
{
    private const string Kind = "port";

    public static readonly Fact Direction = Fact.Word(Kind, "direction", "out, in or both.");

    public static readonly Fact Pins = Fact.Word(Kind, "pins", "shrouded or touchable.");

    public static readonly Fact Mates = Fact.Word(Kind, "mates", "Type of plug that fits it; absent when it is not described.");

    public static readonly Fact NominalVoltage = Fact.Number(
        Kind, "nominal_voltage", "V", "Nominal voltage between its contacts: of the bank, or of the converter that feeds it.");

    public static readonly Fact Rated = Fact.Number(Kind, "rated", "A", "Steady current its contacts are rated for.");

    public static readonly Fact Current = Fact.Worst(Kind, "current", "A", "Largest steady current through it.");

    public static readonly Fact FuseRating = Fact.Number(
        Kind, "fuse_rating", "A", "Smallest rating of a fuse or breaker between the bank, or the converter that feeds it, and it; absent when there is none.");

    public static readonly Fact FuseId = Fact.Word(Kind, "fuse_id", "Id of that fuse or breaker.");

    public static readonly Fact Unfused = Fact.YesNo(
        Kind, "unfused", "True when the bank, or the converter that feeds it, reaches it with no fuse between.");

    public static readonly Fact FuseSharedWith = Fact.Names(
        Kind, "fuse_shared_with", "Other ports that the same fuse feeds with no further fuse between.");

    public static readonly Fact BranchConductor = Fact.Word(
        Kind, "branch_conductor", "Id of the conductor of lowest ampacity between that fuse and the port, and from the port to the return busbar.");

    public static readonly Fact BranchAmpacity = Fact.Number(Kind, "branch_ampacity", "A", "Ampacity of that conductor.");

    public static readonly Fact OpenVoltage = Fact.Worst(
        Kind, "open_voltage", "V", "Highest voltage between its contacts, into a burden of 10 kΩ, when nothing is plugged into it.");

    public static readonly Fact SamePlugOtherJob = Fact.Names(
        Kind, "same_plug_other_job", "Ports that the same plug fits and that differ from it in direction, or by more than a tenth in nominal voltage; ports marked as keyed are left out.");

    public static readonly Fact SwitchedAhead = Fact.YesNo(
        Kind, "switched_ahead", "A switch, a relay or a breaker can make it dead before the plug is pulled.");
}
