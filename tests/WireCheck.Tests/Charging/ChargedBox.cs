using WireCheck.Charging;
using WireCheck.Circuit.Topology;
using WireCheck.States;

namespace WireCheck.Tests.Charging;

/// <summary>Small boxes whose resistances are round numbers, so that their currents can be worked by hand.</summary>
internal static class ChargedBox
{
    /// <summary>
    /// Four cells of 1 mΩ with links of 1 mΩ: 7 mΩ. Each conductor has 0.5 mΩ of wire and two ends of 0.25 mΩ: 1 mΩ.
    /// </summary>
    internal const string Bank = """
        pack: Charged box
        language: 1
        surroundings: {ambient: {from: 20 °C, to: 20 °C}}
        defaults:
          conductor:
            material: copper
            insulation: pvc-105
            ends: {class: crimped-ring, resistance: 0.25 mΩ}
        cells:
          bank: {part: lfp-prismatic-100ah, series: 4, parallel: 1, resistance: 1 mΩ, resistance_ac: 1 mΩ, link_resistance: 1 mΩ}

        """;

    /// <summary>One conductor of 1 mΩ.</summary>
    internal static string Wire(string id, string from, string to) =>
        $"  {id}: {{from: {from}, to: {to}, size: 6 AWG, length: 500 mm, resistance: 1 mΩ/m}}\n";

    /// <summary>A vehicle of a given resistance wired straight to the bank.</summary>
    internal static string Vehicle(string resistance) =>
        Bank + $"vehicles:\n  car: {{voltage: 12 .. 14.4 V, resistance: {resistance}, fuse: 30 A}}\nconductors:\n"
        + Wire("w1", "car.+", "bank.+") + Wire("w2", "car.-", "bank.-");

    /// <summary>A mains charger behind a diode of the library, or behind none.</summary>
    internal static string Charger(string? diode, string charger = "mains-14v6-10a")
    {
        string text = Bank + $"chargers:\n  mains: {{part: {charger}}}\n";
        return diode is null
            ? text + "conductors:\n" + Wire("w1", "mains.out+", "bank.+") + Wire("w2", "mains.out-", "bank.-")
            : text + $"diodes:\n  blocker: {{part: {diode}}}\nconductors:\n" + Wire("w1", "mains.out+", "blocker.A")
                + Wire("w3", "blocker.K", "bank.+") + Wire("w2", "mains.out-", "bank.-");
    }

    /// <summary>The study of a box; the text must have no problems.</summary>
    internal static ChargingStudy Study(string text)
    {
        (SolvedBox? box, var problems) = PackNumbers.Solve("box.yaml", text);
        problems.Select(p => p.ToString()).ShouldBeEmpty();
        return new ChargingStudy(box.ShouldNotBeNull(), WiringGraph.Of(box.Wiring));
    }
}
