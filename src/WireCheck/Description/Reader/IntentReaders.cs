using UnitsNet;
using WireCheck.Quantities;
using WireCheck.Text;

namespace WireCheck.Description.Reader;

/// <summary>Reads what the builder means and measured: paths, waivers, readings, links outside.</summary>
internal static class IntentReaders
{
    internal static PathIntent ReadPath(MapReader r) => new()
    {
        LoadId = r.Id,
        Position = r.Position,
        Through = r.PartIds("through"),
        Drop = r.Optional<Ratio>("drop", Bounds.Share),
    };

    internal static Waiver ReadWaiver(MapReader r) => new()
    {
        Position = r.Position,
        Rule = r.Required<string>("rule", example: "battery-fuse-missing-or-far"),
        Part = r.Optional<string>("part"),
        Because = r.Required<string>("because", example: "sleeved and clamped"),
        Until = r.Optional<DateOnly>("until"),
    };

    internal static Reading ReadReading(MapReader r)
    {
        Given<string> mode = r.Required<string>("mode", example: "stored");
        bool isVoltage = r.Has("between", typeof(string));
        bool isCurrent = r.Has("through", typeof(string));
        if (isVoltage == isCurrent && !r.Context.Recording)
        {
            r.Note("mode", InputMessages.ReadingNeedsOne(r.Id));
        }

        (TerminalReference First, TerminalReference Second)? between = r.Terminals("between");
        Given<string>? through = r.PartId("through");
        return new Reading
        {
            Position = r.Position,
            Mode = mode,
            Between = between is null ? [] : [between.Value.First, between.Value.Second],
            Through = through,
            Volts = isVoltage ? r.Required<ElectricPotential>("reads", Bounds.Any) : null,
            Amps = isVoltage ? null : r.Required<ElectricCurrent>("reads", Bounds.Any),
        };
    }

    internal static OutsideLink ReadOutsideLink(MapReader r)
    {
        (TerminalReference first, TerminalReference second) = r.TwoTerminals("between");
        return new OutsideLink
        {
            Position = r.Position,
            First = first,
            Second = second,
            What = r.Required<string>("what", example: "shield of a data lead"),
            Resistance = r.Required<ElectricResistance>("resistance"),
        };
    }

    internal static Mode ReadMode(MapReader r) => new()
    {
        Id = r.Id,
        Position = r.Position,
        Closed = r.PartIds("closed", "switch"),
        Plugged = r.PartIds("plugged", "charger", "vehicle", "panel", "load"),
        Draws = ReadDraws(r),
        For = r.Optional<Duration>("for"),
    };

    private static IReadOnlyList<ModeDraw> ReadDraws(MapReader r)
    {
        List<ModeDraw> draws = [];
        foreach ((YamlEntry entry, Layer layer) in r.Entries("draws"))
        {
            Given<string> id = new(entry.Key.Text, entry.Key.Position, layer.Origin);
            r.Context.References.Parts.Add(new PartUse(id, layer.Subject, "draws", ["load", "converter", "inverter"]));
            draws.Add(new ModeDraw(id, r.Read<Power>(entry.Value, layer, $"draws.{entry.Key.Text}", Bounds.ZeroOrMore)));
        }

        return draws;
    }
}
