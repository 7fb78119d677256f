using System.Text;
using System.Text.Json;
using WireCheck.Numbers;
using WireCheck.Reports.Numbers;
using WireCheck.States;

namespace WireCheck.Tests.Reports;

/// <summary>Heat and energy as text and as JSON against golden files; both forms hold the same.</summary>
public sealed class HeatAndEnergyReportTests
{
    private const string Text = """
        pack: A pump in a box
        language: 1
        surroundings:
          ambient: {from: 5 °C, to: 30 °C}
          enclosure: {walls: plastic, inside: 400 x 300 x 200 mm, vents: none, placing: strapped}
        defaults:
          conductor: {material: copper, insulation: pvc-105, ends: crimped-ring}
        cells:
          bank: {part: lfp-prismatic-100ah, series: 4, parallel: 1, links: {section: 20 x 2 mm, length: 70 mm}}
        fuses:
          main: {part: blade, rating: 30 A}
        ports:
          inlet: {part: charge-inlet-shrouded}
        loads:
          pump: {power: 300 W, duty: 25 %, on_for: 2 min, window: 10 .. 15 V}
        chargers:
          mains: {part: mains-14v6-10a, at: inlet}
        joints:
          j: {between: [main.2, pump.+], kind: bolted}
        conductors:
          w1: {from: bank.+, to: main.1, size: 10 AWG, length: 500 mm}
          w2: {from: pump.-, to: bank.-, size: 10 AWG, length: 500 mm}
          w3: {from: inlet.+, to: main.2, size: 12 AWG, length: 300 mm}
          w4: {from: inlet.-, to: pump.-, size: 12 AWG, length: 300 mm}
        modes:
          watering: {draws: {pump: 300 W}, for: 2 h}
          overnight: {plugged: [mains]}
        """;

    private static readonly SolvedBox Box = PackNumbers.Solve("box.yaml", Text).Box!;

    [Fact]
    public void Heat_as_text()
    {
        using StringWriter writer = new();
        HeatText.Write(writer, "A pump in a box", HeatNumbers.Of(Box));
        Golden.ShouldMatch(writer.ToString(), Path.Combine("Reports", "Golden", "heat.txt"));
    }

    [Fact]
    public void Energy_as_text()
    {
        using StringWriter writer = new();
        EnergyText.Write(writer, "A pump in a box", EnergyNumbers.Of(Box));
        Golden.ShouldMatch(writer.ToString(), Path.Combine("Reports", "Golden", "energy.txt"));
    }

    [Fact]
    public void Heat_as_JSON_holds_what_the_numbers_hold()
    {
        HeatNumbers heat = HeatNumbers.Of(Box);
        string text = Bytes(stream => HeatJson.Write(stream, "box.yaml", "A pump in a box", heat));
        using JsonDocument json = JsonDocument.Parse(text);
        JsonElement root = json.RootElement;

        root.GetProperty("modes").GetArrayLength().ShouldBe(heat.Modes.Count);
        JsonElement[] wires = [.. root.GetProperty("conductors").EnumerateArray()];
        wires.Select(w => w.GetProperty("conductor").GetString()).ShouldBe(heat.Conductors.Select(c => c.Id));
        wires[0].GetProperty("celsius").GetDouble().ShouldBe(heat.Conductors[0].Celsius, 1e-6);
        wires.ShouldContain(w => w.GetProperty("heating_amps").GetDouble() < w.GetProperty("amps").GetDouble() - 1);
        wires[0].GetProperty("time_constant_seconds").GetDouble().ShouldBe(heat.Conductors[0].TimeConstant, 1e-6);
        root.GetProperty("joints").EnumerateArray().Select(j => j.GetProperty("watts").GetDouble()).ShouldBeInOrder(SortDirection.Descending);
        Golden.ShouldMatch(text, Path.Combine("Reports", "Golden", "heat.json"));
    }

    [Fact]
    public void Energy_as_JSON_holds_what_the_numbers_hold()
    {
        EnergyNumbers energy = EnergyNumbers.Of(Box);
        string text = Bytes(stream => EnergyJson.Write(stream, "box.yaml", "A pump in a box", energy));
        using JsonDocument json = JsonDocument.Parse(text);

        JsonElement run = json.RootElement.GetProperty("modes")[0];
        run.GetProperty("mode").GetString().ShouldBe("watering");
        run.GetProperty("seconds").GetDouble().ShouldBe(energy.Modes[0].Run.Seconds, 1e-3);
        run.GetProperty("cell_celsius").GetDouble().ShouldBe(energy.Modes[0].Run.CellCelsius, 1e-6);
        (run.GetProperty("used_joules").GetDouble() + run.GetProperty("lost_joules").GetDouble())
            .ShouldBe(run.GetProperty("given_joules").GetDouble(), 1e-6 * run.GetProperty("given_joules").GetDouble());
        Golden.ShouldMatch(text, Path.Combine("Reports", "Golden", "energy.json"));
    }

    private static string Bytes(Action<Stream> write)
    {
        using MemoryStream stream = new();
        write(stream);
        return Encoding.UTF8.GetString(stream.ToArray());
    }
}
