using WireCheck.Circuit.Wiring;
using WireCheck.States;

namespace WireCheck.Outside.Tests.Charging;

/// <summary>How strings side by side share a current, against worked values of the trade. Standing: plain arithmetic.</summary>
public sealed class StringSharingTests
{
    /// <summary>Strings of 2.5 mΩ, 0.25 mΩ for each step of the bar on either rail, 100 A: share of each string, A.</summary>
    [Theory]
    [InlineData(2, "same-end", new[] { 54.5, 45.5 })]
    [InlineData(2, "diagonal", new[] { 50.0, 50.0 })]
    [InlineData(3, "same-end", new[] { 42.7, 31.3, 26.0 })]
    [InlineData(3, "diagonal", new[] { 34.4, 31.3, 34.4 })]
    [InlineData(4, "same-end", new[] { 38.5, 26.2, 19.2, 16.0 })]
    [InlineData(4, "diagonal", new[] { 27.3, 22.7, 22.7, 27.3 })]
    public void Strings_share_as_worked_by_hand(int strings, string takeOff, double[] amps)
    {
        string text = $$$"""
            pack: Strings side by side
            language: 1
            surroundings: {ambient: {from: 20 °C, to: 20 °C}}
            defaults: {conductor: {material: copper, insulation: pvc-105, ends: crimped-ring}}
            cells:
              bank: {part: lfp-prismatic-100ah, series: 1, parallel: {{{strings}}}, take_off: {{{takeOff}}}, resistance: 2.5 mΩ, resistance_ac: 2.5 mΩ, link_resistance: 0.25 mΩ}
            loads:
              heater: {current: 100 A, window: 2 .. 4 V}
            conductors:
              w1: {from: bank.+, to: heater.+, size: 2/0 AWG, length: 100 mm}
              w2: {from: heater.-, to: bank.-, size: 2/0 AWG, length: 100 mm}
            """;
        SolvedBox box = PackNumbers.Solve("strings.yaml", text).Box.ShouldNotBeNull();
        OperatingPoint point = box.In(Modes.Everything).First(p => p.Corner.Words == "full, lowest resistance");
        WiredBank bank = box.Wiring.Of<WiredBank>().Single();

        for (int i = 0; i < strings; i++)
        {
            (-point.Amps(bank.CellElements[i])).ShouldBe(amps[i], 0.06, $"string {i + 1}");
        }
    }
}
