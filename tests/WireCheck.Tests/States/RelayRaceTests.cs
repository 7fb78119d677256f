using WireCheck.States;

namespace WireCheck.Tests.States;

public sealed class RelayRaceTests
{
    /// <summary>
    /// Worked by hand: of 12 V and 8 V on coils that pull in at 7 V the first passes it when 5/12 of its way are left; the second
    /// has by then come to 8 (1 - 5/12) = 4.67 V. With its 8 V still there it passes 7 V when 1/3.33 = 0.3 of what was left is left.
    /// </summary>
    [Fact]
    public void The_coil_with_the_most_voltage_to_spare_is_first_and_the_other_has_come_part_of_its_way()
    {
        RelayRace race = new(2);

        race.First([8, 12], [7, 7], [true, true]).ShouldBe(1);

        race.Closest.ShouldBe(Math.Log((5.0 / 12) / (1.0 / 8)), 1e-12);

        // Had the first lost its feed and let go at 1.2 V, from its 7 V 1.2/7 would be left: the other is still sooner.
        race.First([8, 0], [7, 1.2], [true, true]).ShouldBe(0);
        race.Closest.ShouldBe(Math.Log(0.3 / (1.2 / 7)), 1e-12);
    }

    [Fact]
    public void Of_two_that_let_go_the_one_nearer_to_its_release_is_first()
    {
        RelayRace race = new(2);
        race.Begin(0, 12);
        race.Begin(1, 12);

        // From 12 V towards 0 V: 6 V are passed with half the way left, 1.2 V with a tenth.
        race.First([0, 0], [1.2, 6], [true, true]).ShouldBe(1);
        race.Closest.ShouldBe(Math.Log(0.5 / 0.1), 1e-12);
    }

    [Fact]
    public void Equal_ones_go_in_the_order_of_the_description_and_none_goes_that_does_not_want_to()
    {
        RelayRace race = new(3);

        race.First([12, 12, 12], [7, 7, 7], [false, true, true]).ShouldBe(1);
        race.First([12, 12, 12], [7, 7, 7], [false, false, false]).ShouldBe(-1);
    }

    [Theory]
    [InlineData(2)]
    [InlineData(4.5)]
    public void All_voltages_larger_by_a_factor_change_nothing(double factor)
    {
        RelayRace small = new(2);
        RelayRace large = new(2);

        int first = small.First([9, 11], [5, 7], [true, true]);

        large.First([9 * factor, 11 * factor], [5 * factor, 7 * factor], [true, true]).ShouldBe(first);
        large.Closest.ShouldBe(small.Closest, 1e-12);
    }
}
