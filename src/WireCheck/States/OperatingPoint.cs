using WireCheck.Circuit.Elements;
using WireCheck.Circuit.Solving;

namespace WireCheck.States;

/// <summary>A relay as it settled.</summary>
/// <param name="Id">Id of the relay.</param>
/// <param name="Energised">Contact 30-87 closed.</param>
/// <param name="CoilVolts">From 86 to 85, V.</param>
/// <param name="CoilCelsius">Temperature of the coil, °C.</param>
/// <param name="OperateVolts">Pull-in voltage at that temperature, V.</param>
/// <param name="ReleaseVolts">Drop-out voltage at that temperature, V.</param>
public sealed record RelayState(
    string Id, bool Energised, double CoilVolts, double CoilCelsius, double OperateVolts, double ReleaseVolts);

/// <summary>A converter or inverter as it settled.</summary>
/// <param name="Id">Id of the part.</param>
/// <param name="On">It runs.</param>
/// <param name="CutOff">It had enough voltage before it started and too little when it ran.</param>
/// <param name="SagVolts">Its input voltage when it cut off, V; NaN otherwise.</param>
public sealed record InputState(string Id, bool On, bool CutOff, double SagVolts);

/// <summary>A box solved in one mode at one corner.</summary>
public sealed class OperatingPoint
{
    public required BoxMode Mode { get; init; }

    public required Corner Corner { get; init; }

    /// <summary>Node voltages and element currents.</summary>
    public required Solution Solution { get; init; }

    public required IReadOnlyList<RelayState> Relays { get; init; }

    public required IReadOnlyList<InputState> Inputs { get; init; }

    /// <summary>Ids of parts whose power the wiring cannot deliver at any voltage; they are taken as off.</summary>
    public required IReadOnlyList<string> Undeliverable { get; init; }

    /// <summary>Ids of relays that settle otherwise when all relays start pulled in.</summary>
    public required IReadOnlyList<string> RelaysWithTwoStates { get; init; }

    /// <summary>Ids of relays that never settle.</summary>
    public required IReadOnlyList<string> ChatteringRelays { get; init; }

    /// <summary>Voltage of one node above another, V.</summary>
    public double Volts(int above, int below) => Solution.Voltage(above, below);

    /// <summary>Current through an element from A to B, A.</summary>
    public double Amps(Element element) => Solution.Current(element);

}
