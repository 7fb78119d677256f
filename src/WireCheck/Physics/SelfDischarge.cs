namespace WireCheck.Physics;

/// <summary>What a cell loses by itself, and how long a charge lasts against that and a steady current.</summary>
public static class SelfDischarge
{
    /// <summary>
    /// Self-discharge at a temperature over that at the reference: it doubles with every <paramref name="doubling"/> kelvins,
    /// 2^((T − T_ref) / ΔT), as sheets of LiFePO4 packs give it.
    /// </summary>
    /// <param name="celsius">Temperature of the cells, °C.</param>
    /// <param name="reference">Temperature of the printed figure, °C.</param>
    /// <param name="doubling">Rise that doubles it, K, above 0.</param>
    public static double Factor(double celsius, double reference, double doubling) =>
        Math.Pow(2, (celsius - reference) / doubling);

    /// <summary>
    /// Time a charge lasts, s: t = Q / (I + s Q_full), both losses taken as steady. Infinite when nothing draws.
    /// </summary>
    /// <param name="coulombs">Charge to be used up, C, 0 or more.</param>
    /// <param name="amps">Current drawn, A, 0 or more.</param>
    /// <param name="sharePerSecond">Share of the full charge lost by itself in a second, 1/s, 0 or more.</param>
    /// <param name="fullCoulombs">Full charge, C.</param>
    public static double Lasts(double coulombs, double amps, double sharePerSecond, double fullCoulombs)
    {
        double loss = amps + (sharePerSecond * fullCoulombs);
        return loss > 0 ? coulombs / loss : double.PositiveInfinity;
    }
}
