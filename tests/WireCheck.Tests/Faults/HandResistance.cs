namespace WireCheck.Tests.Faults;

/// <summary>
/// Resistances as one would work them out on paper, in mΩ, from the figures of the tables: copper 0.0172414 Ω mm²/m at 20 °C,
/// 0.00393 per kelvin, 2 % for the lay of strands, gauge area by 0.127 mm × 92^((36 − n)/39).
/// </summary>
internal sealed class HandResistance(bool highest, double coating = 1)
{
    /// <summary>Copper at 75 °C over copper at 20 °C; only where the highest resistance is asked.</summary>
    internal double Hot { get; } = highest ? 1 + (0.00393 * (75 - 20)) : 1;

    /// <summary>Contact of two bolted faces: 15 µΩ, 40 µΩ when aged.</summary>
    internal double Bolted { get; } = highest ? 0.040 : 0.015;

    /// <summary>A fuse at its rated current has 1.4 times its cold resistance.</summary>
    internal double Fuse(double coldMilliohms) => coldMilliohms * (highest ? 1.4 : 1);

    /// <summary>A conductor of a gauge and its two ends: r ring, s spade receptacle, f ferrule.</summary>
    internal double Wire(int gauge, double millimetres, string ends = "rr")
    {
        double diameter = 0.127 * Math.Pow(92, (36 - gauge) / 39.0);
        double perMillimetre = 0.0172414 * 1.02 / (Math.PI / 4 * diameter * diameter);
        return (perMillimetre * coating * Hot * millimetres) + End(ends[0], perMillimetre) + End(ends[1], perMillimetre);
    }

    /// <summary>Bars between cells of 20 by 2 mm, each with two bolted joints.</summary>
    internal double Links(int count, double millimetres) => count * ((0.0172414 * millimetres / 40 * Hot) + (2 * Bolted));

    /// <summary>The crimp is as much wire as 12 mm (10 mm for a receptacle or ferrule), twice that when aged, and a contact.</summary>
    private double End(char kind, double perMillimetre) => kind switch
    {
        'r' => (perMillimetre * (highest ? 24 : 12)) + Bolted,
        's' => (perMillimetre * (highest ? 20 : 10)) + (highest ? 1.0 : 0.40),
        'f' => (perMillimetre * (highest ? 20 : 10)) + (highest ? 0.30 : 0.10),
        _ => throw new ArgumentOutOfRangeException(nameof(kind)),
    };
}
