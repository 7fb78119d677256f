using WireCheck.Findings;
using WireCheck.Rules;

namespace WireCheck.Tests.Measured;

/// <summary>What is told of readings of the market stall that a builder may well take.</summary>
public sealed class ReadingVerdictTests
{
    private static readonly string Stall = File.ReadAllText(Path.Combine(Golden.Root, "examples", "market-stall-12v.yaml"));

    [Theory]
    [InlineData("socket.+, socket.-", "13 V")]
    [InlineData("plus, socket.+", "0.13 V")]
    [InlineData("inverter.in+, bank.+", "14 mV")]
    [InlineData("usb.out+, usb.out-", "5 V")]
    public void A_reading_of_the_expected_size_is_no_finding_with_the_probes_either_way_as_long_as_no_minus_is_written(string between, string reads)
    {
        Findings($"{{mode: trading, between: [{between}], reads: {reads}}}").ShouldBeEmpty();
    }

    [Fact]
    public void A_minus_of_the_expected_size_tells_that_probes_or_poles_are_the_other_way_round()
    {
        Finding finding = Findings("{mode: trading, between: [socket.+, socket.-], reads: -13 V}").ShouldHaveSingleItem();

        finding.Severity.ShouldBe(Severity.Fault);
        finding.Message.ShouldStartWith("In trading minus 13 V were read between socket.+ and socket.-;");
        finding.Message.ShouldContain("the probes were held the other way round, or the poles are crossed");
        finding.Mend.ShouldContain("follow both wires back before anything is plugged in");
    }

    [Fact]
    public void A_minus_where_a_minus_is_due_is_no_finding() =>
        Findings("{mode: trading, between: [socket.-, socket.+], reads: -13 V}").ShouldBeEmpty();

    [Theory]
    [InlineData("0 V")]
    [InlineData("4 V")]
    public void A_socket_without_the_voltage_that_is_due_is_a_fault_that_names_what_may_be_open(string reads)
    {
        Finding finding = Findings($"{{mode: trading, between: [socket.+, socket.-], reads: {reads}}}").ShouldHaveSingleItem();

        finding.Severity.ShouldBe(Severity.Fault);
        finding.Message.ShouldContain("What is due does not arrive");
        finding.Message.ShouldContain("On the way lie main, isolator, f-dc, k-dc and f-cool.");
    }

    [Fact]
    public void A_voltage_a_little_below_its_band_stays_advice() =>
        Findings("{mode: trading, between: [socket.+, socket.-], reads: 11.5 V}").ShouldHaveSingleItem().Severity.ShouldBe(Severity.Advice);

    [Theory]
    [InlineData("mains")]
    [InlineData("f-in")]
    [InlineData("bank")]
    public void A_charger_that_gives_less_than_expected_may_be_near_the_end_of_the_charge(string through)
    {
        Finding finding = Findings($"{{mode: overnight, through: {through}, reads: 4 A}}").ShouldHaveSingleItem();

        finding.Severity.ShouldBe(Severity.Advice);
        finding.Message.ShouldContain("That alone is no misfit: near the end of the charge a charger gives less and less");
        finding.Mend.ShouldStartWith("Read again with the bank at about half charge.");
    }

    [Fact]
    public void A_charger_that_gives_more_than_expected_does_not_taper() =>
        Findings("{mode: overnight, through: mains, reads: 14 A}").ShouldHaveSingleItem().Message.ShouldNotContain("near the end of the charge");

    private static IReadOnlyList<Finding> Findings(string reading)
    {
        CheckOutcome outcome = PackCheck.Standard.Check("box.yaml", $"{Stall}\nmeasured:\n  - {reading}\n", new CheckOptions(null, new DateOnly(2026, 6, 1)));
        outcome.Problems.ShouldBeEmpty();
        return outcome.Report!.Findings.Findings;
    }
}
