namespace WireCheck.Outside.Tests.Circuit;

/// <summary>
/// Gathers the worst difference to a simulator, relative to the larger of the value and a floor: 10 mV, and 50 mA. A
/// simulator stops when its voltages change by less than 1e-12 V, which through the firmest conductor of 300 µΩ is
/// 3e-9 A; a smaller current is to that extent noise in its answer.
/// </summary>
internal sealed class Comparison
{
    internal const double VoltageFloor = 1e-2;

    internal const double CurrentFloor = 5e-2;

    internal double Worst { get; private set; }

    internal string Where { get; private set; } = "nowhere";

    internal int Values { get; private set; }

    internal int Circuits { get; set; }

    internal int Refused { get; set; }

    internal void Add(double ours, double theirs, double floor, string where)
    {
        double difference = Math.Abs(ours - theirs) / Math.Max(Math.Max(Math.Abs(ours), Math.Abs(theirs)), floor);
        Values++;
        if (!(difference <= Worst))
        {
            Worst = difference;
            Where = FormattableString.Invariant($"{where}: {ours:R} here, {theirs:R} there");
        }
    }
}
