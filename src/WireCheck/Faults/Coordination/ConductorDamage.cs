using WireCheck.Description.Kinds;
using WireCheck.Knowledge;
using WireCheck.Physics;
using WireCheck.Quantities;

namespace WireCheck.Faults.Coordination;

/// <summary>
/// How long a conductor stands a current before its insulation is hurt. It starts at its rated temperature, which its
/// ampacity holds for ever; the heating equation carries it up to the highest temperature that its insulation stands for
/// so long a time. That limit is the one of a short circuit up to five seconds and the one of an overload from an hour on;
/// between the two it falls in a straight line over the logarithm of time. A current that settles at or below the
/// overload limit never hurts it.
/// <para>The loss to the air is the one that makes the ampacity true (<see cref="ConductorHeating.LossAtAmpacity"/>), with its
/// bundle and its air. Heat and resistance take the nominal section, as k² S² does; at short times the two are the same.</para>
/// </summary>
public sealed class ConductorDamage
{
    private readonly ConductorHeating _heating;
    private readonly double _rated;
    private readonly double _shortLimit;
    private readonly double _overloadLimit;
    private readonly double _shortTime;
    private readonly double _overloadTime;

    private ConductorDamage(ConductorHeating heating, InsulationClass insulation, double shortTime, double overloadTime)
    {
        _heating = heating;
        _rated = insulation.RatedCelsius;
        _shortLimit = insulation.LimitCelsius;
        _overloadLimit = insulation.OverloadCelsius;
        _shortTime = shortTime;
        _overloadTime = overloadTime;
    }

    /// <summary>The heating of a metre of it.</summary>
    public ConductorHeating Heating => _heating;

    /// <summary>Temperature it starts at, which its ampacity holds for ever, °C.</summary>
    public double RatedCelsius => _rated;

    /// <summary>Longest time, s, to which the short-circuit limit applies.</summary>
    public double ShortCircuitSeconds => _shortTime;

    /// <summary>The withstand of a conductor as it lies.</summary>
    /// <param name="conductor">Size, metal and insulation.</param>
    /// <param name="library">Holds them.</param>
    /// <param name="ampacity">What it may carry for hours in that place, A; 0 where it may carry nothing, and then it loses no heat.</param>
    /// <param name="ambient">Air around it, for which the ampacity stands, °C.</param>
    public static ConductorDamage Of(Conductor conductor, Library library, double ampacity, double ambient) => Of(
        conductor.Size.Value,
        library.Materials[conductor.Material.Value],
        library.Insulation[conductor.Insulation.Value],
        library,
        ampacity,
        ambient);

    /// <summary>The withstand of a wire of which size, metal and insulation are known, as the lead of a load.</summary>
    /// <param name="size">Its size.</param>
    /// <param name="material">Its metal.</param>
    /// <param name="insulation">Its insulation.</param>
    /// <param name="library">Holds the two times of insulation.</param>
    /// <param name="ampacity">What it may carry for hours in that place, A; 0 where it may carry nothing.</param>
    /// <param name="ambient">Air around it, for which the ampacity stands, °C.</param>
    public static ConductorDamage Of(
        ConductorSize size, Material material, InsulationClass insulation, Library library, double ampacity, double ambient)
    {
        double area = ConductorTable.Area(size);
        double at20 = material.Resistivity / area;
        double atRated = at20 * (material.Zero + insulation.RatedCelsius) / (material.Zero + 20);
        double loss = ConductorHeating.LossAtAmpacity(ampacity, atRated, insulation.RatedCelsius, ambient);
        return new ConductorDamage(
            new ConductorHeating(at20, material.Zero, material.Heat * area, loss, ambient),
            insulation,
            library.Assumptions["short_circuit_time"].Value,
            library.Assumptions["overload_time"].Value);
    }

    /// <summary>Temperature in °C that the insulation stands for so many seconds.</summary>
    public double LimitCelsius(double seconds)
    {
        if (seconds <= _shortTime)
        {
            return _shortLimit;
        }

        return seconds >= _overloadTime
            ? _overloadLimit
            : _shortLimit + ((_overloadLimit - _shortLimit) * Math.Log(seconds / _shortTime) / Math.Log(_overloadTime / _shortTime));
    }

    /// <summary>Temperature in °C after so many seconds of a current, from the rated temperature.</summary>
    public double Celsius(double amps, double seconds) => _heating.Celsius(_rated, amps, seconds);

    /// <summary>Seconds until the insulation is hurt; infinite when it never is.</summary>
    public double Seconds(double amps) => Seconds(amps, _rated, 0);

    /// <summary>The same where the current goes on from another: seconds from now on.</summary>
    /// <param name="amps">The current from now on, A.</param>
    /// <param name="from">Temperature by now, °C.</param>
    /// <param name="elapsed">Time since the conductor was at its rated temperature, s.</param>
    public double Seconds(double amps, double from, double elapsed)
    {
        double toShort = _heating.Seconds(from, _shortLimit, amps);
        if (elapsed + toShort <= _shortTime)
        {
            return toShort;
        }

        double toOverload = _heating.Seconds(from, _overloadLimit, amps);
        if (elapsed + toOverload >= _overloadTime)
        {
            return toOverload;
        }

        // The limit falls from the one to the other while the temperature rises: they meet once, between these two times.
        double low = Math.Max(elapsed + toOverload, _shortTime);
        double high = Math.Min(elapsed + toShort, _overloadTime);
        while (high - low > Resolution * low)
        {
            double middle = Math.Sqrt(low * high);
            if (_heating.Celsius(from, amps, middle - elapsed) < LimitCelsius(middle))
            {
                low = middle;
            }
            else
            {
                high = middle;
            }
        }

        return Math.Sqrt(low * high) - elapsed;
    }

    /// <summary>
    /// Lowest current, A, that hurts it within the longest time of a short circuit. Adiabatic heating needs less than that,
    /// the loss at the end of the way more than all that is lacking: it lies between.
    /// </summary>
    public double ShortCircuitAmps()
    {
        double adiabatic = new ConductorHeating(_heating.OhmsAt20, _heating.Zero, _heating.Heat, 0, _heating.Ambient)
            .Seconds(_rated, _shortLimit, 1);
        double low = Math.Sqrt(adiabatic / _shortTime);
        double held = _heating.Loss * (_shortLimit - _heating.Ambient) / _heating.Ohms(_rated);
        double high = Math.Sqrt((low * low) + held);
        while (high - low > Resolution * low)
        {
            double middle = (low + high) / 2;
            if (_heating.Seconds(_rated, _shortLimit, middle) > _shortTime)
            {
                low = middle;
            }
            else
            {
                high = middle;
            }
        }

        return high;
    }

    /// <summary>Part of the time to which the crossing is found.</summary>
    private const double Resolution = 1e-7;
}
