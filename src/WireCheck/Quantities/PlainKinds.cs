using UnitsNet;

namespace WireCheck.Quantities;

/// <summary>Quantities that are not electric, and the units they are written in.</summary>
public static class PlainKinds
{
    private const double DaysPerMonth = 30;
    private const double DaysPerYear = 365;

    public static QuantityKind<Length> Length { get; } = new("a length", "90 mm", l => l.Meters,
    [
        new("mm", v => UnitsNet.Length.FromMillimeters(v)),
        new("cm", v => UnitsNet.Length.FromCentimeters(v)),
        new("m", v => UnitsNet.Length.FromMeters(v)),
        new("µm", v => UnitsNet.Length.FromMicrometers(v)),
        new("in", v => UnitsNet.Length.FromInches(v)),
        new("ft", v => UnitsNet.Length.FromFeet(v)),
        new("yd", v => UnitsNet.Length.FromYards(v)),
        new("mil", v => UnitsNet.Length.FromMils(v)),
    ]);

    public static QuantityKind<Area> Area { get; } = new("an area", "20 cm²", a => a.SquareMeters,
    [
        new("cm²", v => UnitsNet.Area.FromSquareCentimeters(v)),
        new("mm²", v => UnitsNet.Area.FromSquareMillimeters(v)),
        new("m²", v => UnitsNet.Area.FromSquareMeters(v)),
        new("in²", v => UnitsNet.Area.FromSquareInches(v)),
    ]);

    public static QuantityKind<Duration> Duration { get; } = new("a duration", "20 min", d => d.Seconds,
    [
        new("s", v => UnitsNet.Duration.FromSeconds(v)),
        new("ms", v => UnitsNet.Duration.FromMilliseconds(v)),
        new("µs", v => UnitsNet.Duration.FromMicroseconds(v)),
        new("min", v => UnitsNet.Duration.FromMinutes(v)),
        new("h", v => UnitsNet.Duration.FromHours(v)),
        new("d", v => UnitsNet.Duration.FromDays(v)),
        new("day", v => UnitsNet.Duration.FromDays(v)),
        new("days", v => UnitsNet.Duration.FromDays(v)),
        new("week", v => UnitsNet.Duration.FromWeeks(v)),
        new("weeks", v => UnitsNet.Duration.FromWeeks(v)),
    ]);

    public static QuantityKind<Temperature> Temperature { get; } = new("a temperature", "35 °C", t => t.DegreesCelsius,
    [
        new("°C", v => UnitsNet.Temperature.FromDegreesCelsius(v)),
        new("°F", v => UnitsNet.Temperature.FromDegreesFahrenheit(v)),
        new("K", v => UnitsNet.Temperature.FromKelvins(v)),
    ])
    {
        MayBeNegative = true,
    };

    public static QuantityKind<Ratio> Ratio { get; } = new("a share", "3 %", r => r.DecimalFractions,
    [
        new("%", v => UnitsNet.Ratio.FromPercent(v)),
        new("‰", v => UnitsNet.Ratio.FromPartsPerThousand(v)),
    ]);

    public static QuantityKind<ShareRate> ShareRate { get; } = new("a share per time", "2 %/month", r => r.PerDay,
    [
        new("%/month", v => new ShareRate(v / 100 / DaysPerMonth)),
        new("%/day", v => new ShareRate(v / 100)),
        new("%/week", v => new ShareRate(v / 100 / 7)),
        new("%/year", v => new ShareRate(v / 100 / DaysPerYear)),
    ]);
}
