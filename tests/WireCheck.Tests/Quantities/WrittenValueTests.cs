using WireCheck.Quantities;

namespace WireCheck.Tests.Quantities;

public sealed class WrittenValueTests
{
    [Theory]
    [InlineData("90 mm", "9 cm")]
    [InlineData("10 mm2", "10 mm²")]
    [InlineData("4/0", "4/0 AWG")]
    [InlineData("0.35 mohm", "350 µΩ")]
    [InlineData("10.8 .. 15 V", "10800 mV .. 15.0 V")]
    [InlineData("1 ft", "12 in")]
    [InlineData("95 °F", "35 °C")]
    [InlineData("pvc-105", " pvc-105")]
    public void The_same_value_in_other_words_is_the_same(string left, string right)
    {
        WrittenValue.SameMeaning(left, right).ShouldBeTrue();
        WrittenValue.SameMeaning(right, left).ShouldBeTrue();
    }

    [Theory]
    [InlineData("90 mm", "91 mm")]
    [InlineData("90 mm", "90 m")]
    [InlineData("8 AWG", "8 mm²")]
    [InlineData("5 A", "5 V")]
    [InlineData("1 .. 2 V", "1 .. 3 V")]
    [InlineData("1 .. 2 V", "2 V")]
    [InlineData("red", "black")]
    [InlineData("4", "5")]
    public void Another_value_is_not(string left, string right)
    {
        WrittenValue.SameMeaning(left, right).ShouldBeFalse();
    }

    [Fact]
    public void Two_values_become_numbers_of_the_second_ones_unit()
    {
        WrittenValue.InUnitOf("0.5 kW", "1000 W").ShouldBe((500, 1000, "W"));
        WrittenValue.InUnitOf("1000 W", "0.5 kW").ShouldBe((1, 0.5, "kW"));
        WrittenValue.InUnitOf("5 A", "5 V").ShouldBeNull();
        WrittenValue.InUnitOf("20 °C", "25 °C").ShouldBeNull();
        WrittenValue.InUnitOf("no", "yes").ShouldBeNull();
    }
}
