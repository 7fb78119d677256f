using WireCheck.Circuit.Elements;
using WireCheck.Circuit.Wiring;

namespace WireCheck.Standby;

/// <summary>A current between two nodes that still waits to be given to a consumer.</summary>
/// <param name="partId">The part or named link it flows through.</param>
/// <param name="element">The element it flows through.</param>
/// <param name="from">Node it comes from.</param>
/// <param name="to">Node it goes to.</param>
/// <param name="volts">Voltage lost on it, V.</param>
internal sealed class DrainBranch(string partId, Element element, int from, int to, double volts)
{
    internal string PartId { get; } = partId;

    internal Element Element { get; } = element;

    internal int From { get; } = from;

    internal int To { get; } = to;

    internal double Volts { get; } = volts;

    /// <summary>What of its current no way has taken yet, A.</summary>
    internal double Left { get; set; }

    /// <summary>The part uses the current up: a meter, a coil, a lamp, a load, an input, a source that is charged.</summary>
    internal required bool Uses { get; init; }

    /// <summary>True for an element that uses current up rather than passing it on.</summary>
    internal static bool IsUser(WiredPart? part, Element element) =>
        element is ConstantCurrentSink or ConstantPowerSink or ConverterStage or Source or ChargerOutput or PanelCurve
        || part switch
        {
            WiredRelay relay => element == relay.Coil,
            WiredSwitch wired => element == wired.Lamp,
            WiredLoad load => element == load.ResistanceElement,
            _ => false,
        };
}
