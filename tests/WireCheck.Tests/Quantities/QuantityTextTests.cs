using WireCheck.Quantities;

namespace WireCheck.Tests.Quantities;

public sealed class QuantityTextTests
{
    [Theory]
    [InlineData(12.34, "A", "12.3 A")]
    [InlineData(0.00124, "Ω", "1.24 mΩ")]
    [InlineData(0.09, "m", "90 mm")]
    [InlineData(2.5, "m", "2.5 m")]
    [InlineData(45, "°C", "45 °C")]
    [InlineData(-5.04, "°C", "-5.04 °C")]
    [InlineData(0.032, "", "3.2 %")]
    [InlineData(6000, "A", "6 kA")]
    [InlineData(24019200, "s", "278 days")]
    [InlineData(1200, "s", "20 min")]
    [InlineData(21600, "s", "6 h")]
    [InlineData(0.3, "s", "300 ms")]
    [InlineData(0.00001, "m²", "10 mm²")]
    [InlineData(0, "A", "0 A")]
    [InlineData(0.0004, "F", "400 µF")]
    [InlineData(0.9999, "A", "1 A")]
    public void A_value_is_told_in_three_digits_with_the_unit_a_builder_would_use(double value, string unit, string text) =>
        QuantityText.Of(value, unit).ShouldBe(text);

    [Theory]
    [InlineData(55.02, 55, 4)]
    [InlineData(55.0004, 55, 6)]
    [InlineData(56, 55, 3)]
    [InlineData(55, 55, 3)]
    public void Two_values_that_would_read_alike_get_the_digits_that_tell_them_apart(double one, double other, int digits) =>
        QuantityText.DigitsApart(one, other).ShouldBe(digits);
}
