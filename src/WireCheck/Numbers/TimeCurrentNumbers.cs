using WireCheck.Circuit.Topology;
using WireCheck.Circuit.Wiring;
using WireCheck.Facts.Gather;
using WireCheck.Faults.Coordination;

namespace WireCheck.Numbers;

/// <summary>A time at a current.</summary>
/// <param name="Amps">Current, A.</param>
/// <param name="Seconds">Time, s.</param>
public readonly record struct TimeAtCurrent(double Amps, double Seconds);

/// <summary>When a conductor is hurt.</summary>
/// <param name="Id">Id of the conductor.</param>
/// <param name="Size">Its size.</param>
/// <param name="Damage">The time to reach the limit of its insulation, by current.</param>
public sealed record DamageNumbers(string Id, string Size, IReadOnlyList<TimeAtCurrent> Damage);

/// <summary>One device against what it guards.</summary>
/// <param name="Id">Id of the fuse or breaker.</param>
/// <param name="Rating">Rated current, A.</param>
/// <param name="Fastest">When it may begin to melt.</param>
/// <param name="Slowest">When it has cleared for certain.</param>
/// <param name="Guarded">The conductors it guards, thinnest first.</param>
public sealed record TimeCurrentNumbers(
    string Id, double Rating, IReadOnlyList<TimeAtCurrent> Fastest, IReadOnlyList<TimeAtCurrent> Slowest, IReadOnlyList<DamageNumbers> Guarded)
{
    /// <summary>Currents of a curve, from the rating to this many times as much.</summary>
    private const double Reach = 300;
    private const int Samples = 120;

    /// <summary>Every fuse and breaker of a box with the damage curves of what it guards.</summary>
    public static IReadOnlyList<TimeCurrentNumbers> Of(GatherContext context)
    {
        List<TimeCurrentNumbers> all = [];
        foreach (WiredFuse fuse in context.Wiring.Of<WiredFuse>())
        {
            TimeCurrentBand band = context.Coordination.BandOf(fuse.Fuse);
            all.Add(new TimeCurrentNumbers(
                fuse.Part.Id,
                band.Rating,
                Sample(band.Rating, band.Fastest),
                Sample(band.Rating, band.Slowest),
                [.. context.Wiring.Of<WiredConductor>()
                    .Where(w => context.Guards.Of(w).FuseId == fuse.Part.Id)
                    .OrderBy(w => context.Ampacities.Amps(w.Conductor))
                    .Select(w => new DamageNumbers(
                        w.Part.Id, w.Conductor.Size.Value.ToString(), Sample(band.Rating, context.Coordination.DamageOf(w.Conductor).Seconds)))]));
        }

        return all;
    }

    private static List<TimeAtCurrent> Sample(double rating, Func<double, double> seconds)
    {
        List<TimeAtCurrent> points = [];
        for (int i = 0; i <= Samples; i++)
        {
            double amps = rating * Math.Pow(Reach, (double)i / Samples);
            double time = seconds(amps);
            if (double.IsFinite(time))
            {
                points.Add(new TimeAtCurrent(amps, time));
            }
        }

        return points;
    }
}
