using WireCheck.Facts;

namespace WireCheck.Tests.Facts.Gather;

/// <summary>Whose cells a BMS feels when two strings stand behind it.</summary>
public sealed class WatchedCellsFactsTests
{
    private static FactTable Box(string bms, string wires) => GatheredBox.Facts($$"""
        pack: Two strings
        language: 1
        surroundings: {ambient: {from: 20 °C, to: 20 °C} }
        defaults: {conductor: {material: copper, insulation: pvc-105, ends: crimped-ring} }
        cells:
          a: {part: lfp-prismatic-100ah, series: 4, parallel: 1, link_resistance: 0.1 mΩ}
          b: {part: lfp-prismatic-100ah, series: 4, parallel: 1, link_resistance: 0.1 mΩ}
        bms:
          m: {part: bms-4s-lfp-100a}
        {{bms}}
        loads:
          lamp: {current: 5 A}
        conductors:
          w1: {from: a.+, to: b.+, size: 4 AWG, length: 100 mm}
          w2: {from: a.-, to: m.B-, size: 4 AWG, length: 100 mm}
          w3: {from: m.P-, to: lamp.-, size: 4 AWG, length: 100 mm}
          w4: {from: b.+, to: lamp.+, size: 4 AWG, length: 100 mm}
        {{wires}}
        """);

    private static string Wire(string from, string to) =>
        $"  {from.Replace('.', '-')}: {{from: {from}, to: {to}, size: 20 AWG, length: 100 mm}}\n";

    private const string Negatives = "  w5: {from: b.-, to: a.-, size: 4 AWG, length: 100 mm}\n";

    [Fact]
    public void One_bms_feels_the_first_string_and_not_the_second()
    {
        FactTable table = Box("", Negatives);

        table.Value("a", "watched_instead").ShouldBeNull();
        table.Value("b", "watched_instead")!.Value.ShouldBe("a");
        table.Value("b", "watching_bms")!.Value.ShouldBe("m");
    }

    [Fact]
    public void Drawn_sense_leads_say_which_string_is_felt()
    {
        FactTable table = Box("", Negatives + Wire("m.s1", "b.t1") + Wire("m.s2", "b.t2") + Wire("m.s3", "b.t3") + Wire("m.s4", "b.+"));

        table.Value("a", "watched_instead")!.Value.ShouldBe("b");
        table.Value("b", "watched_instead").ShouldBeNull();
    }

    [Fact]
    public void Strings_joined_group_by_group_are_felt_together()
    {
        FactTable table = Box("", Negatives + Wire("a.t1", "b.t1") + Wire("a.t2", "b.t2") + Wire("a.t3", "b.t3"));

        table.Value("b", "watched_instead").ShouldBeNull();
    }

    [Fact]
    public void A_bms_to_each_string_feels_both()
    {
        FactTable table = Box(
            "  n: {part: bms-4s-lfp-100a}", "  w5: {from: b.-, to: n.B-, size: 4 AWG, length: 100 mm}\n  w6: {from: n.P-, to: m.P-, size: 4 AWG, length: 100 mm}\n");

        table.Value("a", "watched_instead").ShouldBeNull();
        table.Value("b", "watched_instead").ShouldBeNull();
    }
}
