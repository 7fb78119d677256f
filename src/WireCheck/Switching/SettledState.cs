using WireCheck.Circuit.Solving;

namespace WireCheck.Switching;

/// <summary>One state as it settled. The next state overwrites it.</summary>
public sealed class SettledState
{
    /// <summary>What is plugged.</summary>
    public required PlugCase Plugs { get; set; }

    /// <summary>Closed switches, one bit each.</summary>
    public ulong Closed { get; set; }

    /// <summary>True for the second of two ends: relays started pulled in and held otherwise than from rest.</summary>
    public bool HeldIn { get; set; }

    /// <summary>Relays that started pulled in for the second end, one bit each.</summary>
    public ulong Started { get; set; }

    /// <summary>Relays that are pulled in, one bit each.</summary>
    public ulong Energised { get; set; }

    /// <summary>Relays that never come to rest, one bit each.</summary>
    public ulong Chattering { get; set; }

    /// <summary>Relays that stand otherwise at the other end, one bit each.</summary>
    public ulong TwoStates { get; set; }

    /// <summary>Voltages and currents, no test burden on.</summary>
    public required Solution Solution { get; set; }

    /// <summary>Converters and inverters that run, in the order of the description.</summary>
    public required IReadOnlyList<bool> Running { get; set; }
}
