using WireCheck.Physics;

namespace WireCheck.Tests.Physics;

public sealed class BalancePointTests
{
    /// <summary>Balances as boxes and wires have them, and where they are even.</summary>
    public static TheoryData<string, double, double, double, int> Balances => new()
    {
        { "line", 20, 1085, 60, 3 },
        { "radiation", 20, 1085, 100, 15 },
        { "draught", 20, 300, 52, 10 },
        { "cliff", 0, 1000, 3, 19 },
    };

    [Theory]
    [MemberData(nameof(Balances))]
    public void The_root_is_found_to_the_last_digits_in_as_few_questions_as_it_was(string kind, double low, double high, double root, int questions)
    {
        Func<double, double> balance = kind switch
        {
            "line" => t => 2 * (60 - t),
            "radiation" => t => Math.Pow(373.15, 4) - Math.Pow(t + 273.15, 4),
            "draught" => t => Math.Pow(32, 1.25) - Math.Pow(t - 20, 1.25),
            _ => t => 9 - (t * t),
        };
        int asked = 0;

        double found = BalancePoint.Find(
            t =>
            {
                asked++;
                return balance(t);
            },
            low,
            high);

        found.ShouldBe(root, 1e-10 * root);
        asked.ShouldBeLessThanOrEqualTo(questions);
    }

    [Fact]
    public void A_bound_that_is_even_is_the_answer_without_a_search()
    {
        BalancePoint.Find(t => 20 - t, 20, 50).ShouldBe(20);
        BalancePoint.Find(t => 50 - t, 20, 50).ShouldBe(50);
    }

    /// <summary>A step has no root; its place is told closely enough, however uneven the heights.</summary>
    [Theory]
    [InlineData(1e-6)]
    [InlineData(1)]
    [InlineData(1e6)]
    public void The_place_of_a_step_is_found_too(double height)
    {
        BalancePoint.Find(t => t < 41.7 ? height : -1, 0, 1000).ShouldBe(41.7, 1e-3);
        BalancePoint.Find(t => t < 41.7 ? 1 : -height, 0, 1000).ShouldBe(41.7, 1e-3);
    }
}
