namespace WireCheck.Faults;

/// <summary>One device that opens in a fault.</summary>
/// <param name="DeviceId">The fuse or breaker.</param>
/// <param name="AtSeconds">Time from the start of the fault until it has cleared at its slowest, s.</param>
/// <param name="Amps">What it carries when it opens, A.</param>
public sealed record FaultStep(string DeviceId, double AtSeconds, double Amps);

/// <summary>What a short at one place draws from some sources, and what ends it.</summary>
public sealed class FaultOutcome
{
    public required FaultCase Case { get; init; }

    /// <summary>Node that is shorted.</summary>
    public required int From { get; init; }

    /// <summary>Node it is shorted to.</summary>
    public required int To { get; init; }

    /// <summary>Current of the short before anything opens, A.</summary>
    public required double Amps { get; init; }

    /// <summary>
    /// Inductance of its loop over its resistance, s: how long the current takes to rise, and what a device has to burn in its arc.
    /// Of the way through the wires of the box; null where no bank drives it.
    /// </summary>
    public double? LoopSeconds { get; internal set; }

    /// <summary>Devices in the order in which they open, each at its slowest.</summary>
    public IReadOnlyList<FaultStep> Steps { get; internal set; } = [];

    /// <summary>True when the current stops.</summary>
    public bool Cleared { get; internal set; }

    /// <summary>Time until it stops, s; infinite when it does not.</summary>
    public double Seconds { get; internal set; }

    /// <summary>Current that goes on when no device is left that would open, A.</summary>
    public double SustainedAmps { get; internal set; }

    /// <summary>Energy let through in the short itself, A² s; infinite when it does not stop.</summary>
    public double LetThrough { get; internal set; }

    /// <summary>The conductor that comes nearest to, or farthest above, what its insulation stands for so long; null when none warms.</summary>
    public WireHeat? Hottest { get; internal set; }

    /// <summary>Of several conductors that it hurts, the one it hurts first; null when it hurts one at most, or no fuse is in its way.</summary>
    public string? FirstHurt { get; internal set; }

    /// <summary>The others that it hurts, in the order of the description; empty when <see cref="FirstHurt"/> is null.</summary>
    public IReadOnlyList<string> AlsoHurt { get; internal set; } = [];

    /// <summary>A BMS in the way that would trip, and its delay, s; null when none would. It is not relied on.</summary>
    public BmsTripping? Bms { get; internal set; }

    /// <summary>The fuse or breaker of the smallest rating in its way; null when there is none.</summary>
    public string? GuardId { get; internal set; }

    /// <summary>The device that ends it; null when none does.</summary>
    public string? ClearedBy => Cleared && Steps.Count > 0 ? Steps[^1].DeviceId : null;
}

/// <summary>How warm a conductor becomes in a fault.</summary>
/// <param name="WireId">The conductor leg.</param>
/// <param name="Celsius">Its temperature when the current stops, or when it has settled, from its rated temperature, °C.</param>
/// <param name="LimitCelsius">What its insulation stands for that long, °C.</param>
/// <param name="Energy">A² s let through it; infinite when the current does not stop.</param>
/// <param name="Share">Rise over the rise it stands; above 1 the insulation is hurt.</param>
/// <param name="SustainedAmps">What goes on through it for ever, A; 0 when the current stops.</param>
public sealed record WireHeat(
    string WireId, double Celsius, double LimitCelsius, double Energy, double Share, double SustainedAmps)
{
    /// <summary>Time from the start of the fault until its insulation is hurt, s; infinite when it is not.</summary>
    public double HurtSeconds { get; init; } = double.PositiveInfinity;
}

/// <summary>A BMS that would open in a fault.</summary>
/// <param name="Id">The BMS.</param>
/// <param name="Amps">Current through it, A.</param>
/// <param name="Seconds">Its delay at that current, s.</param>
public sealed record BmsTripping(string Id, double Amps, double Seconds);
