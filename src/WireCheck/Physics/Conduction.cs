namespace WireCheck.Physics;

/// <summary>Heat through solids.</summary>
public static class Conduction
{
    /// <summary>
    /// Thermal resistance of the insulation of one metre of wire, K m/W: ρ/(2π) ln(1 + 2 t/d). Source: IEC 60287-2-1,
    /// clause 4.1.1.
    /// </summary>
    /// <param name="resistivity">ρ, K m/W.</param>
    /// <param name="thickness">t, m, 0 or more.</param>
    /// <param name="inside">d, diameter below the layer, m, above 0.</param>
    public static double CylindricalLayer(double resistivity, double thickness, double inside)
    {
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(inside);
        return resistivity / (2 * Math.PI) * Math.Log(1 + (2 * thickness / inside));
    }

    /// <summary>
    /// From the middle to the surface of one metre of a round body that makes heat evenly, K m/W: 1/(4π k). Source:
    /// textbook solution of Poisson's equation in a cylinder.
    /// </summary>
    /// <param name="conductivity">k, W/(m K), above 0.</param>
    public static double HeatedCore(double conductivity)
    {
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(conductivity);
        return 1 / (4 * Math.PI * conductivity);
    }

    /// <summary>
    /// W/K into a long thin wire that is warmed at one end and cools along its length: √(G k A) tanh(L √(G/(k A))). Source:
    /// textbook fin with an end that loses nothing.
    /// </summary>
    /// <param name="lossPerMetre">G, W/(K m), above 0.</param>
    /// <param name="conductanceLength">k A, W m/K, above 0.</param>
    /// <param name="length">L, m.</param>
    public static double Fin(double lossPerMetre, double conductanceLength, double length) =>
        Math.Sqrt(lossPerMetre * conductanceLength) * Math.Tanh(length * Math.Sqrt(lossPerMetre / conductanceLength));
}
