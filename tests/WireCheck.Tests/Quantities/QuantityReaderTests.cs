using UnitsNet;
using WireCheck.Quantities;

namespace WireCheck.Tests.Quantities;

public sealed class QuantityReaderTests
{
    // Inch 25.4 mm, foot 304.8 mm, yard 914.4 mm: international yard and pound agreement of 1959.
    [Theory]
    [InlineData("90 mm", 0.09)]
    [InlineData("90mm", 0.09)]
    [InlineData("  1.5 m ", 1.5)]
    [InlineData(".5 m", 0.5)]
    [InlineData("5. cm", 0.05)]
    [InlineData("1e2 mm", 0.1)]
    [InlineData("2 in", 0.0508)]
    [InlineData("3 ft", 0.9144)]
    [InlineData("1 yd", 0.9144)]
    [InlineData("1000 mil", 0.0254)]
    [InlineData("+7 mm", 0.007)]
    public void Lengths_are_read_in_metric_and_imperial_units(string text, double metres) =>
        QuantityReader.Read(text, PlainKinds.Length, Bounds.Positive).Value.Meters.ShouldBe(metres, metres * 1e-12);

    [Theory]
    [InlineData("0.35 mΩ")]
    [InlineData("0.35 m\u2126")]
    [InlineData("0.35 mohm")]
    [InlineData("0.35 mOhm")]
    [InlineData("350 µΩ")]
    [InlineData("350 \u03BCΩ")]
    [InlineData("350 uohm")]
    [InlineData("350 microohm")]
    public void A_milliohm_is_written_in_many_ways(string text) =>
        QuantityReader.Read(text, ElectricKinds.Resistance, Bounds.Positive).Value.Ohms.ShouldBe(0.35e-3, 1e-15);

    [Theory]
    [InlineData("-5 °C", -5)]
    [InlineData("-5 degC", -5)]
    [InlineData("−5 °C", -5)]
    [InlineData("32 °F", 0)]
    [InlineData("212 degF", 100)]
    [InlineData("273.15 K", 0)]
    public void Temperatures_may_be_negative(string text, double celsius) =>
        QuantityReader.Read(text, PlainKinds.Temperature, Bounds.Positive).Value.DegreesCelsius.ShouldBe(celsius, 1e-9);

    [Fact]
    public void A_month_has_thirty_days() =>
        QuantityReader.Read("3 %/month", PlainKinds.ShareRate, Bounds.Positive).Value.PerDay.ShouldBe(0.001, 1e-15);

    // 1 kft = 304.8 m, so 1.24 Ω/kft is 4.068 mΩ/m.
    [Fact]
    public void Ohms_per_thousand_feet_become_ohms_per_metre() =>
        QuantityReader.Read("1.24 Ω/kft", ElectricKinds.LinearResistance, Bounds.Positive).Value.OhmsPerMetre.ShouldBe(1.24 / 304.8, 1e-12);

    [Theory]
    [InlineData("20", QuantityFaultKind.NoUnit)]
    [InlineData("", QuantityFaultKind.NotANumber)]
    [InlineData("A", QuantityFaultKind.NotANumber)]
    [InlineData("NaN A", QuantityFaultKind.NotFinite)]
    [InlineData("-.inf", QuantityFaultKind.NotFinite)]
    [InlineData("1e999 A", QuantityFaultKind.NotFinite)]
    [InlineData("1e306 kA", QuantityFaultKind.NotFinite)]
    [InlineData("7,5 A", QuantityFaultKind.DecimalComma)]
    [InlineData("20 mm", QuantityFaultKind.OtherDimension)]
    [InlineData("20 Q", QuantityFaultKind.UnknownUnit)]
    [InlineData("-5 A", QuantityFaultKind.Negative)]
    [InlineData("0 A", QuantityFaultKind.Zero)]
    public void A_current_that_means_nothing_is_a_fault(string text, QuantityFaultKind fault) =>
        QuantityReader.Read(text, ElectricKinds.Current, Bounds.Positive).Fault!.Kind.ShouldBe(fault);

    [Theory]
    [InlineData("10.8 .. 15 V", 10.8, 15)]
    [InlineData("10.8..15 V", 10.8, 15)]
    [InlineData("500 mV .. 1 V", 0.5, 1)]
    [InlineData("12 .. 12 V", 12, 12)]
    public void A_range_has_two_ends_in_order(string text, double from, double to)
    {
        Range<ElectricPotential> range = QuantityReader.ReadRange(text, ElectricKinds.Voltage, Bounds.Positive).Value;

        range.From.Volts.ShouldBe(from, 1e-12);
        range.To.Volts.ShouldBe(to, 1e-12);
    }

    [Theory]
    [InlineData("15 .. 10 V", QuantityFaultKind.Reversed)]
    [InlineData("15 V", QuantityFaultKind.NotARange)]
    [InlineData("10 .. 15", QuantityFaultKind.NoUnit)]
    [InlineData("x .. 15 V", QuantityFaultKind.NotANumber)]
    [InlineData("-1 .. 15 V", QuantityFaultKind.Negative)]
    public void A_range_that_is_none_is_a_fault(string text, QuantityFaultKind fault) =>
        QuantityReader.ReadRange(text, ElectricKinds.Voltage, Bounds.Positive).Fault!.Kind.ShouldBe(fault);

    [Theory]
    [InlineData("20 x 2 mm")]
    [InlineData("20x2mm")]
    [InlineData("2 cm × 2 mm")]
    public void A_section_is_width_and_thickness(string text) =>
        QuantityReader.ReadSection(text).Value.Area.SquareMillimeters.ShouldBe(40, 1e-9);

    [Fact]
    public void A_box_is_width_depth_and_height()
    {
        BoxSize box = QuantityReader.ReadBox("300 x 190 x 160 mm").Value;

        (box.Width.Millimeters, box.Depth.Millimeters, box.Height.Millimeters).ShouldBe((300, 190, 160));
    }

    [Fact]
    public void No_symbol_belongs_to_two_dimensions()
    {
        string[] all = [.. QuantityKinds.All.SelectMany(k => k.Symbols)];

        all.GroupBy(s => s).Where(g => g.Count() > 1).Select(g => g.Key).ShouldBeEmpty();
    }

    [Fact]
    public void Every_symbol_stands_in_its_canonical_spelling() =>
        QuantityKinds.All.SelectMany(k => k.Symbols).Where(s => UnitSpelling.Canonical(s) != s).ShouldBeEmpty();
}
