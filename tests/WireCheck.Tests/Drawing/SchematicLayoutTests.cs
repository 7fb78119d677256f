using WireCheck.Description;
using WireCheck.Drawing;

namespace WireCheck.Tests.Drawing;

/// <summary>The drawing of every description at hand: the examples, and the good and bad boxes of all rules.</summary>
public sealed class SchematicLayoutTests
{
    public static TheoryData<string> Boxes =>
    [
        .. Directory.EnumerateFiles(Path.Combine(Golden.Root, "examples"), "*.yaml")
            .Concat(Directory.EnumerateFiles(
                Path.Combine(Golden.Root, "tests", "WireCheck.Tests", "Rules", "Cases"), "*.yaml", SearchOption.AllDirectories))
            .Select(f => Path.GetRelativePath(Golden.Root, f))
            .Order(StringComparer.Ordinal),
    ];

    [Theory]
    [MemberData(nameof(Boxes))]
    public void Every_part_and_conductor_is_named_once(string box)
    {
        Pack pack = Read(box);
        PlacedDrawing drawing = Draw(pack);
        Dictionary<string, int> named = drawing.Labels.Where(l => l.Part is not null).CountBy(l => l.Part!).ToDictionary(StringComparer.Ordinal);
        foreach (Part part in pack.Parts.Concat(pack.Conductors))
        {
            named.GetValueOrDefault(part.Id).ShouldBe(1, part.Id);
        }
    }

    [Theory]
    [MemberData(nameof(Boxes))]
    public void No_two_labels_meet(string box)
    {
        List<(PlacedLabel Label, double Left, double Top, double Right, double Bottom)> frames =
        [
            .. Draw(Read(box)).Labels.Select(l => (
                l,
                l.X - PlacedDrawing.MarkWidth,
                l.Y - PlacedDrawing.FontSize,
                l.X + PlacedDrawing.WidthOf(l.Words) - PlacedDrawing.MarkWidth,
                l.Y + 2)),
        ];
        for (int i = 0; i < frames.Count; i++)
        {
            for (int j = i + 1; j < frames.Count; j++)
            {
                bool meet = frames[i].Left < frames[j].Right && frames[j].Left < frames[i].Right
                    && frames[i].Top < frames[j].Bottom && frames[j].Top < frames[i].Bottom;
                meet.ShouldBeFalse($"'{frames[i].Label.Words}' and '{frames[j].Label.Words}'");
            }
        }
    }

    [Theory]
    [MemberData(nameof(Boxes))]
    public void Every_wire_is_drawn_and_nothing_leaves_the_sheet(string box)
    {
        Pack pack = Read(box);
        PlacedDrawing drawing = Draw(pack);
        HashSet<string> drawn = [.. drawing.Lines.Where(l => l.Kind == LineKind.Wire).Select(l => l.Part!)];
        foreach (PlacedLabel label in drawing.Labels)
        {
            (label.X + PlacedDrawing.WidthOf(label.Words)).ShouldBeLessThanOrEqualTo(drawing.Width);
            label.Y.ShouldBeInRange(PlacedDrawing.FontSize, drawing.Height);
            if (label.Part is not null && pack.Conductors.Any(c => c.Id == label.Part) && !drawn.Contains(label.Part))
            {
                // A wire at the side of a symbol is told in words: which pin, where to.
                label.Words.ShouldContain(" to ");
            }
        }
    }

    [Fact]
    public void The_bank_stands_left_of_everything_between_a_rail_above_and_a_rail_below()
    {
        PlacedDrawing drawing = Draw(Read("examples/market-stall-12v.yaml"));
        PlacedSymbol bank = drawing.Symbols.Single(s => s.Symbol.Shape == SymbolShape.Cells);
        PlacedLine plus = drawing.Lines.Single(l => l.Kind == LineKind.Bar && l.Part == "plus");
        PlacedLine minus = drawing.Lines.Single(l => l.Kind == LineKind.Bar && l.Part == "minus");
        drawing.Symbols.Where(s => s != bank).ShouldAllBe(s => s.X >= bank.X);
        foreach (PlacedSymbol fuse in drawing.Symbols.Where(s => s.Symbol.Part is "f-cool" or "f-till" or "f-usb" or "f-lamp"))
        {
            fuse.Y.ShouldBeInRange(plus.FromY, minus.FromY);
        }
    }

    [Fact]
    public void Branches_stand_in_the_order_of_the_fuses()
    {
        PlacedDrawing drawing = Draw(Read("examples/market-stall-12v.yaml"));
        string[] order = ["f-cool", "f-till", "f-usb", "f-lamp"];
        order.Select(id => drawing.Symbols.Single(s => s.Symbol.Part == id).X).ShouldBeInOrder();
    }

    [Fact]
    public void The_same_box_is_drawn_the_same_twice()
    {
        Pack pack = Read("examples/bicycle-workshop-48v.yaml");
        Draw(pack).Labels.ShouldBe(Draw(pack).Labels);
    }

    private static PlacedDrawing Draw(Pack pack) => SchematicLayout.Place(Schematic.Of(pack), _ => "12.3 A");

    private static Pack Read(string box) =>
        PackReader.Read(box, File.ReadAllText(Path.Combine(Golden.Root, box)), LibraryClasses.Embedded).Pack!;
}
