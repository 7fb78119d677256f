using WireCheck.Circuit.Wiring;
using WireCheck.States;
using WireCheck.Tests.Facts.Gather;

namespace WireCheck.Tests.Charging;

/// <summary>Bare panels in series, side by side and both, before a switch that opens them from the bank.</summary>
public sealed class PanelStringTests
{
    private const string Points =
        "open_circuit: 12 V, maximum_power_voltage: 10 V, short_circuit: 2 A, maximum_power_current: 1.8 A, dark_leakage: 1 mA, open_circuit_rise: 0.4 %";

    private static string Box(int panels, params (string From, string To)[] wires)
    {
        string text = ChargedBox.Bank.Replace("from: 20 °C, to: 20 °C", "from: -15 °C, to: 20 °C", StringComparison.Ordinal)
            + "panels:\n" + string.Concat(Enumerable.Range(1, panels).Select(i => $"  p{i}: {{ {Points} }}\n"))
            + "switches:\n  off: {part: isolator-100a}\nconductors:\n"
            + ChargedBox.Wire("w1", "off.2", "bank.+");
        return text + string.Concat(wires.Select((w, i) => ChargedBox.Wire(FormattableString.Invariant($"w{i + 2}"), w.From, w.To)));
    }

    private static double Frost(string text, string panel)
    {
        SolvedBox box = PackNumbers.Solve("box.yaml", text).Box.ShouldNotBeNull();
        return ChargedBox.Study(text).ColdOf((WiredPanel)box.Wiring[panel]).ColdVolts;
    }

    // 12 V at 25 °C, 0.4 % more for each of the 40 K down to -15 °C: 13.92 V each.
    [Theory]
    [InlineData("p1")]
    [InlineData("p2")]
    [InlineData("p3")]
    public void Three_in_series_add_up_seen_from_each(string panel)
    {
        string text = Box(3, ("p1.+", "off.1"), ("p1.-", "p2.+"), ("p2.-", "p3.+"), ("p3.-", "bank.-"));

        Frost(text, panel).ShouldBe(3 * 13.92, 1e-9);
    }

    [Fact]
    public void Side_by_side_they_do_not()
    {
        string text = Box(2, ("p1.+", "off.1"), ("p2.+", "off.1"), ("p1.-", "bank.-"), ("p2.-", "bank.-"));

        Frost(text, "p1").ShouldBe(13.92, 1e-9);
    }

    [Fact]
    public void Two_strings_of_two_are_as_high_as_one()
    {
        string text = Box(
            4, ("p1.+", "off.1"), ("p1.-", "p2.+"), ("p2.-", "bank.-"), ("p3.+", "off.1"), ("p3.-", "p4.+"), ("p4.-", "bank.-"));

        Frost(text, "p3").ShouldBe(2 * 13.92, 1e-9);
    }

    [Fact]
    public void A_switch_before_them_opens_their_sum_in_frost()
    {
        string text = Box(2, ("p1.+", "off.1"), ("p1.-", "p2.+"), ("p2.-", "bank.-"));

        GatheredBox.Facts(text).Number("off", "open_voltage").ShouldBe(2 * 13.92, 1e-9);
    }
}
