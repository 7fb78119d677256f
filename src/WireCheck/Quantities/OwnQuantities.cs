namespace WireCheck.Quantities;

/// <summary>Share lost per unit of time, written <c>2 %/month</c> (a month is 30 days).</summary>
/// <param name="PerDay">Fraction per day, 0 or more.</param>
public readonly record struct ShareRate(double PerDay);

/// <summary>Resistance of a conductor per length, written <c>3.3 mΩ/m</c> or <c>1.24 Ω/kft</c>.</summary>
/// <param name="OhmsPerMetre">Ohms per metre, above 0.</param>
public readonly record struct LinearResistance(double OhmsPerMetre);

/// <summary>The Joule integral I²t of a fuse, written <c>520 A²s</c>.</summary>
/// <param name="AmpereSquaredSeconds">A²s, above 0.</param>
public readonly record struct JouleIntegral(double AmpereSquaredSeconds);
