using WireCheck.States;

namespace WireCheck.Faults.SingleFaults;

/// <summary>What has gone wrong.</summary>
public enum SingleFaultKind
{
    /// <summary>A BMS no longer opens: its transistors have failed shorted.</summary>
    BmsStuckClosed,

    /// <summary>A BMS has opened, or failed open.</summary>
    BmsStuckOpen,

    /// <summary>The contact of a relay or a switch no longer opens.</summary>
    ContactWelded,

    /// <summary>A fuse is blown or was never put in.</summary>
    FuseOpen,

    /// <summary>A return conductor has come off.</summary>
    ReturnLost,

    /// <summary>A positive conductor has chafed through onto a metal case.</summary>
    PositiveOnCase,
}

/// <summary>One fault in one state of the box.</summary>
/// <param name="Kind">What has gone wrong.</param>
/// <param name="PartId">The part or conductor that it has gone wrong with.</param>
/// <param name="Point">The box with the fault.</param>
/// <param name="Whole">The box in the same state without it.</param>
public sealed record SingleFault(SingleFaultKind Kind, string PartId, OperatingPoint Point, OperatingPoint Whole);
