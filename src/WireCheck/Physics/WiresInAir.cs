namespace WireCheck.Physics;

/// <summary>One wire of a group as its heat balance sees it.</summary>
/// <param name="OhmsAt20">Ω/m at 20 °C, 0 or more.</param>
/// <param name="Zero">°C below zero at which the straight line of its resistance would reach nothing; 234.5 for copper.</param>
/// <param name="Layer">Thermal resistance of its insulation, K m/W.</param>
public sealed record WireCore(double OhmsAt20, double Zero, double Layer);

/// <summary>
/// The heat balance of one metre of a long wire, or of several tied together, lying level in still air: what the current
/// makes, I² R(T), goes through the insulation, leaves the surface by natural convection (Churchill and Chu) and
/// radiation, and nothing leaves by the ends. Tied wires share one surface, the circle around them, so that each is warmed
/// by all.
/// </summary>
/// <param name="cores">The wires, at least one.</param>
/// <param name="diameter">Of the surface, m, above 0.</param>
/// <param name="emissivity">Of the surface, 0 to 1.</param>
/// <param name="coreResistance">From the middle of the bundle to its surface, K m/W; 0 for a single wire.</param>
public sealed class WiresInAir(IReadOnlyList<WireCore> cores, double diameter, double emissivity, double coreResistance = 0)
{
    /// <summary>Copper melts, °C: nothing is reckoned beyond it, and what would grow without end is told as this.</summary>
    public const double MeltingCelsius = 1085;

    /// <summary>A group that makes less than this is as warm as the air, W/m.</summary>
    private const double NoWatts = 1e-9;

    private readonly double[] _heat = new double[cores.Count];

    /// <summary>The wires.</summary>
    public IReadOnlyList<WireCore> Cores { get; } = cores;

    /// <summary>Heat that leaves a metre of surface, W/m.</summary>
    /// <param name="surface">°C.</param>
    /// <param name="air">°C, of the air and of what the surface radiates to.</param>
    public double WattsLost(double surface, double air) => Math.PI * diameter
        * ((NaturalConvection.HorizontalCylinder(diameter, surface, air) * (surface - air))
            + Radiation.Flux(emissivity, surface, air));

    /// <summary>
    /// Settles the group: the temperature of each wire's metal in °C, at most <see cref="MeltingCelsius"/>. Returns the
    /// temperature of the surface.
    /// </summary>
    /// <param name="amps">Current in each wire, A, of either sign.</param>
    /// <param name="air">°C.</param>
    /// <param name="celsius">Filled in.</param>
    public double Settle(ReadOnlySpan<double> amps, double air, Span<double> celsius)
    {
        bool runsAway = false;
        double made = 0;
        for (int i = 0; i < _heat.Length; i++)
        {
            // Heat of a wire is a (β + T), and T = base + layer × heat: solved for T it is a straight line of the base.
            _heat[i] = amps[i] * amps[i] * Cores[i].OhmsAt20 / (Cores[i].Zero + 20);
            runsAway |= _heat[i] * Cores[i].Layer >= 1;
            made += _heat[i] * (Cores[i].Zero + air);
        }

        double surface = made < NoWatts ? air
            : runsAway ? MeltingCelsius
            : BalancePoint.Find(t => Left(t, air), air, Above(made, air));
        double middle = surface + (coreResistance * WattsLost(surface, air));
        for (int i = 0; i < _heat.Length; i++)
        {
            celsius[i] = runsAway && _heat[i] > 0 ? MeltingCelsius : Math.Min(MeltingCelsius, Metal(i, middle));
        }

        return surface;
    }

    /// <summary>Heat each wire makes at a temperature, W/m.</summary>
    /// <param name="wire">Which of them.</param>
    /// <param name="amps">A.</param>
    /// <param name="celsius">Temperature of its metal, °C.</param>
    public double WattsMade(int wire, double amps, double celsius) =>
        amps * amps * Cores[wire].OhmsAt20 * (Cores[wire].Zero + celsius) / (Cores[wire].Zero + 20);

    /// <summary>A surface temperature above the balance, or that at which nothing is reckoned any more.</summary>
    private double Above(double made, double air)
    {
        double rise = made / (Math.PI * diameter * LowestTransfer);
        while (air + rise < MeltingCelsius && Left(air + rise, air) > 0)
        {
            rise *= 2;
        }

        return Math.Min(air + rise, MeltingCelsius);
    }

    /// <summary>What a warm surface gives off at the least, W/(m² K); only where the search begins.</summary>
    private const double LowestTransfer = 8;

    /// <summary>Metal temperature of a wire that lies in surroundings of a temperature and makes its heat.</summary>
    private double Metal(int i, double around)
    {
        double rise = Cores[i].Layer * _heat[i];
        return (around + (rise * Cores[i].Zero)) / (1 - rise);
    }

    /// <summary>Heat made less heat lost at a temperature of the surface, W/m.</summary>
    private double Left(double surface, double air)
    {
        double lost = WattsLost(surface, air);
        double middle = surface + (coreResistance * lost);
        double made = 0;
        for (int i = 0; i < _heat.Length; i++)
        {
            made += _heat[i] * (Cores[i].Zero + Metal(i, middle));
        }

        return made - lost;
    }
}
