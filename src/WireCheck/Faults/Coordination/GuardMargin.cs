namespace WireCheck.Faults.Coordination;

/// <summary>A conductor and the devices that guard it at one current.</summary>
/// <param name="Amps">Current through the conductor, A.</param>
/// <param name="DamageSeconds">Time until the conductor is hurt, s; finite.</param>
/// <param name="ClearingSeconds">Time until one of them has cleared for certain, s; infinite when nothing promises that any opens.</param>
/// <param name="DeviceId">The device that has; null when none need open.</param>
public sealed record GuardMargin(double Amps, double DamageSeconds, double ClearingSeconds, string? DeviceId)
{
    /// <summary>Time until damage over time to clear: 1 and more is guarded; 0 when no device need open.</summary>
    public double Ratio => double.IsPositiveInfinity(ClearingSeconds) ? 0 : DamageSeconds / ClearingSeconds;
}

/// <summary>
/// The slowest edges of the devices in series with a conductor against its withstand over the whole range of currents, from its
/// ampacity to the highest that can flow. At each current the device that clears first counts.
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
    /// <param name="bands">The devices that carry at least this conductor's current, one or more.</param>
    /// <param name="damage">The conductor.</param>
    /// <param name="ampacity">Where the range begins: what the conductor may carry, A.</param>
    /// <param name="highest">Where it ends: the most that can flow through the conductor, A.</param>
    /// <param name="share">Part of the devices' current that this conductor takes, above 0; 1 unless others lie beside it.</param>
    public static GuardComparison Of(
        IReadOnlyList<TimeCurrentBand> bands, ConductorDamage damage, double ampacity, double highest, double share = 1)
    {
        GuardMargin? worst = null;
        GuardMargin? shortCircuit = null;
        double[] corners = Corners(bands, damage, ampacity, highest, share);
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

                GuardMargin here = At(bands, amps, amps / share, hurt);
                worst = Worse(worst, here);
                if (hurt <= damage.ShortCircuitSeconds)
                {
                    shortCircuit = Worse(shortCircuit, here);
                }
            }
        }

        return new GuardComparison(worst, shortCircuit);
    }

    private static GuardMargin At(IReadOnlyList<TimeCurrentBand> bands, double amps, double deviceAmps, double hurt)
    {
        double soonest = double.PositiveInfinity;
        string? device = null;
        foreach (TimeCurrentBand band in bands)
        {
            double seconds = band.Slowest(deviceAmps);
            if (seconds < soonest)
            {
                (soonest, device) = (seconds, band.Id);
            }
        }

        return new GuardMargin(amps, hurt, soonest, device);
    }

    /// <summary>Rising currents at which one of the curves bends, the two ends among them.</summary>
    private static double[] Corners(IReadOnlyList<TimeCurrentBand> bands, ConductorDamage damage, double ampacity, double highest, double share)
    {
        int most = 3;
        foreach (TimeCurrentBand band in bands)
        {
            most += band.SlowestGates.Length + 1;
        }

        double[] all = new double[most];
        int count = 0;
        Add(ampacity);
        Add(highest);
        Add(damage.ShortCircuitAmps());
        foreach (TimeCurrentBand band in bands)
        {
            foreach (double gate in band.SlowestGates)
            {
                if (gate == band.SlowestGates[0])
                {
                    Add(gate * share * JustBelow);
                }

                Add(gate * share);
            }
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
