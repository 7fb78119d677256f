using WireCheck.Switching;

namespace WireCheck.Tests.Switching;

/// <summary>
/// Small boxes with one sneak path each. Beside each stands what must be found: the kind, the part and the loop, written down
/// from the wiring by hand.
/// </summary>
public sealed class SneakTests
{
    private static readonly string Folder = Path.Combine(Golden.Root, "tests", "WireCheck.Tests", "Switching", "Sneak");

    public static TheoryData<string> Boxes =>
        [.. Directory.EnumerateFiles(Folder, "*.yaml").Select(f => Path.GetFileNameWithoutExtension(f)).Order(StringComparer.Ordinal)];

    [Theory]
    [MemberData(nameof(Boxes))]
    public void A_sneak_path_is_found_as_the_loop_it_takes(string name)
    {
        string[] expected = File.ReadAllLines(Path.Combine(Folder, name + ".txt"));

        IReadOnlyList<SneakPath> found = Study(name).Sneaks;

        string all = string.Join("\n", found.Select(f => $"{f.Kind} {f.PartId} {f.When}: {string.Join(" > ", f.Loop)}"));
        SneakPath path = found.FirstOrDefault(f => f.Kind.ToString() == expected[0] && f.PartId == expected[1]).ShouldNotBeNull(all);
        string.Join(" > ", path.Loop).ShouldBe(expected[2], all);
        path.Size.ShouldBeGreaterThan(0);
    }

    [Theory]
    [MemberData(nameof(Boxes))]
    public void Nothing_is_found_of_another_kind_than_the_box_was_made_for(string name)
    {
        string[] lines = File.ReadAllLines(Path.Combine(Folder, name + ".txt"));
        string[] also = [.. lines.Where(l => l.StartsWith("also ", StringComparison.Ordinal)).Select(l => l["also ".Length..])];

        Study(name).Sneaks.Select(s => s.Kind.ToString()).Distinct().ShouldBe([lines[0], .. also]);
    }

    [Theory]
    [InlineData("market-stall-12v")]
    [InlineData("pump-house-24v")]
    [InlineData("bicycle-workshop-48v")]
    public void A_box_built_with_care_has_no_sneak_path(string name)
    {
        StudiedBox.Of(StudiedBox.Example(name)).Sneaks.Select(s => $"{s.Kind} {s.PartId}: {string.Join(" > ", s.Loop)}").ShouldBeEmpty();
    }

    [Fact]
    public void A_switch_in_the_negative_is_told_with_what_stays_on_all_the_same()
    {
        NegativeOnly off = Study("earth-feeds-what-is-switched-off").NegativeOnly.ShouldHaveSingleItem();

        off.Switch.ShouldBe("off");
        off.Parts.ShouldBe(["heater"]);
        off.Restored.ShouldBe(["heater"]);
    }

    private static SwitchingStudy Study(string name) => StudiedBox.Of(File.ReadAllText(Path.Combine(Folder, name + ".yaml")));
}
