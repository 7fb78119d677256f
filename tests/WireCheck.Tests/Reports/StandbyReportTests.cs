using System.Text;
using System.Text.Json;
using WireCheck.Numbers;
using WireCheck.Reports.Numbers;
using WireCheck.States;
using WireCheck.Tests.Facts.Gather;

namespace WireCheck.Tests.Reports;

/// <summary>The two forms in which the standby is told hold the same and all of it.</summary>
public sealed class StandbyReportTests
{
    private static readonly SolvedBox Box = PackNumbers.Solve("box.yaml", GatheredBox.Plain).Box!;

    [Fact]
    public void The_text_tells_consumers_ways_both_stages_and_what_would_help()
    {
        using StringWriter writer = new();
        NumbersText.WriteStandby(writer, "Small box", StandbyNumbers.Of(Box));
        string text = writer.ToString();

        text.ShouldContain("stored (all switches open, nothing plugged in), at its most:");
        text.ShouldContain("left-plugged (");
        text.ShouldContain("w1 > main > w8 > w9");
        text.ShouldContain("from full to the cut-off of the BMS or the cells: 250 days");
        text.ShouldContain("until a cell is harmed for good");
        text.ShouldContain("feed it from behind master");
    }

    [Fact]
    public void The_other_form_holds_shares_that_add_up_and_the_moves()
    {
        using MemoryStream stream = new();
        NumbersJson.WriteStandby(stream, "box.yaml", "Small box", StandbyNumbers.Of(Box));
        using JsonDocument json = JsonDocument.Parse(Encoding.UTF8.GetString(stream.ToArray()));
        JsonElement stored = json.RootElement.GetProperty("standby")[0];

        stored.GetProperty("mode").GetString().ShouldBe("stored");
        stored.GetProperty("consumers").EnumerateArray().Sum(c => c.GetProperty("share").GetDouble()).ShouldBe(1, 1e-8);
        stored.GetProperty("seconds_to_cut_off").GetDouble().ShouldBe(90 / 0.0149463 * 3600, 1500);
        JsonElement move = json.RootElement.GetProperty("moves")[0];
        move.GetProperty("part").GetString().ShouldBe("gauge");
        move.GetProperty("behind").GetString().ShouldBe("master");
        move.GetProperty("amps").GetDouble().ShouldBe(0, 1e-7);
        move.GetProperty("seconds_to_cut_off").GetDouble().ShouldBe(90 / 0.0029463 * 3600, 10_000);
    }

    [Fact]
    public void The_same_box_gives_the_same_bytes()
    {
        using MemoryStream first = new();
        using MemoryStream second = new();
        NumbersJson.WriteStandby(first, "box.yaml", "Small box", StandbyNumbers.Of(Box));
        NumbersJson.WriteStandby(second, "box.yaml", "Small box", StandbyNumbers.Of(PackNumbers.Solve("box.yaml", GatheredBox.Plain).Box!));

        second.ToArray().ShouldBe(first.ToArray());
    }
}
