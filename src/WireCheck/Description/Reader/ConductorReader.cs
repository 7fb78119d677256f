using UnitsNet;
using WireCheck.Description.Kinds;
using WireCheck.Quantities;
using WireCheck.Text;

namespace WireCheck.Description.Reader;

/// <summary>Reads a conductor; a list of ends makes a daisy chain of legs.</summary>
internal static class ConductorReader
{
    internal const string Kind = "conductor";

    /// <summary>The legs in order, each from where the one before it ended.</summary>
    internal static IReadOnlyList<Conductor> Read(MapReader r)
    {
        TerminalReference from = r.Terminal("from");
        IReadOnlyList<TerminalReference> ends = ReadTo(r);
        IReadOnlyList<Given<Length>> lengths = ReadLengths(r, ends.Count);
        (ConductorEnd first, ConductorEnd last) = ReadEnds(r);
        Given<ConductorSize> size = r.Required<ConductorSize>("size");
        Given<string> material = r.OptionalWord("material", WordTable.Material)
            ?? new Given<string>("copper", r.Position, Origin.PartClass);
        Given<Strands>? strands = r.Optional<Strands>("strands");
        Given<string> insulation = r.Word("insulation", WordTable.Insulation, "pvc-105");
        Given<LinearResistance>? resistance = r.Optional<LinearResistance>("resistance");
        Given<string>? bundle = r.Optional<string>("bundle");
        Given<bool>? sleeve = r.Optional<bool>("sleeve");
        Given<WallPassage>? throughWall = r.Optional<WallPassage>("through_wall");
        Given<PartPlace>? place = r.Optional<PartPlace>("place");
        Given<string>? colour = r.Optional<string>("colour");
        Given<bool>? moving = r.Optional<bool>("moving");
        return [.. ends.Select((to, i) => new Conductor
        {
            Id = ends.Count == 1 ? r.Id : FormattableString.Invariant($"{r.Id}{Conductor.BeforeLeg}{i + 1}"),
            WrittenId = r.Id,
            Position = r.Position,
            ClassName = r.ClassName,
            From = i == 0 ? from : ends[i - 1],
            To = to,
            Length = lengths[Math.Min(i, lengths.Count - 1)],
            FromEnd = first,
            ToEnd = last,
            Size = size,
            Material = material,
            Strands = strands,
            Insulation = insulation,
            Resistance = resistance,
            Bundle = bundle,
            Sleeve = sleeve,
            ThroughWall = throughWall,
            Place = place,
            Colour = colour,
            Moving = moving,
        })];
    }

    private static IReadOnlyList<TerminalReference> ReadTo(MapReader r)
    {
        r.Has("to", typeof(string));
        if (r.Top("to") is not (YamlList list, Layer layer))
        {
            return [r.Terminal("to")];
        }

        if (list.Items.Count == 0)
        {
            r.Note("to", InputMessages.NoLegs(layer.Subject));
            return [new TerminalReference("", "", list.Position)];
        }

        return [.. r.OneOrMany("to", typeof(string))
            .Select(item => r.Terminal(r.Read<string>(item.Node, item.Layer, "to", null), item.Layer.Subject, "to"))];
    }

    private static IReadOnlyList<Given<Length>> ReadLengths(MapReader r, int legs)
    {
        r.Has("length", typeof(Length));
        if (r.Top("length") is not (YamlList list, Layer layer))
        {
            return [r.Required<Length>("length")];
        }

        Given<Length>[] lengths = [.. r.OneOrMany("length", typeof(Length))
            .Select(item => r.Read<Length>(item.Node, item.Layer, "length", null))];
        if (lengths.Length == legs)
        {
            return lengths;
        }

        r.Note("length", InputMessages.LegCount(layer.Subject, lengths.Length, legs));
        return [new Given<Length>(Length.FromMillimeters(1), list.Position, layer.Origin)];
    }

    private static (ConductorEnd From, ConductorEnd To) ReadEnds(MapReader r)
    {
        r.Has("ends", typeof(string));
        r.OptionalMapWhileRecording("ends", ConductorEnd.Read);
        IReadOnlyList<(YamlNode Node, Layer Layer)> items = r.OneOrMany("ends", typeof(string));
        switch (items.Count)
        {
            case 1:
                ConductorEnd both = ReadEnd(r, items[0].Node, items[0].Layer);
                return (both, both);
            case 2:
                return (ReadEnd(r, items[0].Node, items[0].Layer), ReadEnd(r, items[1].Node, items[1].Layer));
            default:
                if (r.Top("ends") is (YamlNode, Layer layer))
                {
                    r.Note("ends", InputMessages.EndCount(layer.Subject, items.Count));
                }
                else
                {
                    r.Word("ends", WordTable.Joint, "crimped-ring");
                }

                ConductorEnd none = new() { Class = new Given<string>("", r.Position, Origin.Written) };
                return (none, none);
        }
    }

    private static ConductorEnd ReadEnd(MapReader r, YamlNode node, Layer layer)
    {
        if (node is YamlMap map)
        {
            return r.Entry("ends", layer with { Map = map }, ConductorEnd.Read);
        }

        Given<string> word = r.Read<string>(node, layer, "ends", null);
        r.CheckWord(word, WordTable.Joint, layer.Subject, "ends");
        return new ConductorEnd { Class = word };
    }
}
