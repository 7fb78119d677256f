using UnitsNet;
using WireCheck.Description.Reader;
using WireCheck.Quantities;

namespace WireCheck.Description.Kinds;

/// <summary>One leg of wire from a terminal to the next; a daisy chain is several legs <c>w9/1</c>, <c>w9/2</c>.</summary>
public sealed class Conductor : Part
{
    /// <summary>Stands between the id of a daisy chain and the number of a leg.</summary>
    public const char BeforeLeg = '/';

    public override string Kind => "conductor";

    /// <summary>The id in the file, without the number of the leg.</summary>
    public required string WrittenId { get; init; }

    public required TerminalReference From { get; init; }

    public required TerminalReference To { get; init; }

    public required Given<ConductorSize> Size { get; init; }

    /// <summary>One way, terminal to terminal.</summary>
    public required Given<Length> Length { get; init; }

    /// <summary>Material in the library: copper, tinned, aluminium, copper-clad-aluminium.</summary>
    public required Given<string> Material { get; init; }

    /// <summary>Fine-stranded, coarse-stranded or solid; null means fine.</summary>
    public Given<Strands>? Strands { get; init; }

    /// <summary>Class of insulation in the library.</summary>
    public required Given<string> Insulation { get; init; }

    /// <summary>How the <see cref="From"/> end is finished.</summary>
    public required ConductorEnd FromEnd { get; init; }

    public required ConductorEnd ToEnd { get; init; }

    /// <summary>Measured or maker's resistance; wins over the table.</summary>
    public Given<LinearResistance>? Resistance { get; init; }

    /// <summary>Name shared by conductors that are tied together.</summary>
    public Given<string>? Bundle { get; init; }

    /// <summary>Has a sleeve or conduit over its whole length.</summary>
    public Given<bool>? Sleeve { get; init; }

    /// <summary>How it passes a metal wall; null when it passes none.</summary>
    public Given<WallPassage>? ThroughWall { get; init; }

    public Given<PartPlace>? Place { get; init; }

    public Given<string>? Colour { get; init; }

    /// <summary>Moves in use, such as a lead to a lid; null means fixed.</summary>
    public Given<bool>? Moving { get; init; }

    public override IReadOnlyList<string> Terminals => [];

    /// <summary>The same leg, longer or shorter by a factor above 0.</summary>
    internal Conductor Lengthened(double factor) => new()
    {
        Id = Id,
        Position = Position,
        ClassName = ClassName,
        WrittenId = WrittenId,
        From = From,
        To = To,
        Size = Size,
        Length = Length with { Value = Length.Value * factor },
        Material = Material,
        Strands = Strands,
        Insulation = Insulation,
        FromEnd = FromEnd,
        ToEnd = ToEnd,
        Resistance = Resistance,
        Bundle = Bundle,
        Sleeve = Sleeve,
        ThroughWall = ThroughWall,
        Place = Place,
        Colour = Colour,
        Moving = Moving,
    };
}

/// <summary>How one end of a conductor is finished.</summary>
public sealed class ConductorEnd
{
    /// <summary>Class in the library of joints.</summary>
    public required Given<string> Class { get; init; }

    /// <summary>Resistance of the joint; null takes the class's figure.</summary>
    public Given<ElectricResistance>? Resistance { get; init; }

    internal static ConductorEnd Read(MapReader r) => new()
    {
        Class = r.Word("class", WordTable.Joint, "crimped-ring"),
        Resistance = r.Optional<ElectricResistance>("resistance", Bounds.ZeroOrMore),
    };
}

/// <summary>How a conductor is stranded.</summary>
public enum Strands
{
    Fine,
    Coarse,
    Solid,
}

/// <summary>How a conductor passes a metal wall.</summary>
public enum WallPassage
{
    Grommet,
    Gland,
    Bare,
}
