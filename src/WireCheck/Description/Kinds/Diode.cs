using UnitsNet;
using WireCheck.Description.Reader;
using WireCheck.Quantities;

namespace WireCheck.Description.Kinds;

/// <summary>A diode, anode A to cathode K.</summary>
public sealed class Diode : Part
{
    public override string Kind => "diode";

    public required Given<DiodeStyle> Style { get; init; }

    /// <summary>Forward drop at rated current.</summary>
    public required Given<ElectricPotential> Forward { get; init; }

    public required Given<ElectricCurrent> Rated { get; init; }

    /// <summary>Highest reverse voltage.</summary>
    public required Given<ElectricPotential> Volts { get; init; }

    /// <summary>Reverse current at that voltage and 25 °C; null leaves only what the curve of its junction lets back, some microamperes.</summary>
    public Given<ElectricCurrent>? Leakage { get; init; }

    public override IReadOnlyList<string> Terminals => ["A", "K"];

    internal static Diode Read(MapReader r) => new()
    {
        Id = r.Id,
        Position = r.Position,
        ClassName = r.ClassName,
        Style = r.Required<DiodeStyle>("style"),
        Forward = r.Required<ElectricPotential>("forward", example: "0.5 V"),
        Rated = r.Required<ElectricCurrent>("rated", example: "10 A"),
        Volts = r.Required<ElectricPotential>("volts", example: "45 V"),
        Leakage = r.Optional<ElectricCurrent>("leakage", Bounds.ZeroOrMore),
    };
}

/// <summary>How a diode is made.</summary>
public enum DiodeStyle
{
    Silicon,
    Schottky,

    /// <summary>A transistor driven as a diode: a few tens of millivolts.</summary>
    Ideal,
}
