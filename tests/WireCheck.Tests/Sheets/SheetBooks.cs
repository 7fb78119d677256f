using WireCheck.Sheets;

namespace WireCheck.Tests.Sheets;

/// <summary>Sheets of a small box whose numbers can be worked by hand, and of the examples.</summary>
internal static class SheetBooks
{
    /// <summary>
    /// 4 cells of 0.5 mΩ, links of 0.1 mΩ; 1 m of 8 AWG in two wires with given joints; a load of 0.2 Ω on a port that is ideal.
    /// </summary>
    internal const string Small = """
        pack: Small box
        language: 1
        surroundings: {ambient: {from: 25 °C, to: 25 °C}}
        tolerances: {cell_resistance: 10 %, length: 5 %, joint: 0 %, coil: 0 %, standby: 25 %}
        costs: {currency: EUR, prices: {lfp-prismatic-100ah: 40, main: 7.5, 8 AWG: 3}}
        stock: [{size: 8 AWG, length: 0.7 m}]
        cells:
          bank: {part: lfp-prismatic-100ah, series: 4, resistance: 0.5 mohm, link_resistance: 0.1 mohm}
        fuses:
          main: {part: class-t, rating: 110 A, resistance: 0.5 mohm}
        switches:
          master: {part: isolator-100a, contact_resistance: 0.2 mohm}
        meters:
          gauge: {part: coulomb-meter, standby: 12 mA}
        loads:
          heater: {resistance: 0.2 ohm}
        defaults:
          conductor: {insulation: pvc-105, ends: [{class: crimped-ring, resistance: 0.1 mohm}, {class: crimped-ring, resistance: 0.1 mohm}]}
        conductors:
          w1: {from: bank.+, to: main.1, size: 8 AWG, length: 100 mm, colour: red}
          w2: {from: main.2, to: master.1, size: 8 AWG, length: 100 mm, colour: red}
          w3: {from: master.2, to: heater.+, size: 8 AWG, length: 300 mm, colour: red}
          w4: {from: heater.-, to: bank.-, size: 8 AWG, length: 500 mm, colour: black}
          w5: {from: main.2, to: gauge.+, size: 20 AWG, length: 200 mm, colour: red}
          w6: {from: gauge.-, to: bank.-, size: 20 AWG, length: 200 mm, colour: black}
        modes:
          heating: {closed: [master], draws: {heater: 800 W}}
        """;

    internal static SheetBook OfSmall { get; } = Of("small.yaml", Small);

    internal static SheetBook Of(string file, string text)
    {
        (SheetBook? book, IReadOnlyList<WireCheck.Text.Problem> problems) = BoxSheets.Make(file, text, new CheckOptions(null, new DateOnly(2026, 6, 1)));
        problems.ShouldBeEmpty();
        return book.ShouldNotBeNull();
    }

    internal static SheetBook OfExample(string name) => Of(name, File.ReadAllText(Path.Combine(Golden.Root, "examples", name)));

    internal static Sheet Named(this SheetBook book, string name) => book.All.Single(s => s.Name == name);

    /// <summary>The cell under a heading in the first row whose first cells are these.</summary>
    internal static string Cell(this Sheet sheet, string heading, params string[] begins) =>
        sheet.Rows.First(r => r.Take(begins.Length).SequenceEqual(begins))[sheet.Headings.ToList().IndexOf(heading)];
}
