using WireCheck.Quantities;

namespace WireCheck.Tests.Quantities;

public sealed class ConductorSizeReaderTests
{
    [Theory]
    [InlineData("8 AWG", SizeSystem.Awg, 8, "8 AWG")]
    [InlineData("8awg", SizeSystem.Awg, 8, "8 AWG")]
    [InlineData("24 AWG", SizeSystem.Awg, 24, "24 AWG")]
    [InlineData("0 AWG", SizeSystem.Awg, 0, "1/0 AWG")]
    [InlineData("1/0 AWG", SizeSystem.Awg, 0, "1/0 AWG")]
    [InlineData("2/0", SizeSystem.Awg, -1, "2/0 AWG")]
    [InlineData("4/0", SizeSystem.Awg, -3, "4/0 AWG")]
    [InlineData("10 mm²", SizeSystem.Metric, 10, "10 mm²")]
    [InlineData("0.75 mm2", SizeSystem.Metric, 0.75, "0.75 mm²")]
    [InlineData("120 mm^2", SizeSystem.Metric, 120, "120 mm²")]
    public void Sizes_are_read_and_written_as_the_trade_does(string text, SizeSystem system, double number, string again)
    {
        ConductorSize size = ConductorSizeReader.Read(text).Value;

        size.ShouldBe(new ConductorSize(system, number));
        size.ToString().ShouldBe(again);
        ConductorSizeReader.Read(again).Value.ShouldBe(size);
    }

    [Theory]
    [InlineData("26 AWG", QuantityFaultKind.UnknownSize)]
    [InlineData("5/0", QuantityFaultKind.UnknownSize)]
    [InlineData("0/0", QuantityFaultKind.UnknownSize)]
    [InlineData("7.5 AWG", QuantityFaultKind.UnknownSize)]
    [InlineData("-1 AWG", QuantityFaultKind.UnknownSize)]
    [InlineData("0.1 mm²", QuantityFaultKind.UnknownSize)]
    [InlineData("150 mm²", QuantityFaultKind.UnknownSize)]
    [InlineData("-10 mm²", QuantityFaultKind.UnknownSize)]
    [InlineData("thick", QuantityFaultKind.UnknownSize)]
    [InlineData("6", QuantityFaultKind.NoUnit)]
    [InlineData("6 mm", QuantityFaultKind.OtherDimension)]
    public void Sizes_that_nobody_sells_are_faults(string text, QuantityFaultKind fault) =>
        ConductorSizeReader.Read(text).Fault!.Kind.ShouldBe(fault);

    [Theory]
    [InlineData("AWG 4", "4 AWG")]
    [InlineData("AWG4", "4 AWG")]
    [InlineData("#4", "4 AWG")]
    [InlineData("# 10 gauge", "10 AWG")]
    [InlineData("8 gauge", "8 AWG")]
    [InlineData("AWG 2/0", "2/0 AWG")]
    [InlineData("AWG 000", "3/0 AWG")]
    [InlineData("00", "2/0")]
    [InlineData("AWG 26", null)]
    [InlineData("AWG thick", null)]
    [InlineData("4", null)]
    public void A_gauge_in_another_spelling_is_answered_with_the_one_to_write(string text, string? offered) =>
        ConductorSizeReader.Read(text).Fault!.Nearest.ShouldBe(offered);
}
