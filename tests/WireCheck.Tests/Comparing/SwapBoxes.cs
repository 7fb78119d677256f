using WireCheck.Comparing;

namespace WireCheck.Tests.Comparing;

/// <summary>A box small enough to reckon by hand, and comparisons of it.</summary>
internal static class SwapBoxes
{
    internal static readonly DateOnly Today = new(2027, 1, 1);

    /// <summary>Four cells, a fuse, three wires of 8 AWG and an inverter; every joint and resistance is given.</summary>
    internal const string Small = """
        pack: Small box
        language: 1
        surroundings: {ambient: {from: 25 °C, to: 25 °C}}
        defaults:
          conductor: {insulation: pvc-105, ends: [{class: crimped-ring, resistance: 0.1 mohm}, {class: crimped-ring, resistance: 0.1 mohm}]}
        cells:
          bank: {part: lfp-prismatic-100ah, series: 4, resistance: 0.5 mohm, link_resistance: 0.1 mohm}
        fuses:
          main: {part: class-t, rating: 110 A, resistance: 0.5 mohm}
        inverters:
          inverter: {part: inverter-12v-500w, power: 500 W, efficiency: 90 %, idle: 0 A}
        conductors:
          w1: {from: bank.+, to: main.1, size: 8 AWG, length: 100 mm}
          w2: {from: main.2, to: inverter.in+, size: 8 AWG, length: 400 mm}
          w3: {from: inverter.in-, to: bank.-, size: 8 AWG, length: 500 mm}
        """;

    /// <summary>The same with an inverter of twice the power.</summary>
    internal static string Large => Small.Replace("power: 500 W", "power: 1000 W", StringComparison.Ordinal);

    internal static BoxDifference Compare(string old, string @new, double tolerance = 0.05)
    {
        (BoxDifference? difference, IReadOnlyList<WireCheck.Text.Problem> problems) = BoxComparison.Compare(
            PackCheck.Standard, new DescriptionText("old.yaml", old, null), new DescriptionText("new.yaml", @new, null), Today, tolerance);
        problems.ShouldBeEmpty();
        return difference.ShouldNotBeNull();
    }

    /// <summary>An example of the tree, and the same with words replaced.</summary>
    internal static BoxDifference Swap(string example, params (string Old, string New)[] replacements)
    {
        string old = File.ReadAllText(Path.Combine(Golden.Root, "examples", example));
        string swapped = old;
        foreach ((string from, string to) in replacements)
        {
            swapped.ShouldContain(from);
            swapped = swapped.Replace(from, to, StringComparison.Ordinal);
        }

        return Compare(old, swapped);
    }
}
