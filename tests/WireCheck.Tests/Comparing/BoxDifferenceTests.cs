using WireCheck.Comparing;
using WireCheck.Rules;

namespace WireCheck.Tests.Comparing;

public sealed class BoxDifferenceTests
{
    [Fact]
    public void A_box_does_not_differ_from_itself_whatever_the_tolerance()
    {
        BoxDifference none = SwapBoxes.Compare(SwapBoxes.Small, SwapBoxes.Small, 0);

        none.IsNone.ShouldBeTrue();
        none.IsWorse(Severity.Advice).ShouldBeFalse();
        none.Breaks.ShouldBeEmpty();
    }

    [Fact]
    public void Values_that_mean_the_same_do_not_differ()
    {
        string other = SwapBoxes.Small
            .Replace("length: 400 mm", "length: 40 cm", StringComparison.Ordinal)
            .Replace("resistance: 0.5 mohm}", "resistance: 500 µΩ}", StringComparison.Ordinal);

        SwapBoxes.Compare(SwapBoxes.Small, other, 0).IsNone.ShouldBeTrue();
    }

    [Fact]
    public void The_way_back_loses_what_the_way_there_gains()
    {
        BoxDifference there = SwapBoxes.Compare(SwapBoxes.Small, SwapBoxes.Large);
        BoxDifference back = SwapBoxes.Compare(SwapBoxes.Large, SwapBoxes.Small);

        string[] Ids(BoxDifference difference, ChangeKind kind) =>
            [.. difference.Findings.Where(f => f.Change == kind).Select(f => $"{f.Finding.Rule} {f.Finding.Part}").Order()];
        Ids(there, ChangeKind.Added).ShouldNotBeEmpty();
        Ids(back, ChangeKind.Removed).ShouldBe(Ids(there, ChangeKind.Added));
        back.IsWorse(Severity.Advice).ShouldBeFalse();
        back.Breaks.ShouldBeEmpty();
        back.Numbers.Select(n => n.Share).Order().ShouldBe(there.Numbers.Select(n => n.Share).Order());
    }

    [Fact]
    public void A_greater_tolerance_tells_fewer_numbers_and_none_below_it()
    {
        BoxDifference fine = SwapBoxes.Compare(SwapBoxes.Small, SwapBoxes.Large, 0.01);
        BoxDifference coarse = SwapBoxes.Compare(SwapBoxes.Small, SwapBoxes.Large, 0.3);

        coarse.Numbers.Count.ShouldBeLessThan(fine.Numbers.Count);
        coarse.Numbers.ShouldAllBe(n => n.Share > 0.3);
        fine.Numbers.Select(n => Math.Round(n.Share, 6)).ShouldBeInOrder(SortDirection.Descending);
    }

    [Fact]
    public void What_came_with_another_class_is_told_apart_from_what_was_written()
    {
        BoxDifference swap = SwapBoxes.Swap(
            "market-stall-12v.yaml",
            ("part: inverter-12v-500w", "part: inverter-12v-1000w"), ("surge: {power: 700 W,", "surge: {power: 1200 W,"));

        ItemChange inverter = swap.Items.ShouldHaveSingleItem();
        inverter.Values.Single(v => v.Key == "part").ShouldBe(new ValueChange("part", "inverter-12v-500w", "inverter-12v-1000w", false));
        inverter.Values.ShouldContain(new ValueChange("power", "500 W", "1000 W", true));

        // Its surge is written in both, so that of the class does not count.
        inverter.Values.Single(v => v.Key == "surge.power").ShouldBe(new ValueChange("surge.power", "700 W", "1200 W", false));
    }

    [Fact]
    public void A_part_that_is_added_or_removed_is_told_with_what_is_written_at_it()
    {
        const string Line = "  w3: {from: inverter.in-, to: bank.-, size: 8 AWG, length: 500 mm}";
        BoxDifference difference = SwapBoxes.Compare(SwapBoxes.Small, SwapBoxes.Small.Replace(Line, Line.Replace("w3", "w4", StringComparison.Ordinal), StringComparison.Ordinal));

        difference.Items.Select(i => (i.Change, i.Id)).ShouldBe([(ChangeKind.Added, "w4"), (ChangeKind.Removed, "w3")]);
        difference.Items[0].Values.ShouldContain(new ValueChange("length", null, "500 mm", false));
        difference.Items[1].OldLine.ShouldBe(15);
    }

    [Fact]
    public void A_default_is_told_at_each_part_that_takes_it()
    {
        BoxDifference difference = SwapBoxes.Compare(SwapBoxes.Small, SwapBoxes.Small.Replace("pvc-105", "pvc-75", StringComparison.Ordinal));

        difference.Items.Select(i => i.Id).ShouldBe(["w1", "w2", "w3"]);
        difference.Items.ShouldAllBe(i => i.Values.Single() == new ValueChange("insulation", "pvc-105", "pvc-75", true));
    }

    [Fact]
    public void A_finding_that_is_waived_is_changed_and_no_worse_and_the_other_way_round_it_is()
    {
        string waived = SwapBoxes.Large + "\nwaivers: [{rule: conductor-over-ampacity, part: w2, because: seldom used}]\n";

        FindingChange accepted = Changed(SwapBoxes.Compare(SwapBoxes.Large, waived));
        accepted.IsWorse.ShouldBeFalse();
        Changed(SwapBoxes.Compare(waived, SwapBoxes.Large)).IsWorse.ShouldBeTrue();

        static FindingChange Changed(BoxDifference difference) => difference.Findings.Single(
            f => f is { Change: ChangeKind.Changed, Finding: { Rule: "conductor-over-ampacity", Part: "w2" } });
    }

    [Fact]
    public void Without_a_load_that_grew_what_breaks_stands_worst_first_with_no_place_on_the_way()
    {
        BoxDifference thinner = SwapBoxes.Compare(SwapBoxes.Small, SwapBoxes.Small.Replace("size: 8 AWG, length: 400", "size: 16 AWG, length: 400", StringComparison.Ordinal));

        thinner.Growth.Numbers.ShouldBeEmpty();
        thinner.Breaks.ShouldNotBeEmpty();
        thinner.Breaks.ShouldAllBe(b => b.At == null);
        thinner.Breaks.Select(b => b.Finding.Severity).ShouldBeInOrder(SortDirection.Descending);
    }

    [Fact]
    public void Problems_of_both_descriptions_are_told()
    {
        (BoxDifference? difference, IReadOnlyList<WireCheck.Text.Problem> problems) = BoxComparison.Compare(
            PackCheck.Standard, new DescriptionText("old.yaml", "pack: [", null), new DescriptionText("new.yaml", "", null), SwapBoxes.Today, 0.05);

        difference.ShouldBeNull();
        problems.Select(p => p.Position.File).Distinct().ShouldBe(["old.yaml", "new.yaml"]);
    }
}
