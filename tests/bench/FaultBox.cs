using System.Globalization;
using System.Text;
using WireCheck.Description;
using WireCheck.Knowledge;

namespace WireCheck.Bench;

/// <summary>
/// A generated box: a bank, a trunk of busbars, and fused branches of four conductors each with a switch, a lamp and its
/// return.
/// </summary>
internal static class FaultBox
{
    /// <summary>Reads the description of a box with at least so many conductors.</summary>
    internal static Pack Make(int conductors)
    {
        const int OnEachBar = 20;
        int branches = (conductors - 4) / 4;
        int bars = ((branches - 1) / OnEachBar) + 1;
        StringBuilder text = new();
        text.Append("pack: Generated\nlanguage: 1\nsurroundings: {ambient: {from: 5 °C, to: 35 °C}}\n");
        text.Append("defaults: {conductor: {material: copper, insulation: pvc-105, ends: crimped-ring}}\n");
        text.Append("cells:\n  bank: {part: lfp-prismatic-100ah, series: 4, parallel: 1, links: {section: 20 x 2 mm, length: 70 mm}}\n");
        Section(text, "fuses", branches, i => FormattableString.Invariant($"f{i}: {{part: blade, rating: {5 * (1 + (i % 4))} A}}"), "main: {part: class-t, rating: 100 A}");
        Section(text, "switches", branches, i => $"s{i}: {{part: panel-rocker}}");
        Section(text, "busbars", 2 * bars, i => $"{(i < bars ? $"p{i}" : $"n{i - bars}")}: {{section: 20 x 3 mm, length: 200 mm}}");
        Section(text, "loads", branches, i => $"l{i}: {{power: 10 W}}");
        text.Append("conductors:\n  w1: {from: bank.+, to: main.1, size: 4 AWG, length: 90 mm}\n");
        text.Append("  w2: {from: main.2, to: p0, size: 4 AWG, length: 200 mm}\n  w3: {from: n0, to: bank.-, size: 4 AWG, length: 300 mm}\n");
        for (int bar = 1; bar < bars; bar++)
        {
            text.Append(CultureInfo.InvariantCulture, $"  t{bar}: {{from: p{(bar - 1) / 2}, to: p{bar}, size: 4 AWG, length: 150 mm}}\n");
            text.Append(CultureInfo.InvariantCulture, $"  u{bar}: {{from: n{bar}, to: n{(bar - 1) / 2}, size: 4 AWG, length: 150 mm}}\n");
        }

        for (int i = 0; i < branches; i++)
        {
            int bar = i / OnEachBar;
            text.Append(CultureInfo.InvariantCulture, $"  a{i}: {{from: p{bar}, to: f{i}.1, size: 14 AWG, length: {100 + (i % 37)} mm}}\n");
            text.Append(CultureInfo.InvariantCulture, $"  b{i}: {{from: f{i}.2, to: s{i}.1, size: 16 AWG, length: {300 + (i % 101)} mm}}\n");
            text.Append(CultureInfo.InvariantCulture, $"  c{i}: {{from: s{i}.2, to: l{i}.+, size: 16 AWG, length: {400 + (i % 53)} mm}}\n");
            text.Append(CultureInfo.InvariantCulture, $"  d{i}: {{from: l{i}.-, to: n{bar}, size: 16 AWG, length: {500 + (i % 71)} mm}}\n");
        }

        return PackReader.Read("generated.yaml", text.ToString(), LibraryClasses.Embedded).Pack
            ?? throw new InvalidOperationException("the generated box does not read: " + string.Join('\n', PackReader.Read("generated.yaml", text.ToString(), LibraryClasses.Embedded).Problems.Take(5)));
    }

    private static void Section(StringBuilder text, string name, int count, Func<int, string> line, string? first = null)
    {
        text.Append(CultureInfo.InvariantCulture, $"{name}:\n");
        if (first is not null)
        {
            text.Append(CultureInfo.InvariantCulture, $"  {first}\n");
        }

        for (int i = 0; i < count; i++)
        {
            text.Append(CultureInfo.InvariantCulture, $"  {line(i)}\n");
        }
    }
}
