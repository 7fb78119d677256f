using WireCheck.Description.Kinds;
using WireCheck.Knowledge;

namespace WireCheck.Faults.Coordination;

/// <summary>
/// When a fuse or breaker opens: between the time at which it may begin to melt and the time at which it has cleared for
/// certain. Gates come from the description's <c>curve</c>, else from the class of the library; between two the edges are
/// straight on logarithmic paper.
/// <para>Below its first gate an edge is infinite: nothing promises that the device opens, or lets it melt.</para>
/// <para>Above its last gate the slowest edge of an element keeps the gate's A² s, since it melts without losing heat there;
/// the slowest edge of a latch keeps the gate's time, since its mechanism goes no faster. The fastest edge of both falls as
/// the melting energy over the square of the current.</para>
/// <para>Ambient: the slowest edge takes the rating at the coldest air, the fastest at the hottest, so that each is the
/// careful one.</para>
/// </summary>
public sealed class TimeCurrentBand
{
    private readonly TimeCurrentCurve _fastest;
    private readonly TimeCurrentCurve _slowest;
    private readonly FuseClass _class;
    private readonly double? _breaking;

    private TimeCurrentBand(Fuse fuse, FuseClass known, TimeCurrentCurve fastest, TimeCurrentCurve slowest)
        : this(fuse.Id, fuse.Rating.Value.Amperes, known, fastest, slowest)
    {
        _breaking = fuse.Breaking?.Value.Amperes;
        Volts = Math.Min(fuse.Volts.Value.Volts, fuse.Holder?.Volts?.Value.Volts ?? double.MaxValue);
        Given = fuse.Curve.Count > 0;
        MeltingEnergy = fuse.MeltingEnergy?.Value.AmpereSquaredSeconds ?? MeltingEnergy;
    }

    private TimeCurrentBand(string id, double rating, FuseClass known, TimeCurrentCurve fastest, TimeCurrentCurve slowest)
    {
        Id = id;
        Rating = rating;
        Volts = known.Volts;
        _class = known;
        _fastest = fastest;
        _slowest = slowest;
        MeltingEnergy = known.MeltingEnergy(rating) ?? (fastest.LastAmps * fastest.LastAmps * fastest.LastSeconds);
    }

    /// <summary>Id of the fuse or breaker.</summary>
    public string Id { get; }

    /// <summary>Rated current, A.</summary>
    public double Rating { get; }

    /// <summary>Highest direct voltage it interrupts, V; that of its holder where that is lower.</summary>
    public double Volts { get; }

    /// <summary>True when the description gave the curve, false when it is the class's.</summary>
    public bool Given { get; }

    /// <summary>Source of the class's times, which stand where the description gives none.</summary>
    public Source Source => _class.BandsSource;

    /// <summary>
    /// A² s at which it begins to melt at short times: the part's own, the figure known for its rating, or that of the
    /// fastest edge at its last gate. Infinite when no gate names one.
    /// </summary>
    public double MeltingEnergy { get; }

    /// <summary>The band of a fuse or breaker in air between two temperatures.</summary>
    /// <param name="fuse">The part.</param>
    /// <param name="library">Holds its class.</param>
    /// <param name="coldest">Coldest air around it, °C.</param>
    /// <param name="hottest">Hottest air around it, °C.</param>
    public static TimeCurrentBand Of(Fuse fuse, Library library, double coldest, double hottest)
    {
        FuseClass known = library.Fuses[fuse.Class.Value];
        double rating = fuse.Rating.Value.Amperes;
        double hot = fuse.AmbientFactor?.Value.DecimalFractions ?? known.Ambient.At(hottest);
        double cold = Math.Max(hot, known.Ambient.At(coldest));
        TimeCurrentCurve? fastest = FromDescription(fuse, rating * hot, isFastest: true);
        TimeCurrentCurve? slowest = FromDescription(fuse, rating * cold, isFastest: false);
        FuseBand band = known.BandFor(rating);
        return new TimeCurrentBand(
            fuse,
            known,
            fastest ?? FromClass(band, rating * hot, isFastest: true),
            slowest ?? FromClass(band, rating * cold, isFastest: false));
    }

    /// <summary>The band of a fuse of which only class and rating are known, as that of a vehicle's outlet.</summary>
    /// <param name="id">Id of the part it belongs to.</param>
    /// <param name="rating">Rated current, A.</param>
    /// <param name="known">Its class.</param>
    /// <param name="coldest">Coldest air around it, °C.</param>
    /// <param name="hottest">Hottest air around it, °C.</param>
    public static TimeCurrentBand OfClass(string id, double rating, FuseClass known, double coldest, double hottest)
    {
        double hot = known.Ambient.At(hottest);
        double cold = Math.Max(hot, known.Ambient.At(coldest));
        FuseBand band = known.BandFor(rating);
        return new TimeCurrentBand(
            id, rating, known, FromClass(band, rating * hot, isFastest: true), FromClass(band, rating * cold, isFastest: false));
    }

    /// <summary>Seconds before which it does not begin to melt, or a latch to move; infinite when it may carry the current for ever.</summary>
    public double Fastest(double amps) => amps <= _fastest.LastAmps
        ? _fastest.At(amps)
        : Math.Min(_fastest.LastSeconds, MeltingEnergy / (amps * amps));

    /// <summary>Seconds after which it has cleared for certain; infinite when nothing promises that it opens.</summary>
    public double Slowest(double amps)
    {
        double beyond = amps / _slowest.LastAmps;
        return amps <= _slowest.LastAmps || _class.Trips
            ? _slowest.At(amps)
            : _slowest.LastSeconds / (beyond * beyond);
    }

    /// <summary>A² s let through at most until it has cleared; infinite when nothing promises that it opens.</summary>
    public double ClearingEnergy(double amps) => amps * amps * Slowest(amps);

    /// <summary>
    /// Amperes it can break at a direct voltage: the part's own figure up to its voltage, else the class's for that voltage.
    /// Null above its voltage, where it clears nothing for certain.
    /// </summary>
    public double? BreakingAt(double volts) => volts > Volts ? null : _breaking ?? _class.BreakingAt(volts);

    /// <summary>Currents of the gates of the slowest edge, rising, A: where its straight lines meet.</summary>
    internal ReadOnlySpan<double> SlowestGates => _slowest.Amps;

    private static TimeCurrentCurve? FromDescription(Fuse fuse, double rating, bool isFastest)
    {
        List<FuseCurvePoint> points = [];
        foreach (FuseCurvePoint point in fuse.Curve)
        {
            if ((isFastest ? point.Fastest : point.Slowest) is not null)
            {
                points.Add(point);
            }
        }

        if (points.Count == 0)
        {
            return null;
        }

        points.Sort((a, b) => a.At.Value.DecimalFractions.CompareTo(b.At.Value.DecimalFractions));
        double[] amps = new double[points.Count];
        double[] seconds = new double[points.Count];
        for (int i = 0; i < points.Count; i++)
        {
            amps[i] = rating * points[i].At.Value.DecimalFractions;
            seconds[i] = (isFastest ? points[i].Fastest : points[i].Slowest)!.Value.Seconds;
        }

        return new TimeCurrentCurve(amps, seconds, isFastest);
    }

    private static TimeCurrentCurve FromClass(FuseBand band, double rating, bool isFastest)
    {
        int count = 0;
        foreach (FuseTime time in band.Times)
        {
            count += (isFastest ? time.Fastest : time.Slowest) is null ? 0 : 1;
        }

        double[] amps = new double[count];
        double[] seconds = new double[count];
        int next = 0;
        foreach (FuseTime time in band.Times)
        {
            if ((isFastest ? time.Fastest : time.Slowest) is { } known)
            {
                amps[next] = rating * time.Multiple;
                seconds[next++] = known;
            }
        }

        return new TimeCurrentCurve(amps, seconds, isFastest);
    }
}
