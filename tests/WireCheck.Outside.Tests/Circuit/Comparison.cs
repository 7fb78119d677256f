namespace WireCheck.Outside.Tests.Circuit;

/// <summary>
/// Gathers the worst difference to a simulator, relative to the larger of the value and a floor. The floors are 10 mV
/// and 10 mA: a simulator keeps a voltage in one double, whose rounding of 7e-15 V at 50 V drives some 1e-10 A, and more after its elimination, through
/// the 100 µΩ of the firmest conductor, so that smaller currents than that are noise in its answer.
/// </summary>
internal sealed class Comparison
{
    private const double Floor = 1e-2;

    internal double Worst { get; private set; }

    internal string Where { get; private set; } = "nowhere";

    internal int Values { get; private set; }

    internal int Circuits { get; set; }

    internal int Refused { get; set; }

    internal void Add(double ours, double theirs, string where)
    {
        double difference = Math.Abs(ours - theirs) / Math.Max(Math.Max(Math.Abs(ours), Math.Abs(theirs)), Floor);
        Values++;
        if (!(difference <= Worst))
        {
            Worst = difference;
            Where = FormattableString.Invariant($"{where}: {ours:R} here, {theirs:R} there");
        }
    }
}
