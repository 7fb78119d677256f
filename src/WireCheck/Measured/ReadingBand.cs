using WireCheck.Description;

namespace WireCheck.Measured;

/// <summary>What a reading may be by the prediction, and how it lies to that. Magnitudes: the meter's leads may be either way round.</summary>
/// <param name="Reading">The reading.</param>
/// <param name="Reads">What was read, V or A.</param>
/// <param name="Low">Lowest prediction over all corners, less what a meter may be off, V or A.</param>
/// <param name="High">Highest prediction, and what a meter may be off, V or A.</param>
/// <param name="Suspects">For a voltage above its band: joints and parts on the way, the most plausible first.</param>
/// <param name="Consumer">For a current off its band: the consumer that explains it best; null when none does.</param>
public sealed record ReadingBand(
    Reading Reading, double Reads, double Low, double High, IReadOnlyList<JointSuspect> Suspects, ConsumerSuspect? Consumer)
{
    /// <summary>It is more than the prediction allows.</summary>
    public bool Above => Reads > High;

    /// <summary>It is less than the prediction allows.</summary>
    public bool Below => Reads < Low;

    /// <summary>A voltage written below zero where the first terminal stands above the second at every corner: the probes, or the poles, are the other way round.</summary>
    public bool Reversed { get; init; }

    /// <summary>A voltage less than half of the lowest prediction, where that is one of a live pair: what is due there does not arrive.</summary>
    public bool Missing { get; init; }

    /// <summary>For a voltage that is missing: fuses, switches and relays on the way from the bank, any of which may be open.</summary>
    public IReadOnlyList<string> MayBeOpen { get; init; } = [];

    /// <summary>A current below its band on the way of a charger, which gives less and less near the end of the charge.</summary>
    public bool Tapers { get; init; }
}

/// <summary>A joint or part that would explain a voltage by its resistance.</summary>
/// <param name="Where">In words: "crimped-spade at f-lamp.2 of w20".</param>
/// <param name="ExpectedOhms">Its resistance when aged, Ω.</param>
/// <param name="NeededOhms">The resistance that would give the reading, everything else as predicted, Ω.</param>
public sealed record JointSuspect(string Where, double ExpectedOhms, double NeededOhms)
{
    /// <summary>How many times worse than an aged one it would have to be; the less, the more plausible.</summary>
    public double Times => NeededOhms / ExpectedOhms;
}

/// <summary>A consumer whose draw is about what a current is off by.</summary>
/// <param name="PartId">The part.</param>
/// <param name="Amps">What it draws, A.</param>
/// <param name="Draws">It would have to draw though it should not, or twice as much as it should; else it does not draw though it should.</param>
/// <param name="Predicted">The prediction already counts it.</param>
public sealed record ConsumerSuspect(string PartId, double Amps, bool Draws, bool Predicted);
