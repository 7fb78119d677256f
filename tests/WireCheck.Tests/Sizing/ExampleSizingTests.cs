using WireCheck.Edits;
using WireCheck.Sizing;

namespace WireCheck.Tests.Sizing;

public sealed class ExampleSizingTests
{
    /// <summary>The slowest takes minutes and is sized only by <c>tests/run --long</c>.</summary>
    public static TheoryData<string> Clean { get; } = Environment.GetEnvironmentVariable("WIRECHECK_LONG") is null
        ? ["market-stall-12v", "bicycle-workshop-48v"]
        : ["market-stall-12v", "bicycle-workshop-48v", "pump-house-24v"];

    [Theory]
    [MemberData(nameof(Clean))]
    public void A_clean_example_stays_clean_with_less_metal(string name)
    {
        SizingOutcome outcome = SizedBoxes.Size(SizedBoxes.Example(name));

        outcome.Result!.After.Findings.ShouldBeEmpty();
        outcome.Result.Conflicts.ShouldBeEmpty();
        outcome.Result.MetalAfter.ShouldBeLessThan(outcome.Result.MetalBefore);
        SizedBoxes.Check(outcome.Edits!.NewText()).ShouldBeEmpty();
    }

    [Fact]
    public void A_larger_inverter_breaks_the_box_and_sizing_mends_it()
    {
        // An urn of 550 W in place of one of 450 W; more vents for the warmth it makes, which no wire takes away.
        string swapped = SizedBoxes.Example("market-stall-12v")
            .Replace("part: inverter-12v-500w\n    surge: {power: 700 W, for: 1 s}", "part: inverter-12v-600w\n    surge: {power: 840 W, for: 1 s}", StringComparison.Ordinal)
            .Replace("{part: mains-urn-450w, at: inverter}", "{part: mains-urn-450w, at: inverter, power: 550 W}", StringComparison.Ordinal)
            .Replace("{urn: 450 W, till: 40 W}", "{urn: 550 W, till: 40 W}", StringComparison.Ordinal)
            .Replace("vent_area: 40 cm²", "vent_area: 160 cm²", StringComparison.Ordinal);
        SizedBoxes.Check(swapped).ShouldContain("fuse-below-steady-load main");

        SizingOutcome outcome = SizedBoxes.Size(swapped);

        string mended = outcome.Edits!.NewText();
        SizedBoxes.Check(mended).ShouldBeEmpty();
        ShouldDifferOnlyIn(swapped, mended, outcome.Edits);
    }

    /// <summary>Line by line: what differs are the values of the edits, each once.</summary>
    private static void ShouldDifferOnlyIn(string before, string after, EditPlan edits)
    {
        string[] old = before.Split('\n');
        string[] @new = after.Split('\n');
        @new.Length.ShouldBe(old.Length);
        foreach (TextChange change in edits.Changes)
        {
            int line = change.Start.Line - 1;
            change.OldValue.ShouldNotBeNull();
            @new[line] = @new[line].Replace(change.NewText, change.OldValue, StringComparison.Ordinal);
        }

        @new.ShouldBe(old);
    }
}
