using WireCheck.Energy;
using WireCheck.Quantities;

namespace WireCheck.Reports.Numbers;

/// <summary>The words in which runs are told.</summary>
internal static class EnergyWords
{
    /// <summary>Name of an end for programs.</summary>
    internal static string Name(RunEndKind kind) => kind switch
    {
        RunEndKind.Bms => "bms",
        RunEndKind.CellWindow => "cell_window",
        RunEndKind.CutOff => "cut_off",
        RunEndKind.LoadWindow => "load_window",
        RunEndKind.Relay => "relay",
        RunEndKind.Undeliverable => "undeliverable",
        RunEndKind.BmsOvercharge => "bms_overcharge",
        RunEndKind.Tail => "tail_current",
        _ => "nothing",
    };

    /// <summary>An end in words.</summary>
    internal static string Of(RunEnd end) => end.Kind switch
    {
        RunEndKind.Bms => $"{end.PartId} opens at {Volts(end)} a cell",
        RunEndKind.CellWindow => $"{end.PartId} down to {Volts(end)} a cell, no BMS",
        RunEndKind.CutOff => $"{end.PartId} cuts off at {Volts(end)}",
        RunEndKind.LoadWindow => $"{end.PartId} sees {Volts(end)}",
        RunEndKind.Relay => $"{end.PartId} does not hold",
        RunEndKind.Undeliverable => $"{end.PartId ?? "the box"} asks for more than the wiring brings",
        RunEndKind.BmsOvercharge => $"{end.PartId} stops it at {Volts(end)} a cell",
        RunEndKind.Tail => "charge current fallen to its end",
        _ => "",
    };

    private static string Volts(RunEnd end) => QuantityText.WithPrefix(end.Volts, "V");
}
