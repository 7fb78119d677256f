using WireCheck.Circuit.Elements;
using WireCheck.Faults.Coordination;

namespace WireCheck.Faults;

/// <summary>A fuse or breaker in the path of faults, that of a vehicle among them, and the worst it is asked for.</summary>
internal sealed class FaultDevice(string id, Contact contact, TimeCurrentBand band)
{
    /// <summary>Id of the fuse or breaker, or of the vehicle whose own fuse it is.</summary>
    internal string Id { get; } = id;

    internal TimeCurrentBand Band { get; } = band;

    internal Contact Contact { get; } = contact;

    /// <summary>Part of the way to its clearing in the present fault, 0 to 1: the sum of dt/t at its slowest.</summary>
    internal double Melted { get; set; }

    internal bool IsOpen { get; set; }

    /// <summary>Highest current that any fault drives through it, A.</summary>
    internal double HighestAmps { get; set; }

    /// <summary>The fault in which that flows; null while none reaches it.</summary>
    internal FaultOutcome? HighestIn { get; set; }

    /// <summary>Seconds until it has cleared for certain at a current, with what it has already melted.</summary>
    internal double SecondsLeft(double amps) => (1 - Melted) * Band.Slowest(amps);
}
