namespace WireCheck.Tests.Facts.Gather;

/// <summary>Facts of banks.</summary>
public class CellsFactsTests
{
    private static readonly string WithBms = GatheredBox.Plain
        .Replace("fuses:", "bms:\n  bms: {part: bms-4s-lfp-80a}\nfuses:", StringComparison.Ordinal)
        .Replace("w4: {from: lamp.-, to: bank.-,", "w10: {from: bms.B-, to: bank.-, size: 6 AWG, length: 100 mm}\n  w4: {from: lamp.-, to: bms.P-,", StringComparison.Ordinal);

    /// <summary>By hand: 80 A by the BMS, 60 A by the main fuse, through which everything flows.</summary>
    [Fact]
    public void Cells_are_asked_for_no_more_than_the_fuse_on_the_only_way_lets_pass() =>
        GatheredBox.Facts(WithBms).Number("bank", "bms_discharge_per_cell").ShouldBe(60, 1e-9);

    [Theory]
    [InlineData("100 A", 80)]
    [InlineData("70 A", 70)]
    public void The_smaller_of_fuse_and_bms_decides(string rating, double amps) =>
        GatheredBox.Facts(WithBms.Replace("rating: 60 A", "rating: " + rating, StringComparison.Ordinal))
            .Number("bank", "bms_discharge_per_cell").ShouldBe(amps, 1e-9);

    /// <summary>A load before the fuse is not limited by it.</summary>
    [Fact]
    public void A_load_on_a_way_without_a_fuse_leaves_the_bms_alone_to_decide() =>
        GatheredBox.Facts(WithBms.Replace("w3: {from: k1.87,", "w3: {from: bank.+,", StringComparison.Ordinal))
            .Number("bank", "bms_discharge_per_cell").ShouldBe(80, 1e-9);
}
