namespace WireCheck.Faults.Coordination;

/// <summary>A conductor and the device that guards it at one current.</summary>
/// <param name="Amps">Current through the conductor, A.</param>
/// <param name="DamageSeconds">Time until the conductor is hurt, s; finite.</param>
/// <param name="ClearingSeconds">Time until the device has cleared at its slowest, s; infinite when nothing promises that it opens.</param>
public sealed record GuardMargin(double Amps, double DamageSeconds, double ClearingSeconds)
{
    /// <summary>Time until damage over time to clear: 1 and more is guarded; 0 when the device need not open.</summary>
    public double Ratio => double.IsPositiveInfinity(ClearingSeconds) ? 0 : DamageSeconds / ClearingSeconds;
}

/// <summary>
/// A device's slowest edge against a conductor's withstand over the whole range of currents, from the conductor's ampacity
/// to the highest that can flow.
/// </summary>
/// <param name="Worst">The least margin of the whole range; null when no current of it ever hurts the conductor.</param>
/// <param name="ShortCircuit">
/// The least margin among the currents that hurt the conductor within the time of a short circuit; null when none flows.
/// </param>
public sealed record GuardComparison(GuardMargin? Worst, GuardMargin? ShortCircuit)
{
    /// <summary>Looks between two neighbouring corners of the curves.</summary>
    private const int StepsBetween = 4;

    /// <summary>How little below its first gate a device is looked at, where nothing yet promises that it opens.</summary>
    private const double JustBelow = 1 - 1e-9;

    /// <summary>Compares the two curves.</summary>
    /// <param name="band">The device.</param>
    /// <param name="damage">The conductor.</param>
    /// <param name="ampacity">Where the range begins: what the conductor may carry, A.</param>
    /// <param name="highest">Where it ends: the most that can flow through the conductor, A.</param>
    /// <param name="share">Part of the device's current that this conductor takes, above 0; 1 unless others lie beside it.</param>
    public static GuardComparison Of(TimeCurrentBand band, ConductorDamage damage, double ampacity, double highest, double share = 1)
    {
        GuardMargin? worst = null;
        GuardMargin? shortCircuit = null;
        double[] corners = Corners(band, damage, ampacity, highest, share);
        for (int i = 0; i < corners.Length; i++)
        {
            double next = i + 1 < corners.Length ? corners[i + 1] : corners[i];
            for (int step = 0; step < (next > corners[i] ? StepsBetween : 1); step++)
            {
                double amps = corners[i] * Math.Pow(next / corners[i], (double)step / StepsBetween);
                double hurt = damage.Seconds(amps);
                if (double.IsPositiveInfinity(hurt))
                {
                    continue;
                }

                GuardMargin here = new(amps, hurt, band.Slowest(amps / share));
                worst = Worse(worst, here);
                if (hurt <= damage.ShortCircuitSeconds)
                {
                    shortCircuit = Worse(shortCircuit, here);
                }
            }
        }

        return new GuardComparison(worst, shortCircuit);
    }

    /// <summary>Rising currents at which one of the curves bends, the two ends among them.</summary>
    private static double[] Corners(TimeCurrentBand band, ConductorDamage damage, double ampacity, double highest, double share)
    {
        ReadOnlySpan<double> gates = band.SlowestGates;
        double[] all = new double[gates.Length + 4];
        int count = 0;
        Add(ampacity);
        Add(highest);
        Add(damage.ShortCircuitAmps());
        if (gates.Length > 0)
        {
            Add(gates[0] * share * JustBelow);
        }

        foreach (double gate in gates)
        {
            Add(gate * share);
        }

        Array.Resize(ref all, count);
        Array.Sort(all);
        return all;

        void Add(double amps)
        {
            if (amps > 0 && amps >= ampacity && amps <= highest)
            {
                all[count++] = amps;
            }
        }
    }

    /// <summary>The smaller margin; of two devices that need not open, the current that hurts sooner.</summary>
    private static GuardMargin Worse(GuardMargin? held, GuardMargin here) =>
        held is null || here.Ratio < held.Ratio || (here.Ratio == held.Ratio && here.DamageSeconds < held.DamageSeconds) ? here : held;
}
