namespace WireCheck.Circuit.Elements;

/// <summary>
/// The numbers of a junction: I = I_s (exp((V - I R_s) / (n V_T)) - 1), Shockley (1949) with a series resistance.
/// </summary>
/// <param name="SaturationAmps">I_s, A, above 0.</param>
/// <param name="EmissionVolts">n V_T, V, above 0.</param>
/// <param name="SeriesOhms">R_s, Ω, above 0.</param>
public sealed record DiodeModel(double SaturationAmps, double EmissionVolts, double SeriesOhms)
{
    /// <summary>Thermal voltage kT/q at 300 K, V, from k = 1.380649e-23 J/K and q = 1.602176634e-19 C (SI, 2019, exact).</summary>
    public const double ThermalVolts = 1.380649e-23 * 300 / 1.602176634e-19;

    /// <summary>
    /// The junction that drops <paramref name="forwardVolts"/> at <paramref name="ratedAmps"/>, a given part of
    /// the drop being in its series resistance.
    /// </summary>
    public static DiodeModel Fit(double forwardVolts, double ratedAmps, double ideality, double seriesShare)
    {
        double emission = ideality * ThermalVolts;
        double junction = forwardVolts * (1 - seriesShare);
        return new DiodeModel(
            ratedAmps / (Math.Exp(junction / emission) - 1), emission, forwardVolts * seriesShare / ratedAmps);
    }
}
