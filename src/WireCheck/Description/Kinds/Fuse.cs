using UnitsNet;
using WireCheck.Description.Reader;
using WireCheck.Quantities;

namespace WireCheck.Description.Kinds;

/// <summary>A fuse or a circuit breaker: opens by itself on too much current.</summary>
public sealed class Fuse : Part
{
    /// <summary>True for a part of the section <c>breakers</c>.</summary>
    public required bool IsBreaker { get; init; }

    public override string Kind => IsBreaker ? "breaker" : "fuse";

    /// <summary>Class in the library, which gives its curve: <c>blade</c>, <c>strip-sf30</c>, <c>class-t</c>.</summary>
    public required Given<string> Class { get; init; }

    /// <summary>Rated current.</summary>
    public required Given<ElectricCurrent> Rating { get; init; }

    /// <summary>Highest direct voltage it can interrupt.</summary>
    public required Given<ElectricPotential> Volts { get; init; }

    /// <summary>Breaking capacity at <see cref="Volts"/>; null takes the class's figures by voltage.</summary>
    public Given<ElectricCurrent>? Breaking { get; init; }

    /// <summary>Cold resistance; null takes the class's.</summary>
    public Given<ElectricResistance>? Resistance { get; init; }

    /// <summary>Opening times by multiple of rating; empty takes the class's.</summary>
    public IReadOnlyList<FuseCurvePoint> Curve { get; init; } = [];

    public Given<JouleIntegral>? MeltingEnergy { get; init; }

    /// <summary>Part of the rating that may be used at the box's inside temperature; null takes the class's.</summary>
    public Given<Ratio>? AmbientFactor { get; init; }

    /// <summary>How a breaker is closed again; null for a fuse.</summary>
    public Given<BreakerReset>? Reset { get; init; }

    /// <summary>Standard marked on it, such as "ISO 8820-3"; null when unmarked.</summary>
    public Given<string>? Marked { get; init; }

    public FuseHolder? Holder { get; init; }

    public override IReadOnlyList<string> Terminals => ["1", "2"];

    internal static Fuse Read(MapReader r) => new()
    {
        Id = r.Id,
        Position = r.Position,
        ClassName = r.ClassName,
        IsBreaker = r.Section == SectionNames.Breakers,
        Class = r.Word("class", WordTable.FuseClass, "blade"),
        Rating = r.Required<ElectricCurrent>("rating", example: "20 A"),
        Volts = r.Required<ElectricPotential>("volts", example: "32 V"),
        Breaking = r.Optional<ElectricCurrent>("breaking"),
        Resistance = r.Optional<ElectricResistance>("resistance"),
        Curve = r.List("curve", FuseCurvePoint.Read),
        MeltingEnergy = r.Optional<JouleIntegral>("melting_energy"),
        AmbientFactor = r.Optional<Ratio>("ambient_factor", Bounds.Share),
        Reset = r.Optional<BreakerReset>("reset"),
        Marked = r.Optional<string>("marked"),
        Holder = r.OptionalMap("holder", FuseHolder.Read),
    };
}

/// <summary>Opening times at one current.</summary>
public sealed class FuseCurvePoint
{
    /// <summary>Current as a part of the rating.</summary>
    public required Given<Ratio> At { get; init; }

    /// <summary>Never opens sooner; null when the standard sets none.</summary>
    public Given<Duration>? Fastest { get; init; }

    /// <summary>Always open by then; null when the standard sets none.</summary>
    public Given<Duration>? Slowest { get; init; }

    internal static FuseCurvePoint Read(MapReader r) => new()
    {
        At = r.Required<Ratio>("at", example: "135 %"),
        Fastest = r.Optional<Duration>("fastest", Bounds.ZeroOrMore),
        Slowest = r.Optional<Duration>("slowest"),
    };
}

/// <summary>What holds a fuse.</summary>
public sealed class FuseHolder
{
    public required Given<ElectricCurrent> Rating { get; init; }

    public Given<ElectricPotential>? Volts { get; init; }

    /// <summary>Class of its contacts in the library of joints.</summary>
    public Given<string>? Class { get; init; }

    /// <summary>Resistance of both contacts together.</summary>
    public Given<ElectricResistance>? Resistance { get; init; }

    /// <summary>Size of its own leads, where it has them.</summary>
    public Given<ConductorSize>? Lead { get; init; }

    internal static FuseHolder Read(MapReader r) => new()
    {
        Rating = r.Required<ElectricCurrent>("rating", example: "30 A"),
        Volts = r.Optional<ElectricPotential>("volts"),
        Class = r.OptionalWord("class", WordTable.Joint),
        Resistance = r.Optional<ElectricResistance>("resistance"),
        Lead = r.Optional<ConductorSize>("lead"),
    };
}

/// <summary>How a breaker is closed again.</summary>
public enum BreakerReset
{
    Manual,
    Auto,
}
