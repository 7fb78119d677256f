using WireCheck.Description.Kinds;

namespace WireCheck.Description.Reader;

/// <summary>A section of the file that lists parts of one kind.</summary>
/// <param name="Name">Its key, in the plural.</param>
/// <param name="Kind">The kind, in the singular, as <c>defaults</c> and messages name it.</param>
/// <param name="Read">Makes a part from its mapping.</param>
internal sealed record PartSection(string Name, string Kind, Func<MapReader, Part> Read);

/// <summary>All sections of parts. Conductors have a reader of their own, since one may become several legs.</summary>
internal static class PartSections
{
    internal static IReadOnlyList<PartSection> All { get; } =
    [
        new("cells", "cells", Cells.Read),
        new("bms", "bms", Bms.Read),
        new("fuses", "fuse", Fuse.Read),
        new(SectionNames.Breakers, "breaker", Fuse.Read),
        new("switches", "switch", Switch.Read),
        new("relays", "relay", Relay.Read),
        new("shunts", "shunt", Shunt.Read),
        new("meters", "meter", Meter.Read),
        new("diodes", "diode", Diode.Read),
        new("resistors", "resistor", Resistor.Read),
        new("busbars", "busbar", Busbar.Read),
        new("converters", "converter", Converter.Read),
        new("inverters", "inverter", Inverter.Read),
        new("ports", "port", Port.Read),
        new("loads", "load", Load.Read),
        new("chargers", "charger", Charger.Read),
        new("vehicles", "vehicle", Vehicle.Read),
        new("panels", "panel", Panel.Read),
        new("joints", "joint", Joint.Read),
    ];

    /// <summary>Kinds that <c>defaults</c> may name.</summary>
    internal static IReadOnlyList<string> Kinds { get; } = [.. All.Select(s => s.Kind), ConductorReader.Kind];
}
