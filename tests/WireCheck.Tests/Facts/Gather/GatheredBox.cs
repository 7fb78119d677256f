using WireCheck.Description;
using WireCheck.Facts;
using WireCheck.Facts.Gather;
using WireCheck.Text;

namespace WireCheck.Tests.Facts.Gather;

/// <summary>Reads, solves and gathers a small box written in a test.</summary>
internal static class GatheredBox
{
    /// <summary>Ten amperes of load behind a switch and a relay on a bank of four cells, with a meter ahead of the switch.</summary>
    internal const string Plain = """
        pack: Small box
        language: 1
        surroundings: {ambient: {from: 20 °C, to: 20 °C}}
        defaults: {conductor: {material: copper, insulation: pvc-105, ends: crimped-ring}}
        cells:
          bank: {part: lfp-prismatic-100ah, series: 4, parallel: 1, self_discharge: 3 %/month, links: {section: 20 x 2 mm, length: 70 mm}}
        fuses:
          main: {part: class-t, rating: 60 A}
        switches:
          master: {part: panel-rocker}
        relays:
          k1: {part: relay-12v-40a}
        meters:
          gauge: {part: coulomb-meter, standby: 12 mA}
        loads:
          lamp: {current: 10 A, window: 10 .. 15 V}
        conductors:
          w1: {from: bank.+, to: main.1, size: 6 AWG, length: 100 mm}
          w2: {from: main.2, to: k1.30, size: 6 AWG, length: 200 mm}
          w3: {from: k1.87, to: lamp.+, size: 10 AWG, length: 500 mm}
          w4: {from: lamp.-, to: bank.-, size: 10 AWG, length: 500 mm}
          w5: {from: main.2, to: master.1, size: 18 AWG, length: 200 mm}
          w6: {from: master.2, to: k1.86, size: 18 AWG, length: 200 mm}
          w7: {from: k1.85, to: bank.-, size: 18 AWG, length: 200 mm}
          w8: {from: main.2, to: gauge.+, size: 18 AWG, length: 200 mm}
          w9: {from: gauge.-, to: bank.-, size: 18 AWG, length: 200 mm}
        """;

    /// <summary>The facts of a box; the text must have no problems.</summary>
    internal static FactTable Facts(string text)
    {
        ProblemList problems = new();
        Pack? pack = PackReader.Read("box.yaml", text, problems);
        problems.InOrder().Select(p => p.ToString()).ShouldBeEmpty();
        return BoxFacts.Gather(pack.ShouldNotBeNull());
    }

    /// <summary>The number of a fact.</summary>
    internal static double Number(this FactTable table, string id, string fact) =>
        (double)table.Value(id, fact).ShouldNotBeNull($"{id}.{fact}").Value;

    /// <summary>A fact of a part, of the pack under "pack", or null.</summary>
    internal static FactValue? Value(this FactTable table, string id, string fact) =>
        (id == "pack" ? table.Pack : table.Subjects.First(s => s.Id == id)).Find(fact);
}
