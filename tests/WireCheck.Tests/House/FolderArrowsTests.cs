namespace WireCheck.Tests.House;

/// <summary>Which folder may use which. A row may name only rows above it, so that the data flows one way.</summary>
public sealed class FolderArrowsTests
{
    /// <summary>The front doors, which stand in no folder.</summary>
    private const string FrontDoors = "";

    private static readonly (string Room, string[] MayUse)[] Arrows =
    [
        ("Text", []),
        ("Physics", []),
        ("Quantities", ["Text"]),
        ("Knowledge", ["Text", "Physics", "Quantities"]),
        ("Description", ["Text", "Quantities", "Knowledge"]),
        ("Edits", ["Text", "Description"]),
        ("Circuit.Elements", []),
        ("Circuit", ["Circuit.Elements"]),
        ("Circuit.Solving", ["Circuit.Elements", "Circuit"]),
        ("Circuit.Wiring", ["Physics", "Quantities", "Knowledge", "Description", "Circuit.Elements", "Circuit"]),
        ("Circuit.Topology", ["Quantities", "Description", "Circuit.Elements", "Circuit", "Circuit.Wiring"]),
        ("Heat", ["Physics", "Quantities", "Knowledge", "Description"]),
        ("States", ["Physics", "Quantities", "Knowledge", "Description", "Circuit.Elements", "Circuit", "Circuit.Solving", "Circuit.Wiring", "Heat"]),
        (
            "Charging",
            [
                "Physics", "Quantities", "Description", "Circuit.Elements", "Circuit", "Circuit.Solving", "Circuit.Wiring",
                "Circuit.Topology", "States",
            ]),
        (
            "Faults",
            [
                "Physics", "Quantities", "Knowledge", "Description", "Circuit.Elements", "Circuit", "Circuit.Solving",
                "Circuit.Wiring", "Circuit.Topology", "States", "Charging",
            ]),
        (
            "Standby",
            [
                "Physics", "Quantities", "Knowledge", "Description", "Circuit.Elements", "Circuit", "Circuit.Solving",
                "Circuit.Wiring", "Circuit.Topology", "States",
            ]),
        (
            "Switching",
            [
                "Description", "Circuit.Elements", "Circuit", "Circuit.Solving", "Circuit.Wiring", "Circuit.Topology", "States",
            ]),
        (
            "Energy",
            [
                "Quantities", "Knowledge", "Description", "Circuit.Elements", "Circuit", "Circuit.Solving", "Circuit.Wiring",
                "Circuit.Topology", "States", "Charging",
            ]),
        (
            "Measured",
            [
                "Quantities", "Knowledge", "Description", "Circuit.Elements", "Circuit", "Circuit.Solving", "Circuit.Wiring", "Circuit.Topology", "States",
                "Standby",
            ]),
        ("Facts", ["Text"]),
        ("Facts.Catalogue", ["Facts"]),
        (
            "Facts.Gather",
            [
                "Text", "Physics", "Quantities", "Knowledge", "Description", "Circuit.Elements", "Circuit", "Circuit.Solving",
                "Circuit.Wiring", "Circuit.Topology", "Heat", "States", "Standby", "Faults", "Charging", "Switching", "Energy", "Measured", "Facts", "Facts.Catalogue",
            ]),
        ("Rules", ["Text", "Quantities", "Knowledge", "Facts"]),
        ("Findings", ["Text", "Knowledge", "Description", "Facts", "Rules"]),
        ("Mending", ["Quantities", "Edits", "Rules", "Findings"]),
        (
            "Numbers",
            [
                "Description", "Circuit.Elements", "Circuit", "Circuit.Solving", "Circuit.Topology", "Circuit.Wiring", "Quantities", "Knowledge", "Heat", "States", "Faults", "Standby", "Charging", "Energy", "Facts",
                "Facts.Catalogue", "Facts.Gather",
            ]),
        ("Tolerances", ["Knowledge", "Description", "Circuit.Wiring", "Facts", "Rules", "Findings"]),
        (
            "Sheets",
            [
                "Text", "Quantities", "Knowledge", "Description", "Circuit.Elements", "Circuit", "Circuit.Solving", "Circuit.Wiring", "States", "Standby", "Faults", "Facts", "Facts.Catalogue",
                "Facts.Gather", "Rules", "Findings", "Tolerances",
            ]),
        ("Sizing", ["Text", "Quantities", "Knowledge", "Description", "Facts", "Facts.Gather", "Rules", "Findings"]),
        ("Comparing", ["Quantities", "Description", "Facts", "Rules", "Findings"]),
        ("Drawing", ["Quantities", "Description"]),
        ("Reports", ["Text", "Edits", "Quantities", "Knowledge", "Switching", "Facts", "Facts.Catalogue", "Rules", "Findings", "Numbers", "Standby", "Energy", "Drawing", "Comparing", "Sheets", "Sizing", "Tolerances"]),
        ("Explaining", ["Text", "Knowledge", "Facts", "Facts.Catalogue", "Rules", "Reports"]),
        (
            FrontDoors,
            [
                "Text", "Mending", "Quantities", "Knowledge", "Description", "Circuit.Wiring", "States", "Facts", "Facts.Catalogue", "Facts.Gather",
                "Rules", "Findings", "Switching", "Standby", "Charging", "Faults", "Energy", "Numbers", "Tolerances", "Comparing", "Sheets", "Drawing", "Reports", "Edits", "Sizing",
            ]),
        ("Starting", ["Text", "Quantities", "Knowledge", "Description", "Rules", "Findings", "Reports", FrontDoors]),
    ];

    private static readonly Dictionary<string, SortedSet<string>> Used = Walk();

    public static TheoryData<string> Rooms => [.. Arrows.Select(a => a.Room)];

    [Fact]
    public void A_folder_may_use_only_folders_that_stand_above_it()
    {
        for (int row = 0; row < Arrows.Length; row++)
        {
            IEnumerable<string> above = Arrows.Take(row).Select(a => a.Room);
            Arrows[row].MayUse.Except(above).ShouldBeEmpty($"'{Arrows[row].Room}' names what does not stand above it");
        }
    }

    [Fact]
    public void Every_folder_has_its_row()
    {
        Used.Keys.Order(StringComparer.Ordinal).ShouldBe(Arrows.Select(a => a.Room).Order(StringComparer.Ordinal));
    }

    [Theory]
    [MemberData(nameof(Rooms))]
    public void A_folder_uses_nothing_but_what_its_row_names(string room)
    {
        Used[room].Except(Arrows.Single(a => a.Room == room).MayUse).ShouldBeEmpty();
    }

    [Fact]
    public void A_namespace_is_named_after_its_folder()
    {
        foreach (string file in SourceTree.Files("src/WireCheck"))
        {
            string folder = Path.GetDirectoryName(file)!.Replace(Path.DirectorySeparatorChar, '.')["src.".Length..];
            File.ReadLines(Path.Combine(Golden.Root, file)).ShouldContain($"namespace {folder};", file);
        }
    }

    private static Dictionary<string, SortedSet<string>> Walk()
    {
        Dictionary<string, SortedSet<string>> used = [];
        foreach (Type type in typeof(PackCheck).Assembly.GetTypes().Where(IsOurs))
        {
            string room = RoomOf(type);
            SortedSet<string> names = used.TryGetValue(room, out SortedSet<string>? held)
                ? held
                : used[room] = new SortedSet<string>(StringComparer.Ordinal);
            names.UnionWith(TypeReferences.Of(type).Where(IsOurs).Select(RoomOf).Where(other => other != room));
        }

        return used;
    }

    private static bool IsOurs(Type type) =>
        type.Assembly == typeof(PackCheck).Assembly && type.Namespace is { } name
        && (name == "WireCheck" || name.StartsWith("WireCheck.", StringComparison.Ordinal));

    /// <summary>Circuit and Facts hold several rooms; any other folder is one with all that is in it.</summary>
    private static string RoomOf(Type type)
    {
        string[] names = type.Namespace!.Split('.');
        return names.Length == 1 ? FrontDoors
            : names.Length > 2 && names[1] is "Circuit" or "Facts" ? string.Join('.', names.Skip(1))
            : names[1];
    }
}
