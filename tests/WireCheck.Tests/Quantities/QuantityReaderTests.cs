using UnitsNet;
using WireCheck.Quantities;

namespace WireCheck.Tests.Quantities;

public sealed class QuantityReaderTests
{
    [Theory]
    [InlineData("90 mm", 0.09)]
    [InlineData("90mm", 0.09)]
    [InlineData("9 cm", 0.09)]
    [InlineData("1.5 m", 1.5)]
    [InlineData("12 in", 0.3048)]
    [InlineData("3 ft", 0.9144)]
    [InlineData("1 yd", 0.9144)]
    [InlineData("1e3 mm", 1)]
    public void A_length_is_read_in_metric_and_imperial_units(string text, double metres) =>
        Good(QuantityReader.Read(text, PlainKinds.Length, Bounds.Positive)).Meters.ShouldBe(metres, 1e-12);

    [Theory]
    [InlineData("0.35 mΩ", 0.35e-3)]
    [InlineData("0.35 mohm", 0.35e-3)]
    [InlineData("0.35 m\u2126", 0.35e-3)]
    [InlineData("350 µΩ", 0.35e-3)]
    [InlineData("350 \u03BCΩ", 0.35e-3)]
    [InlineData("350 uohm", 0.35e-3)]
    [InlineData("10 kΩ", 1e4)]
    [InlineData("1 MΩ", 1e6)]
    public void Spellings_of_one_resistance_mean_the_same(string text, double ohms) =>
        Good(QuantityReader.Read(text, ElectricKinds.Resistance, Bounds.Positive)).Ohms.ShouldBe(ohms, ohms * 1e-12);

    [Theory]
    [InlineData("-5 °C", -5)]
    [InlineData("-5 degC", -5)]
    [InlineData("\u22125 °C", -5)]
    [InlineData("95 °F", 35)]
    [InlineData("273.15 K", 0)]
    public void A_temperature_may_be_below_zero(string text, double celsius) =>
        Good(QuantityReader.Read(text, PlainKinds.Temperature, Bounds.Positive)).DegreesCelsius.ShouldBe(celsius, 1e-9);

    [Fact]
    public void A_share_per_month_counts_thirty_days() =>
        Good(QuantityReader.Read("3 %/month", PlainKinds.ShareRate, Bounds.Positive)).PerDay.ShouldBe(0.001, 1e-15);

    [Fact]
    public void Other_quantities_take_their_usual_units()
    {
        Good(QuantityReader.Read("25 Ah", ElectricKinds.Charge, Bounds.Positive)).Coulombs.ShouldBe(90_000, 1e-6);
        Good(QuantityReader.Read("470 uF", ElectricKinds.Capacitance, Bounds.Positive)).Farads.ShouldBe(470e-6, 1e-15);
        Good(QuantityReader.Read("2.2 mF", ElectricKinds.Capacitance, Bounds.Positive)).Farads.ShouldBe(2.2e-3, 1e-15);
        Good(QuantityReader.Read("20 min", PlainKinds.Duration, Bounds.Positive)).Seconds.ShouldBe(1200, 1e-9);
        Good(QuantityReader.Read("520 A2s", ElectricKinds.JouleIntegral, Bounds.Positive)).AmpereSquaredSeconds.ShouldBe(520);
        Good(QuantityReader.Read("1.24 ohm/kft", ElectricKinds.LinearResistance, Bounds.Positive)).OhmsPerMetre.ShouldBe(1.24 / 304.8, 1e-12);
        Good(QuantityReader.Read("50 J", ElectricKinds.Energy, Bounds.Positive)).Joules.ShouldBe(50);
        Good(QuantityReader.Read("20 cm2", PlainKinds.Area, Bounds.Positive)).SquareMeters.ShouldBe(0.002, 1e-15);
    }

    [Theory]
    [InlineData("90", QuantityFaultKind.NoUnit)]
    [InlineData("90 mn", QuantityFaultKind.UnknownUnit)]
    [InlineData("90 V", QuantityFaultKind.OtherDimension)]
    [InlineData("0,09 m", QuantityFaultKind.DecimalComma)]
    [InlineData("nan mm", QuantityFaultKind.NotFinite)]
    [InlineData(".inf mm", QuantityFaultKind.NotFinite)]
    [InlineData("1e999 mm", QuantityFaultKind.NotFinite)]
    [InlineData("-90 mm", QuantityFaultKind.Negative)]
    [InlineData("0 mm", QuantityFaultKind.Zero)]
    [InlineData("long", QuantityFaultKind.NotANumber)]
    [InlineData("", QuantityFaultKind.NotANumber)]
    [InlineData("mm", QuantityFaultKind.NotANumber)]
    [InlineData("- 90 mm", QuantityFaultKind.NotANumber)]
    [InlineData("1.2.3 mm", QuantityFaultKind.UnknownUnit)]
    public void A_bad_length_has_its_reason(string text, QuantityFaultKind reason) =>
        Fault(QuantityReader.Read(text, PlainKinds.Length, Bounds.Positive)).Kind.ShouldBe(reason);

    [Fact]
    public void A_unit_in_the_wrong_case_has_a_nearest_one()
    {
        Fault(QuantityReader.Read("5 a", ElectricKinds.Current, Bounds.Positive)).Nearest.ShouldBe("A");
        Fault(QuantityReader.Read("5 Mm", PlainKinds.Length, Bounds.Positive)).Nearest.ShouldBe("mm");
    }

    [Fact]
    public void Milli_and_mega_are_not_the_same()
    {
        Good(QuantityReader.Read("1 mΩ", ElectricKinds.Resistance, Bounds.Positive)).Ohms.ShouldBe(1e-3);
        Good(QuantityReader.Read("1 MΩ", ElectricKinds.Resistance, Bounds.Positive)).Ohms.ShouldBe(1e6);
    }

    [Theory]
    [InlineData("10.8 .. 15 V", 10.8, 15)]
    [InlineData("10.8..15 V", 10.8, 15)]
    [InlineData("800 mV .. 1.2 V", 0.8, 1.2)]
    [InlineData("12 .. 12 V", 12, 12)]
    public void A_range_takes_one_unit_or_two(string text, double from, double to)
    {
        Range<ElectricPotential> range = Good(QuantityReader.ReadRange(text, ElectricKinds.Voltage, Bounds.Positive));

        range.From.Volts.ShouldBe(from, 1e-12);
        range.To.Volts.ShouldBe(to, 1e-12);
    }

    [Theory]
    [InlineData("15 .. 10 V", QuantityFaultKind.Reversed)]
    [InlineData("15 V", QuantityFaultKind.NotARange)]
    [InlineData("15 ..", QuantityFaultKind.NotANumber)]
    [InlineData(".. 15 V", QuantityFaultKind.NotANumber)]
    [InlineData("10 .. 15", QuantityFaultKind.NoUnit)]
    [InlineData("0 .. 15 V", QuantityFaultKind.Zero)]
    [InlineData("1 .. 2 .. 3 V", QuantityFaultKind.UnknownUnit)]
    public void A_bad_range_has_its_reason(string text, QuantityFaultKind reason) =>
        Fault(QuantityReader.ReadRange(text, ElectricKinds.Voltage, Bounds.Positive)).Kind.ShouldBe(reason);

    [Fact]
    public void A_section_has_two_sides_and_a_box_three()
    {
        Section bar = Good(QuantityReader.ReadSection("20 x 2 mm"));
        bar.Area.SquareMillimeters.ShouldBe(40, 1e-9);
        BoxSize box = Good(QuantityReader.ReadBox("300x190×160 mm"));
        box.Height.Millimeters.ShouldBe(160, 1e-9);
        Good(QuantityReader.ReadSection("1 in x 2 mm")).Width.Millimeters.ShouldBe(25.4, 1e-9);
        Fault(QuantityReader.ReadSection("20 mm")).Kind.ShouldBe(QuantityFaultKind.WrongSides);
        Fault(QuantityReader.ReadSection("20 x 0 mm")).Kind.ShouldBe(QuantityFaultKind.Zero);
        Fault(QuantityReader.ReadBox("300 x 190 mm")).Kind.ShouldBe(QuantityFaultKind.WrongSides);
    }

    [Fact]
    public void Whatever_is_written_the_reader_answers_with_a_value_or_a_fault()
    {
        // Property: no text throws. The letters are those that steer the reader.
        const string Letters = "0123456789.,-+eExX× mVAΩµ°C%/^²\u2212\u2126\0\n";
        Random random = new(20240601);
        for (int i = 0; i < 20_000; i++)
        {
            string text = string.Concat(Enumerable.Range(0, random.Next(12)).Select(_ => Letters[random.Next(Letters.Length)]));
            Should.NotThrow(() => QuantityReader.Read(text, PlainKinds.Length, Bounds.Positive));
            Should.NotThrow(() => QuantityReader.ReadRange(text, PlainKinds.Temperature, Bounds.Any));
            Should.NotThrow(() => QuantityReader.ReadBox(text));
            Should.NotThrow(() => ConductorSizeReader.Read(text));
        }
    }

    [Fact]
    public void Every_unit_is_read_back_by_its_own_symbol()
    {
        foreach (IQuantityKind kind in QuantityKinds.All)
        {
            foreach (string symbol in kind.Symbols)
            {
                QuantityKinds.WithUnit(UnitSpelling.Canonical(symbol)).ShouldNotBeNull(symbol).ShouldBe(kind, symbol);
            }
        }
    }

    internal static T Good<T>(Parsed<T> parsed)
    {
        parsed.Fault.ShouldBeNull();
        return parsed.Value;
    }

    internal static QuantityFault Fault<T>(Parsed<T> parsed) => parsed.Fault.ShouldNotBeNull();
}
