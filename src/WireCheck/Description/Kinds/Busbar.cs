using UnitsNet;
using WireCheck.Description.Reader;
using WireCheck.Quantities;

namespace WireCheck.Description.Kinds;

/// <summary>A bar on which several conductors meet.</summary>
public sealed class Busbar : Part
{
    public override string Kind => "busbar";

    public required Given<Section> Section { get; init; }

    public required Given<Length> Length { get; init; }

    /// <summary>Material in the library; null means copper.</summary>
    public Given<string>? Material { get; init; }

    /// <summary>Number of studs; null when it is not given.</summary>
    public Given<int>? Studs { get; init; }

    public Given<bool>? Covered { get; init; }

    /// <summary>Empty: any positive number is a stud in order along the bar, and the id alone is the middle.</summary>
    public override IReadOnlyList<string> Terminals => [];

    internal static Busbar Read(MapReader r) => new()
    {
        Id = r.Id,
        Position = r.Position,
        ClassName = r.ClassName,
        Section = r.Required<Section>("section", example: "15 x 3 mm"),
        Length = r.Required<Length>("length", example: "60 mm"),
        Material = r.OptionalWord("material", WordTable.Material),
        Studs = r.Optional<int>("studs"),
        Covered = r.Optional<bool>("covered"),
    };
}
