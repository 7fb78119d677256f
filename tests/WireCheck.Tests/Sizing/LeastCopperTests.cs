using WireCheck.Sizing;

namespace WireCheck.Tests.Sizing;

/// <summary>Wires that share drops, against every combination, and against what is known of tapered feeders.</summary>
public sealed class LeastCopperTests
{
    private static readonly double[] Sections = [0.5, 0.75, 1, 1.5, 2.5, 4, 6, 10];

    [Theory]
    [InlineData(1)]
    [InlineData(2)]
    [InlineData(3)]
    [InlineData(4)]
    [InlineData(5)]
    [InlineData(6)]
    public void As_little_copper_as_the_best_of_all_combinations(int seed)
    {
        Random random = new(seed);
        SizedValue[] wires = [.. Enumerable.Range(0, 5).Select(i => FakeJudge.Wire(i, 0.2 + random.NextDouble(), Sections))];
        double[][] amps = [.. Enumerable.Range(0, 2).Select(_ => wires.Select(_ => random.Next(3) == 0 ? 0 : 1 + (9 * random.NextDouble())).ToArray())];
        double[] limits = [.. amps.Select(a => a.Sum() * (0.15 + (0.3 * random.NextDouble())))];
        FakeJudge judge = new(amps, limits, [.. wires.Select(_ => random.Next(3))]);

        Sized sized = new Sizer(wires, judge).Choose();

        judge.Passes(wires, sized.Choice).ShouldBeTrue();
        Weight(wires, sized.Choice).ShouldBe(Best(wires, judge), 1e-9);
    }

    // Least metal for a given drop at the end of a feeder: section in proportion to the square root of the current (a minimum of
    // the sum of l s under the sum of i l / s, by Lagrange); then the metal is (sum of l sqrt(i)) squared over the drop.
    [Fact]
    public void Finely_graded_sections_go_as_the_square_root_of_the_current()
    {
        double[] fine = [.. Enumerable.Range(0, 90).Select(k => 0.3 * Math.Pow(1.04, k))];
        double[] lengths = [1, 0.8, 0.6];
        double[] amps = [16, 9, 4];
        SizedValue[] wires = [.. lengths.Select((l, i) => FakeJudge.Wire(i, l, fine))];
        double limit = 6;

        Sized sized = new Sizer(wires, new FakeJudge([amps], [limit], [0, 0, 0])).Choose();

        double[] sections = [.. sized.Choice.Select(k => fine[k])];
        (sections[0] / sections[2]).ShouldBe(Math.Sqrt(16.0 / 4), 0.2);
        (sections[1] / sections[2]).ShouldBe(Math.Sqrt(9.0 / 4), 0.2);
        double ideal = Math.Pow(lengths.Zip(amps, (l, i) => l * Math.Sqrt(i)).Sum(), 2) / limit;
        Weight(wires, sized.Choice).ShouldBeInRange(ideal, ideal * 1.03);
    }

    [Fact]
    public void No_wire_can_be_a_step_smaller_and_a_wire_without_a_limit_is_the_smallest()
    {
        SizedValue[] wires = [FakeJudge.Wire(0, 1, Sections), FakeJudge.Wire(1, 1, Sections), FakeJudge.Wire(2, 1, Sections)];
        FakeJudge judge = new([[10, 5, 0]], [8], [0, 0, 0]);

        Sized sized = new Sizer(wires, judge).Choose();

        sized.Choice[2].ShouldBe(0);
        sized.Forbids[2].ShouldBeEmpty();
        for (int wire = 0; wire < 2; wire++)
        {
            int[] smaller = (int[])sized.Choice.Clone();
            smaller[wire]--;
            judge.Passes(wires, smaller).ShouldBeFalse();
            sized.Forbids[wire].ShouldHaveSingleItem().Rule.ShouldBe("drop-over-percent");
        }
    }

    [Fact]
    public void What_no_wire_can_meet_is_told_and_the_wires_stay_small()
    {
        SizedValue[] wires = [FakeJudge.Wire(0, 1, Sections), FakeJudge.Wire(1, 1, Sections)];

        Sized sized = new Sizer(wires, new FakeJudge([[10, 5]], [0.001], [1, 2])).Choose();

        sized.Choice.ShouldBe([1, 2]);
        sized.Conflicts.ShouldHaveSingleItem().Finding.Part.ShouldBe("load0");
    }

    private static double Weight(SizedValue[] wires, int[] choice) => wires.Select((w, i) => w.Options[choice[i]].Weight).Sum();

    private static double Best(SizedValue[] wires, FakeJudge judge)
    {
        double best = double.MaxValue;
        int[] choice = new int[wires.Length];
        while (true)
        {
            if (judge.Passes(wires, choice))
            {
                best = Math.Min(best, Weight(wires, choice));
            }

            int at = 0;
            while (at < choice.Length && ++choice[at] == Sections.Length)
            {
                choice[at++] = 0;
            }

            if (at == choice.Length)
            {
                return best;
            }
        }
    }
}
