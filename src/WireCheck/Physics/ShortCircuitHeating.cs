namespace WireCheck.Physics;

/// <summary>
/// A conductor heated so fast that nothing leaves it: (k S)² = I² t. Source: IEC 60364-5-54 Annex A and
/// IEC 60949. Holds to about 5 s.
/// </summary>
public static class ShortCircuitHeating
{
    /// <summary>
    /// k in A s^0.5/m²: √(Q (β + 20)/ρ · ln(1 + (Tf − Ti)/(β + Ti))).
    /// </summary>
    /// <param name="heat">Q, volumetric heat in J/(K m³).</param>
    /// <param name="zero">β in °C below zero, 234.5 for copper.</param>
    /// <param name="resistivity">ρ at 20 °C in Ω m.</param>
    /// <param name="from">Ti, temperature at the start in °C.</param>
    /// <param name="to">Tf, limit of the insulation in °C.</param>
    /// <returns>0 when the start is at or above the limit.</returns>
    public static double Constant(double heat, double zero, double resistivity, double from, double to) =>
        to <= from ? 0 : Math.Sqrt(heat * (zero + 20) / resistivity * Math.Log(1 + ((to - from) / (zero + from))));

    /// <summary>Seconds until the limit: (k S / I)².</summary>
    /// <param name="constant">k in A s^0.5/m².</param>
    /// <param name="area">S in m².</param>
    /// <param name="amps">I in A; infinite time at 0.</param>
    public static double Seconds(double constant, double area, double amps)
    {
        double ratio = constant * area / amps;
        return ratio * ratio;
    }
}
