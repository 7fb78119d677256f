using WireCheck.Edits;
using WireCheck.Sizing;

namespace WireCheck.Tests.Sizing;

public sealed class ExampleSizingTests
{
    [Theory]
    [InlineData("market-stall-12v")]
    [InlineData("pump-house-24v")]
    [InlineData("bicycle-workshop-48v")]
    public void A_clean_example_stays_clean_and_grows_nowhere(string name)
    {
        SizingOutcome outcome = SizedBoxes.Size(SizedBoxes.Example(name));

        outcome.Result!.After.Findings.ShouldBeEmpty();
        outcome.Result.Conflicts.ShouldBeEmpty();
        outcome.Result.MetalAfter.ShouldBeLessThan(outcome.Result.MetalBefore);
        outcome.Result.Choices.Where(c => c.Changed && !c.Shrinks).ShouldBeEmpty();
        SizedBoxes.Check(outcome.Edits!.NewText()).ShouldBeEmpty();
    }

    [Fact]
    public void A_larger_inverter_breaks_the_box_and_sizing_mends_it()
    {
        string swapped = SizedBoxes.Example("market-stall-12v")
            .Replace("part: inverter-12v-500w\n    surge: {power: 700 W, for: 1 s}", "part: inverter-12v-500w\n    power: 800 W\n    surge: {power: 1000 W, for: 1 s}", StringComparison.Ordinal)
            .Replace("urn: {part: mains-urn-450w, at: inverter}", "urn: {part: mains-urn-450w, at: inverter, power: 700 W}", StringComparison.Ordinal)
            .Replace("draws: {urn: 450 W, till: 40 W}", "draws: {urn: 700 W, till: 40 W}", StringComparison.Ordinal);
        SizedBoxes.Check(swapped).ShouldNotBeEmpty();

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
