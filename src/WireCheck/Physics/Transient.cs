namespace WireCheck.Physics;

/// <summary>How a warm body follows what heats it.</summary>
public static class Transient
{
    /// <summary>What a body makes less what it loses at a temperature in °C, W or W/m.</summary>
    public delegate double NetHeat(double celsius);

    /// <summary>Steps of the integrator for each time constant of its fastest part.</summary>
    private const double StepsPerConstant = 20;

    private const int MostSteps = 20000;

    /// <summary>
    /// Time constant of a body in s: heat capacity over loss. Source: Newton's law of cooling.
    /// </summary>
    /// <param name="capacity">J/K, or J/(K m) of a wire.</param>
    /// <param name="loss">W/K, or W/(K m), above 0.</param>
    public static double Constant(double capacity, double loss)
    {
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(loss);
        return capacity / loss;
    }

    /// <summary>
    /// Highest part of its steady rise that a body reaches which is heated in turns for ever:
    /// (1 − e^(−t_on/τ))/(1 − e^(−t_period/τ)). Source: closed form of the linear equation over one period.
    /// </summary>
    /// <param name="on">Seconds heated in each period, 0 to <paramref name="period"/>.</param>
    /// <param name="period">Seconds of a period, above 0.</param>
    /// <param name="constant">τ in s, above 0.</param>
    public static double DutyPeak(double on, double period, double constant) =>
        (1 - Math.Exp(-on / constant)) / (1 - Math.Exp(-period / constant));

    /// <summary>
    /// Temperature in °C after some seconds of C dT/dt = net(T), for any law of loss, by the classic Runge-Kutta method of
    /// fourth order with even steps.
    /// </summary>
    /// <param name="net">Heat made less heat lost at a temperature.</param>
    /// <param name="capacity">C, J/K, above 0.</param>
    /// <param name="from">Temperature at the start, °C.</param>
    /// <param name="seconds">0 or more.</param>
    /// <param name="constant">About how fast it moves, s, above 0; sets the steps.</param>
    public static double Integrate(NetHeat net, double capacity, double from, double seconds, double constant)
    {
        int steps = (int)Math.Clamp(Math.Ceiling(seconds / constant * StepsPerConstant), StepsPerConstant, MostSteps);
        double step = seconds / steps;
        double now = from;
        for (int i = 0; i < steps; i++)
        {
            double first = net(now) / capacity;
            double second = net(now + (step / 2 * first)) / capacity;
            double third = net(now + (step / 2 * second)) / capacity;
            double fourth = net(now + (step * third)) / capacity;
            now += step / 6 * (first + (2 * second) + (2 * third) + fourth);
        }

        return now;
    }
}
