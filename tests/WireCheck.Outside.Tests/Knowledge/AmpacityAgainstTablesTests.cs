using WireCheck.Knowledge;
using WireCheck.Quantities;

namespace WireCheck.Outside.Tests.Knowledge;

/// <summary>Ampacity against rows typed from the printed tables, and against other tables of the same thing.</summary>
public sealed class AmpacityAgainstTablesTests
{
    private static readonly Library Library = Library.Embedded;

    private static Ampacity Rate(string basis, SizeSystem system, double size, double insulation, double ambient, int loaded = 1) =>
        Library.Ampacity.Find(basis)!.Rate(
            new AmpacityQuestion(new ConductorSize(system, size), Library.Materials["copper"], insulation, ambient, loaded))!;

    /// <summary>33 CFR 183.425 Table 5 at 30 °C. Standing: published.</summary>
    [Theory]
    [InlineData(18, 105, 20)]
    [InlineData(16, 60, 15)]
    [InlineData(14, 90, 30)]
    [InlineData(12, 105, 45)]
    [InlineData(10, 75, 40)]
    [InlineData(8, 105, 80)]
    [InlineData(6, 105, 120)]
    [InlineData(4, 125, 170)]
    [InlineData(2, 80, 175)]
    [InlineData(0, 200, 325)]
    [InlineData(-1, 105, 330)]
    [InlineData(-3, 60, 300)]
    public void The_law_for_boats_is_read_right(double gauge, double insulation, double printed) =>
        Rate("cfr-183-425", SizeSystem.Awg, gauge, insulation, 30).Amps.ShouldBe(printed);

    /// <summary>The 105 °C hot-space column that reprints of the table carry, truncated. Standing: published.</summary>
    [Theory]
    [InlineData(18, 17)]
    [InlineData(16, 21)]
    [InlineData(12, 38)]
    [InlineData(10, 51)]
    [InlineData(8, 68)]
    [InlineData(6, 102)]
    [InlineData(4, 136)]
    [InlineData(3, 153)]
    [InlineData(2, 178)]
    [InlineData(1, 208)]
    public void The_hot_space_column_of_the_law_for_boats_is_met(double gauge, double printed) =>
        Math.Floor(Rate("cfr-183-425", SizeSystem.Awg, gauge, 105, 50).Amps + 1e-9).ShouldBe(printed);

    /// <summary>NEC Table 310.16 at 30 °C. Standing: published.</summary>
    [Theory]
    [InlineData(14, 75, 20)]
    [InlineData(12, 90, 30)]
    [InlineData(10, 60, 30)]
    [InlineData(8, 75, 50)]
    [InlineData(4, 90, 95)]
    [InlineData(0, 75, 150)]
    [InlineData(-3, 90, 260)]
    public void The_building_code_is_read_right(double gauge, double insulation, double printed) =>
        Rate("nec-310-16", SizeSystem.Awg, gauge, insulation, 30).Amps.ShouldBe(printed);

    /// <summary>NEC Table 310.15(C)(1). Standing: published.</summary>
    [Theory]
    [InlineData(3, 1)]
    [InlineData(6, 0.8)]
    [InlineData(9, 0.7)]
    [InlineData(20, 0.5)]
    [InlineData(30, 0.45)]
    [InlineData(40, 0.4)]
    [InlineData(41, 0.35)]
    public void Bundles_of_the_building_code_are_read_right(int loaded, double factor) =>
        Rate("nec-310-16", SizeSystem.Awg, 8, 75, 30, loaded).Amps.ShouldBe(50 * factor, 1e-9);

    /// <summary>AC 43.13-1B Table 11-9 on its own basis of 70 °C. Standing: published.</summary>
    [Theory]
    [InlineData(24, 105, 2.5)]
    [InlineData(22, 150, 5)]
    [InlineData(20, 200, 9)]
    [InlineData(16, 105, 7)]
    [InlineData(10, 105, 17)]
    [InlineData(8, 105, 38)]
    [InlineData(4, 150, 103)]
    [InlineData(-3, 200, 395)]
    public void The_aircraft_handbook_is_read_right(double gauge, double insulation, double printed) =>
        Rate("ac-43-13-1b", SizeSystem.Awg, gauge, insulation, 70).Amps.ShouldBe(printed, 1e-9);

    /// <summary>30 CFR 75.601-3, single conductor: ampacity and largest fuse. Standing: published.</summary>
    [Theory]
    [InlineData(8, 60, 60)]
    [InlineData(3, 130, 150)]
    [InlineData(2, 150, 150)]
    [InlineData(1, 170, 175)]
    [InlineData(0, 200, 200)]
    public void In_mines_the_largest_fuse_is_the_standard_rating_at_or_above_the_ampacity(double gauge, double ampacity, double fuse)
    {
        double amps = Rate("cfr-75-601-3", SizeSystem.Awg, gauge, 60, 30).Amps;
        amps.ShouldBe(ampacity);
        Library.StandardRatings.NextAtOrAbove(amps).ShouldBe(fuse);
    }

    /// <summary>
    /// Two tables of small craft rate about the same wire about alike: 33 CFR by gauge (published) against ISO 10133 by
    /// section (from memory), 105 °C, within a quarter for the same area.
    /// </summary>
    [Theory]
    [InlineData(18, 0.75)]
    [InlineData(14, 2.5)]
    [InlineData(12, 4)]
    [InlineData(8, 10)]
    [InlineData(6, 16)]
    [InlineData(2, 35)]
    [InlineData(-3, 120)]
    public void Gauge_and_metric_tables_agree_about_like_wire(double gauge, double section)
    {
        double boats = Rate("cfr-183-425", SizeSystem.Awg, gauge, 105, 30).Amps;
        double metric = Rate("iso-10133", SizeSystem.Metric, section, 105, 30).Amps;
        double ratio = section * 1e-6 / ConductorTable.Area(new ConductorSize(SizeSystem.Awg, gauge));
        (metric / boats / Math.Pow(ratio, 0.65)).ShouldBeInRange(0.75, 1.25);
    }

    /// <summary>IEC 60364-5-52 Table B.52.14, XLPE 90 °C and PVC 70 °C against the formula. Standing: from memory.</summary>
    [Theory]
    [InlineData(70, 40, 0.87)]
    [InlineData(70, 50, 0.71)]
    [InlineData(70, 60, 0.50)]
    [InlineData(90, 40, 0.91)]
    [InlineData(90, 60, 0.71)]
    public void The_factors_of_the_iec_follow_the_same_formula(double insulation, double ambient, double printed)
    {
        Ampacity cool = Rate("iec-60364-5-52", SizeSystem.Metric, 10, insulation, 30);
        Ampacity hot = Rate("iec-60364-5-52", SizeSystem.Metric, 10, insulation, ambient);
        (hot.Amps / cool.Amps).ShouldBe(printed, 0.006);
    }
}
