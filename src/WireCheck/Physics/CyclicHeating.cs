namespace WireCheck.Physics;

/// <summary>A body with one time constant that is heated in equal spells with equal pauses between, for so long that each cycle is like the last.</summary>
public static class CyclicHeating
{
    /// <summary>
    /// Highest rise over the rise it would settle at were it heated without a pause, 0 to 1:
    /// (1 − e^(−t/τ))/(1 − e^(−t/(d τ))). For spells much shorter than the time constant this is the duty, so that the current counts by its
    /// root mean square; for much longer ones it is 1. Source: periodic solution of C dT/dt = P − G T; the same share stands behind the
    /// duty factors of welding cables and the intermittent ratings of machines.
    /// </summary>
    /// <param name="onSeconds">t, length of a spell, s, above 0.</param>
    /// <param name="duty">d, part of the time it is heated, 0 to 1.</param>
    /// <param name="timeConstant">τ, s, above 0.</param>
    public static double Share(double onSeconds, double duty, double timeConstant)
    {
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(onSeconds);
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(timeConstant);
        double spell = onSeconds / timeConstant;
        if (duty <= 0 || duty >= 1)
        {
            return duty <= 0 ? 0 : 1;
        }

        return spell < SmallSpell ? duty : (1 - Math.Exp(-spell)) / (1 - Math.Exp(-spell / duty));
    }

    /// <summary>Below this part of the time constant the two exponentials lose more digits than the share differs from the duty.</summary>
    private const double SmallSpell = 1e-8;
}
