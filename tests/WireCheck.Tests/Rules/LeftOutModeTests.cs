using WireCheck.Findings;

namespace WireCheck.Tests.Rules;

/// <summary>What heats a box is looked at whether or not the description tells of a mode in which it does.</summary>
public sealed class LeftOutModeTests
{
    [Fact]
    public void A_box_that_overheats_is_found_without_the_mode_in_which_it_does()
    {
        // With all loads at once and the inverter at its rated power it is at least as hot as in any mode that could be described.
        string text = File.ReadAllText(Path.Combine(Golden.Root, "tests", "WireCheck.Tests", "Rules", "Cases", "sealed-box-overheats", "bad.yaml"));
        int modes = text.IndexOf("\nmodes:", StringComparison.Ordinal);
        modes.ShouldBeGreaterThan(0);

        CheckOutcome outcome = PackCheck.Standard.Check("box.yaml", text[..(modes + 1)], new CheckOptions(null, new DateOnly(2027, 1, 1)));

        outcome.Problems.ShouldBeEmpty();
        outcome.Report!.Findings.Findings.ShouldContain(f => f.Rule == "sealed-box-overheats" && f.Message.Contains("everything", StringComparison.Ordinal));
    }
}
