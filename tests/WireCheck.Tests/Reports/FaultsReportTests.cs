using System.Text;
using System.Text.Json;
using WireCheck.Numbers;
using WireCheck.Reports.Numbers;
using WireCheck.States;

namespace WireCheck.Tests.Reports;

/// <summary>The two forms in which shorts and single faults are told.</summary>
public sealed class FaultsReportTests
{
    private const string Text = """
        pack: Small box
        language: 1
        surroundings: {ambient: {from: 5 °C, to: 35 °C}, enclosure: {walls: sheet-steel, metal: yes, inside: 300 x 200 x 150 mm, bonded_to: minus}}
        defaults: {conductor: {material: copper, insulation: pvc-105, ends: crimped-ring}}
        cells:
          bank: {part: lfp-prismatic-100ah, series: 4, parallel: 1, links: {section: 20 x 2 mm, length: 70 mm}}
        bms:
          bms: {part: bms-4s-lfp-60a}
        fuses:
          main: {part: class-t, rating: 70 A}
          f-out: {part: blade, rating: 10 A}
        switches:
          master: {part: isolator-100a}
        busbars:
          minus: {section: 20 x 3 mm, length: 80 mm}
        ports:
          inlet: {part: charge-inlet, direction: in}
        vehicles:
          car: {part: vehicle-12v-outlet, at: inlet}
        loads:
          lamp: {power: 20 W, window: 10 .. 15 V}
        conductors:
          w1: {from: bank.+, to: main.1, size: 6 AWG, length: 90 mm}
          w2: {from: main.2, to: master.1, size: 6 AWG, length: 150 mm}
          w3: {from: master.2, to: [f-out.1, inlet.+], size: 10 AWG, length: 300 mm}
          w4: {from: f-out.2, to: lamp.+, size: 14 AWG, length: 800 mm}
          w5: {from: lamp.-, to: minus, size: 14 AWG, length: 900 mm}
          w6: {from: inlet.-, to: minus, size: 10 AWG, length: 300 mm}
          w7: {from: minus, to: bms.P-, size: 6 AWG, length: 150 mm}
          w8: {from: bms.B-, to: bank.-, size: 6 AWG, length: 120 mm}
        """;

    private static readonly SolvedBox Box = PackNumbers.Solve("box.yaml", Text).Box!;

    [Fact]
    public void The_text_is_as_the_golden_file()
    {
        using StringWriter writer = new();
        FaultsText.Write(writer, "Small box", FaultNumbers.Of(Box));
        SingleFaultText.Write(writer, SingleFaultNumbers.Of(Box));
        Golden.ShouldMatch(writer.ToString(), "Reports/Golden/faults.txt");
    }

    [Fact]
    public void The_other_form_is_as_the_golden_file() => Golden.ShouldMatch(Json(), "Reports/Golden/faults.json");

    [Fact]
    public void The_same_box_gives_the_same_bytes() => Json().ShouldBe(Json());

    /// <summary>By hand: wires of 0.7 µH for each metre, and the resistance that voltage and current of the short make.</summary>
    [Fact]
    public void The_time_constant_is_that_of_the_wires_in_the_loop()
    {
        using JsonDocument json = JsonDocument.Parse(Json());
        JsonElement main = json.RootElement.GetProperty("breaking").EnumerateArray().First(d => d.GetProperty("device").GetString() == "main");

        // The highest current through main is that of a short right behind it, straight to the bank's negative: 90 mm of wire.
        double ohms = 14.6 / main.GetProperty("highest_amps").GetDouble();
        main.GetProperty("loop_time_constant").GetDouble().ShouldBe(0.09 * 0.7e-6 / ohms, 0.03 * 0.09 * 0.7e-6 / ohms);
    }

    private static string Json()
    {
        using MemoryStream stream = new();
        FaultsJson.Write(stream, "box.yaml", "Small box", FaultNumbers.Of(Box), SingleFaultNumbers.Of(Box));
        return Encoding.UTF8.GetString(stream.ToArray());
    }
}
