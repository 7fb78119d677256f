using UnitsNet;
using WireCheck.Description.Reader;
using WireCheck.Quantities;

namespace WireCheck.Description.Kinds;

/// <summary>A bolted, soldered or plugged joint between two terminals without a conductor.</summary>
public sealed class Joint : Part
{
    public override string Kind => "joint";

    public required TerminalReference First { get; init; }

    public required TerminalReference Second { get; init; }

    /// <summary>Class in the library of joints.</summary>
    public required Given<string> JointKind { get; init; }

    /// <summary>Its resistance; null takes the class's aged figure.</summary>
    public Given<ElectricResistance>? Resistance { get; init; }

    public override IReadOnlyList<string> Terminals => [];

    internal static Joint Read(MapReader r)
    {
        (TerminalReference first, TerminalReference second) = r.TwoTerminals("between");
        return new Joint
        {
            Id = r.Id,
            Position = r.Position,
            ClassName = r.ClassName,
            First = first,
            Second = second,
            JointKind = r.Word("kind", WordTable.Joint, "bolted"),
            Resistance = r.Optional<ElectricResistance>("resistance", Bounds.ZeroOrMore),
        };
    }
}
