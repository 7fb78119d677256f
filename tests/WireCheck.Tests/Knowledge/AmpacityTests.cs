using WireCheck.Knowledge;
using WireCheck.Quantities;

namespace WireCheck.Tests.Knowledge;

public sealed class AmpacityTests
{
    private static readonly Library Library = Library.Embedded;

    private static ConductorSize Awg(double gauge) => new(SizeSystem.Awg, gauge);

    private static ConductorSize Metric(double section) => new(SizeSystem.Metric, section);

    private static AmpacityQuestion Ask(
        ConductorSize size, double insulation = 105, double ambient = 30, int loaded = 1, string material = "copper") =>
        new(size, Library.Materials[material], insulation, ambient, loaded);

    private static double Amps(AmpacityQuestion question, string? basis = null) => Library.Ampacity.Rate(question, basis)!.Amps;

    [Fact]
    public void Gauge_wire_takes_the_law_for_boats_by_itself() => Library.Ampacity.Rate(Ask(Awg(8)))!.BasisId.ShouldBe("cfr-183-425");

    [Fact]
    public void Metric_wire_takes_the_small_craft_standard_by_itself() => Library.Ampacity.Rate(Ask(Metric(10)))!.BasisId.ShouldBe("iso-10133");

    [Theory]
    [InlineData(20)]
    [InlineData(22)]
    [InlineData(24)]
    public void Thin_gauge_wire_takes_the_aircraft_handbook(double gauge) =>
        Library.Ampacity.Rate(Ask(Awg(gauge)))!.BasisId.ShouldBe("ac-43-13-1b");

    [Theory]
    [InlineData(0.2)]
    [InlineData(0.35)]
    [InlineData(0.5)]
    public void Thin_metric_wire_has_an_ampacity(double section) => Amps(Ask(Metric(section))).ShouldBeGreaterThan(1);

    [Fact]
    public void A_size_between_two_rows_takes_the_thinner_row()
    {
        Ampacity five = Library.Ampacity.Rate(Ask(Metric(5)))!;
        five.Row.ShouldBe(Metric(4));
        five.Amps.ShouldBe(45);
    }

    [Fact]
    public void An_insulation_between_two_columns_takes_the_lower()
    {
        Ampacity rated = Library.Ampacity.Rate(Ask(Awg(10), insulation: 100))!;
        rated.ColumnCelsius.ShouldBe(90);
        rated.Amps.ShouldBe(55);
    }

    [Fact]
    public void An_insulation_below_all_columns_is_brought_down_from_the_lowest()
    {
        Ampacity rated = Library.Ampacity.Rate(Ask(Awg(22), insulation: 75))!;
        rated.ColumnCelsius.ShouldBe(105);
        rated.Amps.ShouldBe(3 * Math.Sqrt(45.0 / 35), 1e-9);
    }

    [Fact]
    public void The_hot_space_factor_of_the_table_bounds_the_formula() => Amps(Ask(Awg(8), ambient: 50)).ShouldBe(68, 1e-9);

    [Fact]
    public void A_cold_box_is_not_given_more_than_the_table_prints() => Amps(Ask(Awg(8), ambient: 0)).ShouldBe(80);

    [Fact]
    public void Air_as_hot_as_the_insulation_leaves_nothing() => Amps(Ask(Awg(8), insulation: 60, ambient: 60)).ShouldBe(0);

    [Theory]
    [InlineData(1, 1)]
    [InlineData(2, 1)]
    [InlineData(3, 0.7)]
    [InlineData(6, 0.6)]
    [InlineData(24, 0.5)]
    [InlineData(100, 0.4)]
    public void A_bundle_takes_the_factor_of_its_count(int loaded, double factor) =>
        Amps(Ask(Awg(8), loaded: loaded)).ShouldBe(80 * factor, 1e-9);

    [Fact]
    public void Clad_aluminium_carries_four_fifths()
    {
        Ampacity rated = Library.Ampacity.Rate(Ask(Awg(8), material: "copper-clad-aluminium"))!;
        rated.Amps.ShouldBe(64, 1e-9);
        rated.Factors.Single().Value.ShouldBe(0.8);
    }

    [Fact]
    public void The_factors_make_the_amperes()
    {
        Ampacity rated = Library.Ampacity.Rate(Ask(Awg(6), insulation: 75, ambient: 45, loaded: 5, material: "aluminium"))!;
        rated.Factors.Count.ShouldBe(3);
        rated.Factors.Aggregate(rated.BaseAmps, (a, f) => a * f.Value).ShouldBe(rated.Amps, 1e-12);
        rated.Factors[1].Words.ShouldBe("45 °C around it");
    }

    [Fact]
    public void The_size_needed_is_the_thinnest_that_carries()
    {
        Library.Ampacity.SizeNeeded(56, Ask(Awg(8))).ShouldBe(Awg(10));
        Library.Ampacity.SizeNeeded(61, Ask(Awg(8))).ShouldBe(Awg(8));
        Library.Ampacity.SizeNeeded(61, Ask(Metric(1))).ShouldBe(Metric(10));
        Library.Ampacity.SizeNeeded(5000, Ask(Awg(8))).ShouldBeNull();
    }

    [Fact]
    public void A_basis_without_so_thin_a_row_gives_way_to_the_default() =>
        Library.Ampacity.BasisFor(Awg(22), "cfr-183-425").Id.ShouldBe("ac-43-13-1b");

    [Fact]
    public void An_unknown_basis_is_none() => Library.Ampacity.Find("nothing").ShouldBeNull();

    [Fact]
    public void Thicker_wire_never_carries_less()
    {
        foreach (string id in Library.Ampacity.Ids)
        {
            AmpacityBasis basis = Library.Ampacity.Find(id)!;
            double last = 0;
            foreach (ConductorSize size in Library.Conductors.Stocked(basis.Sizes).Where(basis.Covers))
            {
                if (basis.Rate(Ask(size, insulation: 200)) is { } rated)
                {
                    rated.Amps.ShouldBeGreaterThanOrEqualTo(last, $"{id} {size}");
                    last = rated.Amps;
                }
            }
        }
    }

    [Theory]
    [InlineData(SizeSystem.Awg)]
    [InlineData(SizeSystem.Metric)]
    public void Across_the_default_bases_thicker_wire_never_carries_less(SizeSystem system)
    {
        foreach (double insulation in new[] { 60.0, 70, 75, 90, 105, 125, 200 })
        {
            double last = 0;
            foreach (ConductorSize size in Library.Conductors.Stocked(system))
            {
                if (Library.Ampacity.Rate(Ask(size, insulation)) is { } rated)
                {
                    rated.Amps.ShouldBeGreaterThanOrEqualTo(last, $"{size} at {insulation}");
                    last = rated.Amps;
                }
            }
        }
    }
}
