using UnitsNet;
using WireCheck.Description;
using WireCheck.Heat;
using WireCheck.Knowledge;
using WireCheck.Quantities;

namespace WireCheck.Tests.Heat;

/// <summary>The air in a box: in balance, in order, and both ways beside each other.</summary>
public sealed class EnclosureBalanceTests
{
    public static TheoryData<string> Walls => [.. Library.Embedded.Walls.Names];

    internal static EnclosureBalance Box(string walls, double width = 400, double depth = 300, double height = 200, string vents = "none", double openings = 0, bool fan = false,
        EnclosurePlacing? placing = null) =>
        new(new Enclosure
        {
            Walls = Given(walls),
            Inside = Given(new BoxSize(Length.FromMillimeters(width), Length.FromMillimeters(depth), Length.FromMillimeters(height))),
            Vents = Given(vents),
            VentArea = openings > 0 ? Given(Area.FromSquareCentimeters(openings)) : null,
            Fan = Given(fan),
            Placing = placing is { } placed ? Given(placed) : null,
        }, Library.Embedded);

    [Theory]
    [MemberData(nameof(Walls))]
    public void What_is_made_inside_leaves_the_box(string walls)
    {
        foreach (double watts in new[] { 0.01, 1, 20, 300 })
        {
            EnclosureBalance box = Box(walls, vents: "passive", openings: 40);
            box.WattsLost(box.InsideCelsius(watts, 30), 30).ShouldBe(watts, 1e-9 * watts);
        }
    }

    [Theory]
    [MemberData(nameof(Walls))]
    public void More_heat_is_hotter_and_more_wall_cooler(string walls)
    {
        Box(walls).InsideCelsius(0, 30).ShouldBe(30);
        Box(walls).InsideCelsius(20, 30).ShouldBeGreaterThan(Box(walls).InsideCelsius(10, 30));
        Box(walls, width: 500).InsideCelsius(20, 30).ShouldBeLessThan(Box(walls).InsideCelsius(20, 30));
        Box(walls, width: 500).SimpleCelsius(20, 30).ShouldBeLessThan(Box(walls).SimpleCelsius(20, 30));
    }

    [Theory]
    [MemberData(nameof(Walls))]
    public void More_vents_are_never_hotter_and_a_fan_is_cooler_still(string walls)
    {
        double before = Box(walls).InsideCelsius(25, 30);
        foreach (double openings in new[] { 1.0, 10, 40, 100 })
        {
            double now = Box(walls, vents: "passive", openings: openings).InsideCelsius(25, 30);
            now.ShouldBeLessThan(before);
            Box(walls, vents: "fan", openings: openings).InsideCelsius(25, 30).ShouldBeLessThan(now);
            before = now;
        }
    }

    [Fact]
    public void Openings_of_no_stated_area_and_a_fan_in_a_closed_box_count_for_nothing()
    {
        double closed = Box("plastic").InsideCelsius(25, 30);
        Box("plastic", vents: "passive").InsideCelsius(25, 30).ShouldBe(closed);
        Box("plastic", fan: true).InsideCelsius(25, 30).ShouldBe(closed);
    }

    [Fact]
    public void A_plastic_box_by_hand()
    {
        // 400 x 300 x 200 mm: sides 0.28 m², top 0.12 m². Outside at 37 °C wall: 3.0 by air and 5.9 by radiation over 0.41 m², 3.7 W/K: 5.5 K.
        // Through 3 mm of 0.2 W/(m K): 20 W × 0.003/(0.2 × 0.40) = 0.75 K. Inside 3.2 by air and 2.6 by radiation over 0.40 m²: 2.3 W/K, 8.6 K.
        Box("plastic").InsideCelsius(20, 30).ShouldBeInRange(43, 47);

        // 20 W over 3.5 W/(m² K) × (1.4 × 0.12 + 0.9 × 0.28) m² = 13.6 K.
        Box("plastic").SimpleCelsius(20, 30).ShouldBe(43.6, 0.05);
    }

    [Theory]
    [MemberData(nameof(Walls))]
    public void A_hanging_box_is_the_coolest_and_one_in_a_bag_the_hottest(string walls)
    {
        EnclosurePlacing[] coolestFirst = [EnclosurePlacing.Hanging, EnclosurePlacing.Standing, EnclosurePlacing.Strapped, EnclosurePlacing.InBag];
        double[] inside = [.. coolestFirst.Select(p => Box(walls, placing: p).InsideCelsius(20, 30))];
        inside.ShouldBe([.. inside.Order()]);
        inside.Distinct().Count().ShouldBe(4);

        // What it hangs free below it gains, what lies against the body it loses: the large side is more than half the bottom here.
        Box(walls, placing: EnclosurePlacing.AgainstBody).InsideCelsius(20, 30).ShouldBeInRange(inside[0], inside[2]);
        Box(walls).InsideCelsius(20, 30).ShouldBe(Box(walls, placing: EnclosurePlacing.Standing).InsideCelsius(20, 30));
        foreach (EnclosurePlacing placing in Enum.GetValues<EnclosurePlacing>())
        {
            EnclosureBalance box = Box(walls, vents: "passive", openings: 40, placing: placing);
            box.WattsLost(box.InsideCelsius(20, 30), 30).ShouldBe(20, 2e-8, placing.ToString());
        }
    }

    [Fact]
    public void A_bag_and_a_strapped_side_by_hand()
    {
        // A bag of 0.155 m² K/W over 0.40 m² stands in the way of 20 W: 20 × 0.155/0.40 = 7.8 K more, and it closes the openings.
        double standing = Box("plastic").InsideCelsius(20, 30);
        Box("plastic", placing: EnclosurePlacing.InBag).InsideCelsius(20, 30).ShouldBe(standing + 7.8, 0.3);
        Box("plastic", vents: "passive", openings: 40, placing: EnclosurePlacing.InBag).InsideCelsius(20, 30)
            .ShouldBe(Box("plastic", placing: EnclosurePlacing.InBag).InsideCelsius(20, 30));

        // The largest side is 0.08 of 0.40 m²: with the same watts on four fifths of the wall, the rise of 15 K is 1/0.8 to the power of about 0.85 of
        // it (films of air grow with the rise): 18.1 K. By the simple rule: 1.4 × 0.12 + 0.9 × 0.20 + 0.5 × 0.08 = 0.388 m²; 20/3.5/0.388 = 14.7 K.
        Box("plastic", placing: EnclosurePlacing.Strapped).InsideCelsius(20, 30).ShouldBe(30 + ((standing - 30) * 1.21), 0.3);
        Box("plastic", placing: EnclosurePlacing.Strapped).SimpleCelsius(20, 30).ShouldBe(44.73, 0.01);
    }

    /// <summary>
    /// The same balance written down once more in another language, from the formulas of Churchill and Chu, McAdams, Stefan and
    /// Boltzmann and the values of the tables, and halved to its root: 20 W in a box of 400 x 300 x 200 mm.
    /// </summary>
    [Theory]
    [InlineData("plastic", EnclosurePlacing.Standing, 43.5140)]
    [InlineData("wood", EnclosurePlacing.Hanging, 43.7732)]
    [InlineData("aluminium", EnclosurePlacing.Strapped, 52.0391)]
    [InlineData("aluminium", EnclosurePlacing.InBag, 53.0582)]
    public void A_closed_box_reckoned_anew(string walls, EnclosurePlacing placing, double inside) =>
        Box(walls, placing: placing).InsideCelsius(20, 30).ShouldBe(inside, 2e-4);

    /// <summary>60 W in the same box with 40 cm² of openings, half of it in: by itself, and with a fan of 1 m/s.</summary>
    [Theory]
    [InlineData("passive", 59.2576)]
    [InlineData("fan", 46.0304)]
    public void An_open_box_reckoned_anew(string vents, double inside) =>
        Box("plastic", vents: vents, openings: 40).InsideCelsius(60, 30).ShouldBe(inside, 2e-4);

    [Fact]
    public void A_bag_counts_in_the_simple_rule()
    {
        // (1/3.5 + 0.155) m² K/W × 20 W/(1.4 × 0.12 + 0.9 × 0.28) m² = 21.0 K.
        Box("plastic", placing: EnclosurePlacing.InBag).SimpleCelsius(20, 30).ShouldBe(50.99, 0.01);
    }

    private static Given<T> Given<T>(T value) => new(value, new WireCheck.Text.Position("box.yaml", 1, 1), Origin.Written);
}
