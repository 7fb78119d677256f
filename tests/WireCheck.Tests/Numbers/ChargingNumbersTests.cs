using System.Globalization;
using System.Text.Json;
using WireCheck.Numbers;
using WireCheck.Reports.Numbers;
using WireCheck.States;
using WireCheck.Tests.Charging;

namespace WireCheck.Tests.Numbers;

/// <summary>The tables of <c>numbers charging</c>.</summary>
public sealed class ChargingNumbersTests
{
    private static SolvedBox Box(string text) => PackNumbers.Solve("box.yaml", text).Box!;

    private static string Text(string description)
    {
        using StringWriter output = new(CultureInfo.InvariantCulture);
        ChargingText.Write(output, "Box", ChargingNumbers.Of(Box(description)));
        return output.ToString();
    }

    [Fact]
    public void Each_source_has_a_row_at_each_corner()
    {
        ChargingNumbers numbers = ChargingNumbers.Of(Box(ChargedBox.Charger("ideal-diode-30a")));

        numbers.Sources.Count.ShouldBe(6);
        numbers.Sources.ShouldAllBe(s => s.Source == "mains" && s.Bank == "bank");
        numbers.Ends.Single().Mode.ShouldBe("charging-mains");
        numbers.Nights.Single().Id.ShouldBe("mains");
    }

    [Fact]
    public void A_panel_behind_a_diode_is_told_to_take_what_leaks_backwards_through_it()
    {
        string text = ChargedBox.Bank + "panels:\n  roof: {part: panel-100w}\ndiodes:\n  blocker: {part: schottky-10a}\nconductors:\n"
            + ChargedBox.Wire("w1", "roof.+", "blocker.A") + ChargedBox.Wire("w3", "blocker.K", "bank.+") + ChargedBox.Wire("w2", "roof.-", "bank.-");

        ChargingNumbers.Of(Box(text)).Nights.Single().Words.ShouldBe("dark; what leaks backwards through the diode between");
    }

    [Fact]
    public void The_curve_of_a_vehicle_runs_from_empty_to_full_with_one_peak()
    {
        ChargingNumbers numbers = ChargingNumbers.Of(Box(ChargedBox.Vehicle("100 mΩ")));

        numbers.Vehicles.Count.ShouldBe(42);
        numbers.Vehicles.Count(v => v.Peak).ShouldBe(1);
        numbers.Vehicles.Select(v => v.StateOfCharge).Distinct().Order().ShouldBe(Enumerable.Range(0, 21).Select(i => i / 20.0));
    }

    [Fact]
    public void The_text_tells_who_limits_and_where_the_peak_is()
    {
        string text = Text(ChargedBox.Vehicle("100 mΩ"));

        text.ShouldContain("resistance of the way");
        text.ShouldContain("36.7 A");
        text.ShouldContain("peak");
        Text(ChargedBox.Bank + "conductors:\n").ShouldContain("Nothing that charges this box is described.");
    }

    [Fact]
    public void The_json_holds_every_table()
    {
        using MemoryStream output = new();
        ChargingJson.Write(output, "box.yaml", "Box", ChargingNumbers.Of(Box(ChargedBox.Charger(null))));
        using JsonDocument json = JsonDocument.Parse(output.ToArray());

        json.RootElement.EnumerateObject().Select(p => p.Name).ShouldBe(
            ["file", "pack", "sources", "ends", "bms_open", "loads", "vehicles", "flows_back", "empty_ports", "panels_cold", "reversed", "joins"]);
        json.RootElement.GetProperty("sources")[0].GetProperty("cell_volts").GetDouble().ShouldBeGreaterThan(3);
    }
}
