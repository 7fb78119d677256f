using WireCheck.Quantities;

namespace WireCheck.Tests.Quantities;

public sealed class ConductorSizeTests
{
    [Theory]
    [InlineData("8 AWG", 8, "8 AWG")]
    [InlineData("8AWG", 8, "8 AWG")]
    [InlineData("8 awg", 8, "8 AWG")]
    [InlineData("24 AWG", 24, "24 AWG")]
    [InlineData("0 AWG", 0, "1/0 AWG")]
    [InlineData("1/0 AWG", 0, "1/0 AWG")]
    [InlineData("2/0", -1, "2/0 AWG")]
    [InlineData("4/0 AWG", -3, "4/0 AWG")]
    public void A_gauge_is_read_and_printed_as_the_trade_writes_it(string text, int number, string printed)
    {
        ConductorSize size = QuantityReaderTests.Good(ConductorSizeReader.Read(text));

        size.ShouldBe(new ConductorSize(SizeSystem.Awg, number));
        size.ToString().ShouldBe(printed);
    }

    [Theory]
    [InlineData("10 mm²", 10, "10 mm²")]
    [InlineData("10mm2", 10, "10 mm²")]
    [InlineData("0.2 mm^2", 0.2, "0.2 mm²")]
    [InlineData("120 mm²", 120, "120 mm²")]
    public void A_section_is_read_and_printed_in_square_millimetres(string text, double section, string printed)
    {
        ConductorSize size = QuantityReaderTests.Good(ConductorSizeReader.Read(text));

        size.ShouldBe(new ConductorSize(SizeSystem.Metric, section));
        size.ToString().ShouldBe(printed);
    }

    [Theory]
    [InlineData("30 AWG", QuantityFaultKind.UnknownSize)]
    [InlineData("5/0 AWG", QuantityFaultKind.UnknownSize)]
    [InlineData("0/0 AWG", QuantityFaultKind.UnknownSize)]
    [InlineData("-2 AWG", QuantityFaultKind.UnknownSize)]
    [InlineData("8.5 AWG", QuantityFaultKind.UnknownSize)]
    [InlineData("AWG", QuantityFaultKind.UnknownSize)]
    [InlineData("500 mm²", QuantityFaultKind.UnknownSize)]
    [InlineData("0 mm²", QuantityFaultKind.UnknownSize)]
    [InlineData("8", QuantityFaultKind.NoUnit)]
    [InlineData("4 mm", QuantityFaultKind.OtherDimension)]
    public void A_size_that_is_not_sold_has_its_reason(string text, QuantityFaultKind reason) =>
        QuantityReaderTests.Fault(ConductorSizeReader.Read(text)).Kind.ShouldBe(reason);

    [Fact]
    public void Every_size_that_is_printed_is_read_back_the_same()
    {
        foreach (int gauge in ConductorSizeReader.Gauges)
        {
            ConductorSize size = new(SizeSystem.Awg, gauge);
            QuantityReaderTests.Good(ConductorSizeReader.Read(size.ToString())).ShouldBe(size);
        }
    }
}
