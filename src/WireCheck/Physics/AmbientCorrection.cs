namespace WireCheck.Physics;

/// <summary>What a conductor carries at an ambient other than its table's.</summary>
public static class AmbientCorrection
{
    /// <summary>
    /// I'/I = √((Tc' − Ta')/(Tc − Ta)): the rise over the air follows the square of the current. Source: NEC
    /// 310.15(B), note to the ambient correction tables. 0 where the air is as hot as the insulation may be.
    /// </summary>
    /// <param name="tableRating">Tc, the insulation rating of the table's column in °C.</param>
    /// <param name="tableAmbient">Ta, the table's ambient in °C, below <paramref name="tableRating"/>.</param>
    /// <param name="rating">Tc', the insulation rating of the conductor in °C.</param>
    /// <param name="ambient">Ta', the air around the conductor in °C.</param>
    public static double Factor(double tableRating, double tableAmbient, double rating, double ambient)
    {
        ArgumentOutOfRangeException.ThrowIfLessThanOrEqual(tableRating, tableAmbient);
        return ambient >= rating ? 0 : Math.Sqrt((rating - ambient) / (tableRating - tableAmbient));
    }

    /// <summary>
    /// Temperature estimate of AC 43.13-1B paragraph 11-66 d(6): T1 + (TR − T1) √(I/Imax). The circular calls it
    /// conservative; physics gives a smaller rise.
    /// </summary>
    /// <param name="ambient">T1 in °C.</param>
    /// <param name="rating">TR, the wire's rating in °C.</param>
    /// <param name="amps">Current, 0 or more.</param>
    /// <param name="maximumAmps">Current allowed at TR, above 0.</param>
    public static double CircularTemperature(double ambient, double rating, double amps, double maximumAmps)
    {
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(maximumAmps);
        return ambient + ((rating - ambient) * Math.Sqrt(amps / maximumAmps));
    }
}
