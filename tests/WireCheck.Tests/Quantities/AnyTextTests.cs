using WireCheck.Quantities;

namespace WireCheck.Tests.Quantities;

public sealed class AnyTextTests
{
    [Fact]
    public void Whatever_is_written_the_reader_answers_with_a_value_or_a_fault()
    {
        // Property: no text throws. The letters are those that steer the reader.
        const string Letters = "0123456789.,-+eExX× mVAΩµ°C%/^²\u2212\u2126\0\n";
        Random random = new(20240601);
        for (int i = 0; i < 20_000; i++)
        {
            string text = string.Concat(Enumerable.Range(0, random.Next(12)).Select(_ => Letters[random.Next(Letters.Length)]));
            Should.NotThrow(() => Read(text), text);
        }
    }

    [Fact]
    public void Every_size_that_is_printed_is_read_back_the_same()
    {
        foreach (int gauge in ConductorSizeReader.Gauges)
        {
            ConductorSize size = new(SizeSystem.Awg, gauge);
            ConductorSizeReader.Read(size.ToString()).Value.ShouldBe(size);
        }
    }

    [Fact]
    public void Milli_and_mega_are_not_the_same()
    {
        QuantityReader.Read("1 mΩ", ElectricKinds.Resistance, Bounds.Positive).Value.Ohms.ShouldBe(1e-3);
        QuantityReader.Read("1 MΩ", ElectricKinds.Resistance, Bounds.Positive).Value.Ohms.ShouldBe(1e6);
        QuantityReader.Read("1 MW", ElectricKinds.Power, Bounds.Positive).Fault!.Kind.ShouldBe(QuantityFaultKind.UnknownUnit);
    }

    private static void Read(string text)
    {
        _ = QuantityReader.Read(text, PlainKinds.Length, Bounds.Positive);
        _ = QuantityReader.ReadRange(text, PlainKinds.Temperature, Bounds.Any);
        _ = QuantityReader.ReadBox(text);
        _ = ConductorSizeReader.Read(text);
    }
}
