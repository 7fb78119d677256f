using WireCheck.Facts;

namespace WireCheck.Tests.Facts.Gather;

/// <summary>Which way round chargers and panels are joined, and what then comes to the cells.</summary>
public sealed class SourcePolarityFactsTests
{
    private static FactTable Box(string panels, string wires) => GatheredBox.Facts($$"""
        pack: Sunny box
        language: 1
        surroundings: {ambient: {from: 20 °C, to: 20 °C} }
        defaults: {conductor: {material: copper, insulation: pvc-105, ends: crimped-ring} }
        cells:
          bank: {part: lfp-prismatic-100ah, series: 4, parallel: 1, link_resistance: 0.1 mΩ}
        chargers:
          controller: {part: solar-controller-10a}
        panels:
        {{panels}}
        conductors:
          w1: {from: bank.-, to: controller.out-, size: 10 AWG, length: 200 mm}
          w2: {from: bank.+, to: controller.out+, size: 10 AWG, length: 200 mm}
        {{wires}}
        """);

    private static string Panel(string id) =>
        $"  {id}: {{ {Points} }}\n";

    private const string Points =
        "open_circuit: 12 V, maximum_power_voltage: 10 V, short_circuit: 2 A, maximum_power_current: 1.8 A, dark_leakage: 1 mA";

    private static string Wire(string id, string from, string to) =>
        $"  {id}: {{from: {from}, to: {to}, size: 12 AWG, length: 300 mm}}\n";

    [Theory]
    [InlineData("+", "-", null, 36)]
    [InlineData("-", "+", "controller", 0)]
    public void Of_two_panels_in_series_the_turned_one_is_named_and_the_controller_gives_no_more_than_they_bring(
        string first, string last, string? backwardsTo, double mostWatts)
    {
        FactTable table = Box(
            Panel("p1") + Panel("p2"),
            Wire("w3", "p1.+", "controller.pv+") + Wire("w4", "p1.-", "p2." + first) + Wire("w5", "p2." + last, "controller.pv-"));

        table.Value("p2", "backwards_to")?.Value.ShouldBe(backwardsTo);
        (table.Value("p2", "backwards_to") is null).ShouldBe(backwardsTo is null);
        table.Value("p1", "backwards_to").ShouldBeNull();
        (table.Number("controller", "current") * 12).ShouldBeLessThanOrEqualTo(mostWatts);
        (table.Number("controller", "current") > 0).ShouldBe(mostWatts > 0);
    }

    [Fact]
    public void A_controller_with_the_cells_at_its_panel_side_gives_them_nothing()
    {
        FactTable right = Box(Panel("p1") + Panel("p2"),
            Wire("w3", "p1.+", "controller.pv+") + Wire("w4", "p1.-", "p2.+") + Wire("w5", "p2.-", "controller.pv-"));
        FactTable swapped = GatheredBox.Facts($$"""
            pack: Swapped box
            language: 1
            surroundings: {ambient: {from: 20 °C, to: 20 °C} }
            defaults: {conductor: {material: copper, insulation: pvc-105, ends: crimped-ring} }
            cells:
              bank: {part: lfp-prismatic-100ah, series: 4, parallel: 1, link_resistance: 0.1 mΩ}
            chargers:
              controller: {part: solar-controller-10a}
            panels:
              p1: { {{Points}} }
            conductors:
              w1: {from: bank.-, to: controller.pv-, size: 10 AWG, length: 200 mm}
              w2: {from: bank.+, to: controller.pv+, size: 10 AWG, length: 200 mm}
              w3: {from: p1.+, to: controller.out+, size: 12 AWG, length: 300 mm}
              w4: {from: p1.-, to: controller.out-, size: 12 AWG, length: 300 mm}
            """);

        right.Number("controller", "most_into_bank").ShouldBeGreaterThan(1);
        swapped.Number("controller", "most_into_bank").ShouldBe(0);
        swapped.Value("controller", "backwards_to").ShouldBeNull();
    }
}
