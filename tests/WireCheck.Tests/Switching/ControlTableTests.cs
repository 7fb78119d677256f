using System.Globalization;
using System.Text;
using WireCheck.Reports.Numbers;
using WireCheck.Switching;

namespace WireCheck.Tests.Switching;

/// <summary>The control tables of the four examples: each whole as a golden file, and what matters most line by line.</summary>
public sealed class ControlTableTests
{
    [Theory]
    [InlineData("market-stall-12v")]
    [InlineData("first-draft-12v")]
    [InlineData("pump-house-24v")]
    [InlineData("bicycle-workshop-48v")]
    public void The_control_table_of_an_example_stands_line_by_line(string name)
    {
        SwitchingStudy study = StudiedBox.Of(StudiedBox.Example(name));
        using StringWriter words = new(CultureInfo.InvariantCulture);
        StatesText.Write(words, name, study);
        Golden.ShouldMatch(words.ToString(), $"Switching/Golden/{name}.txt");
        using MemoryStream json = new();
        StatesJson.Write(json, name + ".yaml", name, study);
        Golden.ShouldMatch(Encoding.UTF8.GetString(json.ToArray()), $"Switching/Golden/{name}.json");
    }

    /// <summary>No current flows to an enable terminal; its switch lies in no loop and decides all the same.</summary>
    [Fact]
    public void A_switch_on_an_enable_terminal_kills_what_the_converter_feeds()
    {
        ControlTable table = StudiedBox.Of("""
            pack: Enable terminal
            language: 1
            surroundings: {ambient: {from: 20 °C, to: 20 °C}}
            defaults: {conductor: {material: copper, insulation: pvc-105, ends: crimped-ring}}
            cells:
              bank: {part: lfp-prismatic-100ah, series: 4, parallel: 1, links: {section: 20 x 2 mm, length: 70 mm}}
            switches:
              key: {part: panel-rocker}
              other: {part: panel-rocker}
            converters:
              conv: {part: dcdc-12v-12v-10a}
            loads:
              lamp: {current: 2 A, window: 9 .. 16 V}
            conductors:
              w1: {from: bank.+, to: conv.in+, size: 12 AWG, length: 300 mm}
              w2: {from: conv.in-, to: bank.-, size: 12 AWG, length: 300 mm}
              w3: {from: bank.+, to: key.1, size: 16 AWG, length: 300 mm}
              w4: {from: key.2, to: conv.enable, size: 16 AWG, length: 300 mm}
              w5: {from: conv.out+, to: lamp.+, size: 14 AWG, length: 300 mm}
              w6: {from: lamp.-, to: conv.out-, size: 14 AWG, length: 300 mm}
              w7: {from: bank.+, to: other.1, size: 16 AWG, length: 300 mm}
              w8: {from: other.2, to: conv.enable, size: 16 AWG, length: 300 mm}
            """).Unplugged;

        ControlRow lamp = table.Row("lamp").ShouldNotBeNull();
        lamp.WithAllOpen.ShouldBeFalse();
        lamp.LiveStates.ShouldBe(3);
        lamp.LiveWhen.ShouldNotBeNull().Select(t => string.Join('+', t.Closed)).ShouldBe(["key", "other"]);
    }
}
