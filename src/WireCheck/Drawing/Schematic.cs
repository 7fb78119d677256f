using WireCheck.Description;
using WireCheck.Description.Kinds;
using WireCheck.Quantities;

namespace WireCheck.Drawing;

/// <summary>A box as symbols, bars and wires between nodes, before anything has a place on the sheet.</summary>
public sealed class Schematic
{
    private Schematic(Pack pack)
    {
        Wires = [.. pack.Conductors.Select(c => OfConductor(pack, c)), .. pack.Of<Joint>().Select(j => OfJoint(pack, j))];
        HashSet<string> wired = new(StringComparer.Ordinal);
        foreach (DrawnWire wire in Wires)
        {
            wired.Add(wire.From);
            wired.Add(wire.To);
        }

        SymbolMaker maker = new(pack, wired);
        Symbols = [.. pack.Parts.SelectMany(maker.Of)];
        Bars = pack.Of<Busbar>().ToDictionary(b => b.Id, OfBar, StringComparer.Ordinal);
        FuseOrder = pack.Of<Fuse>().Select((fuse, place) => KeyValuePair.Create(fuse.Id, place)).ToDictionary(StringComparer.Ordinal);
    }

    public IReadOnlyList<Symbol> Symbols { get; }

    /// <summary>Conductor legs and joints, in the order of the description.</summary>
    public IReadOnlyList<DrawnWire> Wires { get; }

    /// <summary>Busbars by their node.</summary>
    public IReadOnlyDictionary<string, DrawnBar> Bars { get; }

    /// <summary>Place of each fuse in the description, which orders the branches.</summary>
    public IReadOnlyDictionary<string, int> FuseOrder { get; }

    /// <summary>The bank that stands at the left; null when the box has none.</summary>
    public Symbol? Bank => Symbols.FirstOrDefault(s => s.Shape == SymbolShape.Cells);

    /// <summary>Takes a described box apart into symbols and wires.</summary>
    public static Schematic Of(Pack pack) => new(pack);

    /// <summary>The node of a terminal.</summary>
    internal static string Node(string part, string terminal) => terminal.Length == 0 ? part : $"{part}.{terminal}";

    /// <summary>The node of a reference: a busbar is one node, whichever stud is named.</summary>
    private static string Node(Pack pack, TerminalReference reference) =>
        pack.Find(reference.PartId) is Busbar ? reference.PartId : Node(reference.PartId, reference.Terminal);

    private static DrawnWire OfConductor(Pack pack, Conductor wire) => new(
        wire.Id,
        Node(pack, wire.From),
        Node(pack, wire.To),
        [
            new Caption($"{wire.Id} {wire.Size.Value}", wire.Id),
            new Caption(QuantityText.Of(wire.Length.Value.Meters, "m")),
        ],
        IsJoint: false);

    private static DrawnWire OfJoint(Pack pack, Joint joint) => new(
        joint.Id, Node(pack, joint.First), Node(pack, joint.Second), [new Caption($"{joint.Id} {joint.JointKind.Value}", joint.Id)], IsJoint: true);

    private static DrawnBar OfBar(Busbar bar) => new(bar.Id, [new Caption(
        $"{bar.Id} {QuantityText.Plain(bar.Section.Value.Width.Millimeters, 3)} x {QuantityText.Plain(bar.Section.Value.Thickness.Millimeters, 3)} mm",
        bar.Id)]);
}
