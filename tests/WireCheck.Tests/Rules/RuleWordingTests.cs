using WireCheck.Findings;

namespace WireCheck.Tests.Rules;

/// <summary>What a finding says follows the box: the same rule must not advise what is there already, nor promise what cannot help.</summary>
public sealed class RuleWordingTests
{
    [Fact]
    public void A_relay_with_an_economiser_is_not_told_to_get_one()
    {
        string plain = Bad("relay-holding-drain");
        string economised = plain.Replace(
            "resistance: 90 Ω, operate: 7 V, release: 1.2 V, max: 16 V, suppression: diode",
            "resistance: 8 Ω, operate: 7 V, release: 1.2 V, max: 16 V, suppression: diode, economiser: {pull_in_current: 1.5 A, for: 100 ms, hold_current: 0.2 A}",
            StringComparison.Ordinal);

        Find(plain, "relay-holding-drain").Mend.ShouldContain("a coil with an economiser");
        Find(economised, "relay-holding-drain").Mend.ShouldBe("Use a latching relay, or one whose economiser holds with less.");
    }

    [Fact]
    public void A_charger_wired_round_the_bms_is_not_said_to_need_its_failure()
    {
        string behind = Bad("bms-alone-stops-overcharge");
        string round = behind.Replace("{from: inlet.-, to: minus.5,", "{from: inlet.-, to: bank.-,", StringComparison.Ordinal);

        Find(behind, "bms-alone-stops-overcharge").Message.ShouldStartWith("If bms fails closed, mains goes on to 14.8 V");
        Find(round, "bms-alone-stops-overcharge").Message.ShouldStartWith("mains charges the cells past bms, which cannot stop it, and goes on to 14.8 V");
    }

    private static string Bad(string rule) => File.ReadAllText(Path.Combine(CaseFolderTests.Folder, rule, "bad.yaml"));

    private static Finding Find(string text, string rule)
    {
        CheckOutcome outcome = PackCheck.Standard.Check("box.yaml", text, new CheckOptions(null, new DateOnly(2027, 1, 1)));
        outcome.Problems.Select(p => p.ToString()).ShouldBeEmpty();
        return outcome.Report!.Findings.Findings.Where(f => f.Rule == rule).ShouldHaveSingleItem();
    }
}
