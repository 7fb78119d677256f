using WireCheck.Description;
using WireCheck.Description.Kinds;

namespace WireCheck.Sheets;

/// <summary>What is written on wires and parts.</summary>
internal static class Labels
{
    /// <summary>The label of an end of a wire: the wire and where this end goes.</summary>
    internal static string Of(Conductor wire, TerminalReference end) => $"{wire.Id} {end}";

    /// <summary>Every text once, parts first, then both ends of each wire.</summary>
    internal static Sheet Sheet(Pack pack) => new(
        "labels",
        "Label texts",
        ["One label a row. Wires have one at each end, with the terminal that the end goes to."],
        ["label", "on", "where"],
        [
            .. pack.Parts.Where(p => p is not (Joint or Load or Vehicle or Charger { At: not null } or Panel { At: not null })).Select(p => (IReadOnlyList<string>)[TextOf(p), p.Kind, p.Id]),
            .. pack.Conductors.SelectMany(w => new IReadOnlyList<string>[]
            {
                [Of(w, w.From), "wire", $"end at {w.From}"],
                [Of(w, w.To), "wire", $"end at {w.To}"],
            }),
            .. SenseLead.In(pack).SelectMany(l => new IReadOnlyList<string>[]
            {
                [$"{l.Id} {l.Tap}", "wire", $"end at {l.Tap}"],
                [$"{l.Id} plug", "wire", $"end at the plug, {l.Id}"],
            }),
        ]);

    private static string TextOf(Part part) => part switch
    {
        Fuse fuse => FormattableString.Invariant($"{fuse.Id} {fuse.Rating.Value.Amperes:0.##} A {fuse.Class.Value}"),
        Port port => FormattableString.Invariant($"{port.Id} {DirectionOf(port)} {port.Rated.Value.Amperes:0.##} A"),
        Cells cells => FormattableString.Invariant($"{cells.Id} {cells.Series.Value}S{cells.Parallel.Value}P {cells.Capacity.Value.AmpereHours:0.##} Ah"),
        Inverter inverter => FormattableString.Invariant($"{inverter.Id} {inverter.AcVoltage.Value.Volts:0} V~ DANGER"),
        _ => part.Id,
    };

    private static string DirectionOf(Port port) => port.Direction.Value switch
    {
        PortDirection.In => "IN",
        PortDirection.Out => "OUT",
        _ => "IN/OUT",
    };
}
