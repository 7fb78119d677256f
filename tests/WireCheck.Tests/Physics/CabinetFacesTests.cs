using WireCheck.Physics;

namespace WireCheck.Tests.Physics;

/// <summary>Faces of a box of 0.5 by 0.3 by 0.2 m, by hand.</summary>
public sealed class CabinetFacesTests
{
    private static readonly CabinetFaces Standing = new(0.5, 0.3, 0.2);

    [Fact]
    public void A_box_that_stands_free_gives_off_heat_at_top_and_four_sides()
    {
        Standing.Top.ShouldBe(0.15, 1e-12);
        Standing.Bottom.ShouldBe(0);
        Standing.Sides.ShouldBe((2 * 0.5 * 0.2) + (2 * 0.3 * 0.2), 1e-12);
        Standing.Free.ShouldBe(0.47, 1e-12);

        // 0.15 m² over 1.6 m all round.
        Standing.TopLength.ShouldBe(0.09375, 1e-12);
        Standing.Effective.ShouldBe((1.4 * 0.15) + (0.9 * 0.32), 1e-12);
    }

    [Fact]
    public void A_box_that_hangs_has_its_bottom_too()
    {
        CabinetFaces hanging = Standing with { BottomFree = true };

        hanging.Bottom.ShouldBe(0.15, 1e-12);
        hanging.Free.ShouldBe(0.62, 1e-12);
        hanging.Effective.ShouldBe(Standing.Effective);
    }

    [Fact]
    public void Against_a_wall_the_larger_side_is_lost_and_counts_a_little_to_the_report()
    {
        CabinetFaces leaning = Standing with { SideCovered = true };

        leaning.Sides.ShouldBe(0.22, 1e-12);
        leaning.Free.ShouldBe(0.37, 1e-12);
        leaning.Effective.ShouldBe((1.4 * 0.15) + (0.9 * 0.22) + (0.5 * 0.1), 1e-12);
    }
}
