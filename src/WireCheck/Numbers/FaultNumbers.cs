using WireCheck.Circuit.Wiring;
using WireCheck.Facts.Gather;
using WireCheck.Faults;
using WireCheck.States;

namespace WireCheck.Numbers;

/// <summary>One device that opens in a short.</summary>
/// <param name="Device">The fuse or breaker.</param>
/// <param name="Seconds">Cleared at its slowest after so long, s.</param>
/// <param name="Amps">What it carried, A.</param>
public sealed record OpeningNumbers(string Device, double Seconds, double Amps);

/// <summary>One short from some sources.</summary>
/// <param name="Source">What feeds it: "all sources", or the one that feeds alone.</param>
/// <param name="To">What it is shorted to.</param>
/// <param name="Amps">Current before anything opens, A.</param>
/// <param name="Openings">What opens, in order.</param>
/// <param name="Seconds">Time until the current stops, s; null when nothing stops it.</param>
/// <param name="SustainedAmps">Current that goes on, A; 0 when it stops.</param>
/// <param name="LetThrough">A² s in the short; null when nothing stops it.</param>
/// <param name="Dark">What goes dark.</param>
public sealed record FaultShort(
    string Source, string To, double Amps, IReadOnlyList<OpeningNumbers> Openings, double? Seconds, double SustainedAmps,
    double? LetThrough, IReadOnlyList<string> Dark)
{
    /// <summary>The conductor nearest to what it stands; null when none warms.</summary>
    public string? HottestConductor { get; init; }

    /// <summary>Its temperature at the end, °C.</summary>
    public double? HottestCelsius { get; init; }

    /// <summary>What its insulation stands that long, °C.</summary>
    public double? HottestLimitCelsius { get; init; }

    /// <summary>A BMS that would trip; it is not relied on.</summary>
    public string? Bms { get; init; }

    /// <summary>Its delay, s.</summary>
    public double? BmsSeconds { get; init; }

    /// <summary>Rise of the hottest over what it stands, for choosing the worse of two.</summary>
    internal double HottestShare { get; init; }
}

/// <summary>The shorts of one place.</summary>
/// <param name="Part">Part or conductor leg.</param>
/// <param name="Place">Its terminal.</param>
/// <param name="Highest">With all sources at their highest; null when nothing feeds it.</param>
/// <param name="Lowest">From the source that counts, at its lowest.</param>
/// <param name="HighestToCase">To the metal case; null where there is none that is joined to anything.</param>
/// <param name="LowestToCase">The same at its lowest.</param>
public sealed record PlaceNumbers(
    string Part, string Place, FaultShort? Highest, FaultShort? Lowest, FaultShort? HighestToCase, FaultShort? LowestToCase);

/// <summary>Two devices in series.</summary>
/// <param name="Downstream">The one nearer to the fault.</param>
/// <param name="Upstream">The one that should stay closed.</param>
/// <param name="LowestAmps">Smallest current of a fault behind both, A.</param>
/// <param name="HighestAmps">Largest, A.</param>
/// <param name="OverlapFrom">From this current on the upstream one may open too, A; null when never.</param>
/// <param name="OverlapTo">Up to this current, A.</param>
/// <param name="Dark">What goes dark when the upstream one opens.</param>
public sealed record SeriesNumbers(
    string Downstream, string Upstream, double LowestAmps, double HighestAmps, double? OverlapFrom, double? OverlapTo,
    IReadOnlyList<string> Dark);

/// <summary>What a fuse or breaker must break.</summary>
/// <param name="Device">The fuse or breaker.</param>
/// <param name="HighestAmps">Highest current any short drives through it, A; null when none does.</param>
/// <param name="Volts">Voltage it must break that at, V.</param>
/// <param name="BreakingAmps">What it can break there, A; null above its voltage.</param>
/// <param name="LoopSeconds">Time constant of the loop of that current, s; null when no bank drives it.</param>
public sealed record BreakingNumbers(string Device, double? HighestAmps, double Volts, double? BreakingAmps, double? LoopSeconds);

/// <summary>Every short of a box.</summary>
/// <param name="Places">Place by place.</param>
/// <param name="Series">Devices in series.</param>
/// <param name="Breaking">What each device must break.</param>
public sealed record FaultNumbers(
    IReadOnlyList<PlaceNumbers> Places, IReadOnlyList<SeriesNumbers> Series, IReadOnlyList<BreakingNumbers> Breaking)
{
    /// <summary>The shorts of a solved box.</summary>
    public static FaultNumbers Of(SolvedBox box)
    {
        GatherContext context = new(box);
        FaultStudy study = context.Faults;
        return new FaultNumbers(
            [.. study.Points.Where(p => p.Highest is not null || p.Lowest is not null).Select(p => Place(p, study, context))],
            [.. study.Pairs.Select(p => new SeriesNumbers(
                p.DownstreamId, p.UpstreamId, p.LowestAmps, p.HighestAmps, p.OverlapFrom, p.OverlapTo, study.DarkAfter(p.UpstreamId)))],
            [.. box.Wiring.Of<WiredFuse>().Select(f => OfDevice(f, study, context))]);
    }

    private static PlaceNumbers Place(PointFaults faults, FaultStudy study, GatherContext context) => new(
        faults.Point.PartId,
        faults.Point.Place,
        Short(faults.Highest, BankMinus(faults.Highest, context), study),
        Short(faults.Lowest, faults.Point.ReturnName, study),
        Short(faults.HighestToCase, "case", study),
        Short(faults.LowestToCase, "case", study));

    private static string BankMinus(FaultOutcome? outcome, GatherContext context) => context.Wiring.Of<WiredBank>()
        .Where(b => outcome is not null && context.Wiring.Node(b.Part.Id, "-") == outcome.To)
        .Select(b => b.Part.Id + ".-")
        .FirstOrDefault("its own return");

    private static FaultShort? Short(FaultOutcome? outcome, string to, FaultStudy study) => outcome is null ? null : new FaultShort(
        outcome.Case.Name,
        to,
        outcome.Amps,
        [.. outcome.Steps.Select(s => new OpeningNumbers(s.DeviceId, s.AtSeconds, s.Amps))],
        outcome.Cleared ? outcome.Seconds : null,
        outcome.SustainedAmps,
        outcome.Cleared ? outcome.LetThrough : null,
        study.Dark(outcome))
    {
        HottestConductor = outcome.Hottest?.WireId,
        HottestCelsius = outcome.Hottest?.Celsius,
        HottestLimitCelsius = outcome.Hottest?.LimitCelsius,
        HottestShare = outcome.Hottest?.Share ?? double.NegativeInfinity,
        Bms = outcome.Bms?.Id,
        BmsSeconds = outcome.Bms?.Seconds,
    };

    private static BreakingNumbers OfDevice(WiredFuse fuse, FaultStudy study, GatherContext context)
    {
        double volts = FuseGatherer.HighestVolts(fuse, context);
        (double Amps, FaultOutcome In)? highest = study.HighestThrough(fuse.Part.Id);
        return new BreakingNumbers(
            fuse.Part.Id, highest?.Amps, volts, study.BandOf(fuse.Part.Id)?.BreakingAt(volts), highest?.In.LoopSeconds);
    }
}
