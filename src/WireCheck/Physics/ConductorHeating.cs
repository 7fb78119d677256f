namespace WireCheck.Physics;

/// <summary>
/// The heating equation of one metre of conductor under a steady current: C dT/dt = I² R(T) − G (T − Ta). Resistance
/// rises with temperature along the straight line R(T) = R20 (β + T)/(β + 20), and the loss is in proportion to the
/// rise, so that the equation is linear and has a closed form at every current. At short times it becomes the
/// adiabatic equation of IEC 60949, (k S)² = I² t; at long times heat made and heat lost are in balance. Source: the
/// same balance stands in IEEE 738, clause 4.3, for bare conductors. Only the metal stores heat, not the insulation,
/// so that the times are on the safe side.
/// </summary>
public sealed class ConductorHeating
{
    /// <summary>A conductor whose loss is known.</summary>
    /// <param name="ohmsAt20">R20, Ω/m at 20 °C, above 0.</param>
    /// <param name="zero">β, °C below zero at which the line of resistance would reach nothing; 234.5 for copper.</param>
    /// <param name="heat">C, J/(K m), above 0.</param>
    /// <param name="loss">G, W/(K m), 0 or more; 0 is the adiabatic case.</param>
    /// <param name="ambient">Ta, air around it in °C.</param>
    public ConductorHeating(double ohmsAt20, double zero, double heat, double loss, double ambient)
    {
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(ohmsAt20);
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(heat);
        ArgumentOutOfRangeException.ThrowIfNegative(loss);
        OhmsAt20 = ohmsAt20;
        Zero = zero;
        Heat = heat;
        Loss = loss;
        Ambient = ambient;
    }

    /// <summary>R20, Ω/m.</summary>
    public double OhmsAt20 { get; }

    /// <summary>β in °C below zero.</summary>
    public double Zero { get; }

    /// <summary>C, J/(K m).</summary>
    public double Heat { get; }

    /// <summary>G, W/(K m).</summary>
    public double Loss { get; }

    /// <summary>Ta in °C.</summary>
    public double Ambient { get; }

    /// <summary>
    /// The loss that belongs to an ampacity: what the conductor sheds per kelvin when that current holds it at its rated
    /// temperature, G = I² R(Tr)/(Tr − Ta). 0 where nothing may flow or the air is as hot as the rating.
    /// </summary>
    /// <param name="amps">The ampacity in that place, A.</param>
    /// <param name="ohmsAtRated">R(Tr), Ω/m.</param>
    /// <param name="rated">Tr in °C.</param>
    /// <param name="ambient">Ta in °C.</param>
    public static double LossAtAmpacity(double amps, double ohmsAtRated, double rated, double ambient) =>
        amps <= 0 || ambient >= rated ? 0 : amps * amps * ohmsAtRated / (rated - ambient);

    /// <summary>Resistance at a temperature in Ω/m.</summary>
    public double Ohms(double celsius) => OhmsAt20 * (Zero + celsius) / (Zero + 20);

    /// <summary>Temperature in °C it settles at; infinite when heat grows faster than the loss.</summary>
    public double SteadyCelsius(double amps)
    {
        double growth = Growth(amps);
        return growth >= 0 ? (amps == 0 ? Ambient : double.PositiveInfinity) : Push(amps) / -growth;
    }

    /// <summary>Temperature in °C after some seconds from a start.</summary>
    /// <param name="from">Temperature at the start in °C.</param>
    /// <param name="amps">The current, A.</param>
    /// <param name="seconds">Time, 0 or more.</param>
    public double Celsius(double from, double amps, double seconds)
    {
        double growth = Growth(amps);
        double rate = Push(amps) + (growth * from);
        return growth == 0 ? from + (rate * seconds) : from + (rate * Math.Exp(growth * seconds) / growth) - (rate / growth);
    }

    /// <summary>Seconds until a temperature is reached; infinite when it never is, 0 when it is there already.</summary>
    /// <param name="from">Temperature at the start in °C.</param>
    /// <param name="to">Temperature to be reached in °C, above the start.</param>
    /// <param name="amps">The current, A.</param>
    public double Seconds(double from, double to, double amps)
    {
        if (to <= from)
        {
            return 0;
        }

        double growth = Growth(amps);
        double push = Push(amps);
        double rateAtStart = push + (growth * from);
        double rateAtEnd = push + (growth * to);
        if (rateAtStart <= 0 || rateAtEnd <= 0)
        {
            return double.PositiveInfinity;
        }

        // ln(1 + x)/growth keeps its digits where the growth is next to nothing.
        double relative = growth * (to - from) / rateAtStart;
        return Math.Abs(relative) < SmallRelative
            ? (to - from) / rateAtStart * (1 - (relative / 2))
            : Math.Log(1 + relative) / growth;
    }

    /// <summary>Below this the first two terms of the logarithm are exact to the last digits.</summary>
    private const double SmallRelative = 1e-6;

    /// <summary>a of dT/dt = a T + b, 1/s: what resistance adds less what the loss takes, per kelvin.</summary>
    private double Growth(double amps) => ((amps * amps * OhmsAt20 / (Zero + 20)) - Loss) / Heat;

    /// <summary>b of dT/dt = a T + b, K/s.</summary>
    private double Push(double amps) => ((amps * amps * OhmsAt20 * Zero / (Zero + 20)) + (Loss * Ambient)) / Heat;
}
