using System.Globalization;
using System.Text;

namespace WireCheck.Tests.Switching;

/// <summary>
/// Boxes drawn by lot: a bank, switches, relays and resistive loads between rails picked at random. Coils and loads may lie
/// between any two rails, so that lamps feed coils, relays feed themselves and switches stand in series and across each other.
/// </summary>
internal static class GeneratedBox
{
    private const int Rails = 6;

    /// <summary>Draws a description.</summary>
    internal static string Text(Random random)
    {
        StringBuilder text = new("""
            pack: Generated box
            language: 1
            surroundings: {ambient: {from: 20 °C, to: 20 °C}}
            defaults: {conductor: {material: copper, insulation: pvc-105, ends: crimped-ring}}
            cells:
              bank: {part: lfp-prismatic-100ah, series: 4, parallel: 1, links: {section: 20 x 2 mm, length: 70 mm}}
            busbars:

            """);
        for (int rail = 0; rail < Rails; rail++)
        {
            Line(text, $"  r{rail}: {{section: 20 x 3 mm, length: 80 mm}}");
        }

        List<string> wires = ["bank.+, to: r0", "r1, to: bank.-"];
        int switches = random.Next(3, 6);
        text.Append("switches:\n");
        for (int i = 0; i < switches; i++)
        {
            Line(text, $"  s{i}: {{part: panel-rocker}}");
            Between(wires, random, $"s{i}.1", $"s{i}.2", mayShort: false);
        }

        text.Append("relays:\n");
        int relays = random.Next(1, 4);
        for (int i = 0; i < relays; i++)
        {
            Line(text, $"  k{i}: {{part: relay-12v-40a-change-over}}");
            Between(wires, random, $"k{i}.86", $"k{i}.85", mayShort: true);
            Between(wires, random, $"k{i}.30", $"k{i}.87", mayShort: false);
        }

        text.Append("loads:\n");
        int loads = random.Next(3, 7);
        for (int i = 0; i < loads; i++)
        {
            Line(text, $"  l{i}: {{resistance: {random.Next(5, 400)} Ω}}");
            Between(wires, random, $"l{i}.+", $"l{i}.-", mayShort: true);
        }

        text.Append("conductors:\n");
        for (int i = 0; i < wires.Count; i++)
        {
            Line(text, $"  w{i}: {{from: {wires[i]}, size: 14 AWG, length: {random.Next(100, 900)} mm}}");
        }

        return text.ToString();
    }

    private static void Line(StringBuilder text, FormattableString line) =>
        text.Append(line.ToString(CultureInfo.InvariantCulture)).Append('\n');

    /// <summary>Puts two terminals on two rails; what is a mere contact never on both poles of the bank.</summary>
    private static void Between(List<string> wires, Random random, string one, string two, bool mayShort)
    {
        int from;
        int to;
        do
        {
            (from, to) = (random.Next(Rails), random.Next(Rails));
        }
        while (from == to || (!mayShort && from + to == 1));

        wires.Add($"r{from}, to: {one}");
        wires.Add($"{two}, to: r{to}");
    }
}
