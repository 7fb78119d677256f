using WireCheck.Circuit.Topology;
using WireCheck.States;
using WireCheck.Tests.Charging;

namespace WireCheck.Tests.Circuit.Topology;

/// <summary>How much the fuses of several consumers let through together; what bounds it is worked by hand.</summary>
public sealed class FuseFlowTests
{
    [Theory]
    [InlineData(100, 30, 40, 70, "f-a f-b")]
    [InlineData(50, 30, 40, 50, "main")]
    [InlineData(60, 20, 80, 60, "main")]
    [InlineData(70, 30, 40, 70, "main")]
    public void Two_branches_are_bounded_by_their_sum_or_by_what_feeds_them(double main, double a, double b, double amps, string fuses)
    {
        FuseFlow flow = Find(Branches(main, a, b), "a.+", "b.+");

        (flow.Amps, string.Join(' ', flow.Fuses)).ShouldBe((amps, fuses));
    }

    [Fact]
    public void Two_ways_to_one_consumer_add_and_a_fuse_across_them_changes_nothing_that_is_bounded_before()
    {
        // bank - 20 A - x - 10 A - load and bank - 10 A - y - 20 A - load, 5 A from x to y: 10 + 10 + 5.
        string text = ChargedBox.Bank + """
            fuses:
              f1: {part: blade, rating: 20 A}
              f2: {part: blade, rating: 10 A}
              f3: {part: blade, rating: 10 A}
              f4: {part: blade, rating: 20 A}
              f5: {part: blade, rating: 5 A}
            loads:
              a: {current: 1 A}
            conductors:

            """
            + ChargedBox.Wire("w1", "bank.+", "f1.1") + ChargedBox.Wire("w2", "f1.2", "f2.1") + ChargedBox.Wire("w3", "f2.2", "a.+")
            + ChargedBox.Wire("w4", "bank.+", "f3.1") + ChargedBox.Wire("w5", "f3.2", "f4.1") + ChargedBox.Wire("w6", "f4.2", "a.+")
            + ChargedBox.Wire("w7", "f1.2", "f5.1") + ChargedBox.Wire("w8", "f5.2", "f3.2") + ChargedBox.Wire("w9", "a.-", "bank.-");

        Find(text, "a.+").Amps.ShouldBe(25);
    }

    [Fact]
    public void A_consumer_without_a_fuse_is_bounded_by_nothing_and_one_out_of_reach_adds_nothing()
    {
        string text = ChargedBox.Bank + "loads:\n  a: {current: 1 A}\nconductors:\n"
            + ChargedBox.Wire("w1", "bank.+", "a.+") + ChargedBox.Wire("w2", "a.-", "bank.-");

        Find(text, "a.+").Amps.ShouldBe(double.PositiveInfinity);
        Find(Branches(100, 30, 40), "a.+", "b.-").Amps.ShouldBe(30);
    }

    [Fact]
    public void More_consumers_never_draw_less_and_never_more_than_the_sum_of_each_alone()
    {
        Random random = new(7);
        double[] ratings = [2, 5, 10, 15, 20, 30, 40, 60];
        for (int i = 0; i < 40; i++)
        {
            string text = Branches(Pick(), Pick(), Pick());
            double a = Find(text, "a.+").Amps;
            double b = Find(text, "b.+").Amps;
            double both = Find(text, "a.+", "b.+").Amps;

            both.ShouldBeGreaterThanOrEqualTo(Math.Max(a, b));
            both.ShouldBeLessThanOrEqualTo(a + b);
        }

        double Pick() => ratings[random.Next(ratings.Length)];
    }

    private static string Branches(double main, double a, double b) => ChargedBox.Bank + FormattableString.Invariant($$"""
        fuses:
          main: {part: class-t, rating: {{main}} A}
          f-a: {part: class-t, rating: {{a}} A}
          f-b: {part: class-t, rating: {{b}} A}
        loads:
          a: {current: 1 A}
          b: {current: 1 A}
        conductors:

        """)
        + ChargedBox.Wire("w1", "bank.+", "main.1") + ChargedBox.Wire("w2", "main.2", "f-a.1") + ChargedBox.Wire("w3", "main.2", "f-b.1")
        + ChargedBox.Wire("w4", "f-a.2", "a.+") + ChargedBox.Wire("w5", "f-b.2", "b.+")
        + ChargedBox.Wire("w6", "a.-", "bank.-") + ChargedBox.Wire("w7", "b.-", "bank.-");

    private static FuseFlow Find(string text, params string[] taps)
    {
        (SolvedBox? box, var problems) = PackNumbers.Solve("box.yaml", text);
        problems.Select(p => p.ToString()).ShouldBeEmpty();
        int Node(string terminal) => box.ShouldNotBeNull().Wiring.Node(terminal.Split('.')[0], terminal.Split('.')[1]);
        return FuseFlow.Find(WiringGraph.Of(box.ShouldNotBeNull().Wiring), Node("bank.+"), taps.Select(Node).ToHashSet());
    }
}
