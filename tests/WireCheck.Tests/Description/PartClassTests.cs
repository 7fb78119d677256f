using WireCheck.Description;
using WireCheck.Description.Kinds;
using WireCheck.Text;

namespace WireCheck.Tests.Description;

/// <summary>How a part, the defaults of its kind and its class lie over each other.</summary>
public sealed class PartClassTests
{
    private const string Head = "pack: Box\nlanguage: 1\nsurroundings: {ambient: 0 .. 35 °C}\ncells: {bank: {part: lfp-prismatic-100ah, series: 1}}\n";

    [Fact]
    public void What_is_written_wins_over_defaults_and_defaults_win_over_the_class()
    {
        Pack pack = Read(Head + "defaults: {relay: {coil: {max: 19 V, operate: 9 V}}}\nrelays: {k: {part: relay-12v-40a, coil: {operate: 8 V}}}\n");

        RelayCoil coil = pack.Of<Relay>().Single().Coil;
        (coil.Operate.Value.Volts, coil.Operate.Origin).ShouldBe((8, Origin.Written));
        (coil.Max.Value.Volts, coil.Max.Origin).ShouldBe((19, Origin.Written));
        (coil.Release.Value.Volts, coil.Release.Origin).ShouldBe((1.2, Origin.PartClass));
        coil.Operate.Position.ShouldBe(new Position("box.yaml", 6, 51));
        coil.Release.Position.File.ShouldBe("rules/parts/relays.yaml");
    }

    [Fact]
    public void The_class_itself_may_stand_in_the_defaults()
    {
        Pack pack = Read(Head + "defaults: {fuse: {part: blade}}\nfuses: {a: {rating: 5 A}, b: {part: class-t, rating: 50 A}}\n");

        pack.Of<Fuse>().Select(f => (f.Class.Value, f.ClassName)).ShouldBe([("blade", "blade"), ("class-t", "class-t")]);
    }

    [Fact]
    public void A_current_written_at_a_load_wins_over_the_power_of_its_class()
    {
        Load load = Read(Head + "loads: {lamp: {part: lamp-led-10w, current: 1 A}}\n").Of<Load>().Single();

        load.Current!.Value.Amperes.ShouldBe(1);
        load.Power.ShouldBeNull();
    }

    [Fact]
    public void Copper_and_one_cell_in_parallel_are_assumed_and_told_as_assumed()
    {
        Pack pack = Read(Head + "fuses: {main: {part: blade, rating: 5 A}}\nconductors: {w1: {from: bank.+, to: main.1, size: 10 mm2, length: 1 ft, insulation: pvc-105, ends: direct}}\n");

        Conductor conductor = pack.Conductors.Single();
        (conductor.Material.Value, conductor.Material.Assumed).ShouldBe(("copper", true));
        pack.Of<Cells>().Single().Parallel.Assumed.ShouldBeTrue();
    }

    [Fact]
    public void A_class_that_leads_back_to_itself_is_named_with_its_way()
    {
        Classes loop = new(new() { ["a"] = "{part: b}", ["b"] = "{part: c}", ["c"] = "{part: a}" });

        ReadResult result = PackReader.Read("box.yaml", Head.Replace("part: lfp-prismatic-100ah", "part: a", StringComparison.Ordinal), loop);

        result.Problems.Select(p => p.ToString()).ShouldBe(
            ["c:1:8: bank names a part class that leads back to itself: a > b > c > a"]);
    }

    [Fact]
    public void A_class_may_name_another_and_change_some_of_its_values()
    {
        Classes chain = new(new()
        {
            ["small"] = "{part: base, capacity: 50 Ah, charge: {limit: 25 A}}",
            ["base"] = "{chemistry: lfp, capacity: 100 Ah, resistance: 1 mΩ, window: 2.5 .. 3.65 V, charge: {limit: 50 A, temperature: 0 .. 45 °C}, discharge: {limit: 100 A, temperature: -20 .. 60 °C}, self_discharge: 3 %/month}",
        });

        ReadResult result = PackReader.Read("box.yaml", Head.Replace("part: lfp-prismatic-100ah", "part: small", StringComparison.Ordinal), chain);

        result.Problems.ShouldBeEmpty();
        Cells bank = result.Pack!.Of<Cells>().Single();
        bank.ClassName.ShouldBe("small");
        bank.Capacity.Value.AmpereHours.ShouldBe(50, 1e-9);
        bank.Charge.Limit.Value.Amperes.ShouldBe(25);
        bank.Charge.Temperature.Value.To.DegreesCelsius.ShouldBe(45, 1e-9);
    }

    [Fact]
    public void Every_class_of_the_library_has_only_values_that_the_reader_takes()
    {
        string parts = string.Concat(WireCheck.Knowledge.Library.Embedded.Parts.Sections.Where(s => s != "cells").Select(section =>
            $"{section}:\n" + string.Concat(LibraryClasses.Embedded.Names(section).Select((name, i) =>
                $"  {section}-{i}: {{part: {name}{(section is "fuses" or "breakers" ? ", rating: 5 A" : "")}}}\n"))));
        string cells = string.Concat(LibraryClasses.Embedded.Names("cells").Select((name, i) => $"  bank-{i}: {{part: {name}, series: 1}}\n"));

        ReadResult result = PackReader.Read("box.yaml", Head[..Head.IndexOf("cells", StringComparison.Ordinal)] + "cells:\n" + cells + parts, LibraryClasses.Embedded);

        result.Problems.Select(p => p.ToString()).ShouldBeEmpty();
    }

    private static Pack Read(string text)
    {
        ReadResult result = PackReader.Read("box.yaml", text, LibraryClasses.Embedded);
        result.Problems.Select(p => p.ToString()).ShouldBeEmpty();
        return result.Pack!;
    }

    private sealed class Classes(Dictionary<string, string> texts) : IPartClasses
    {
        public YamlMap? Find(string section, string className) =>
            texts.TryGetValue(className, out string? text) ? YamlReader.ReadMap(className, text, YamlLimits.Default, new ProblemList()) : null;

        public IEnumerable<string> Names(string section) => texts.Keys;

        public IReadOnlyCollection<string> Words(WordTable table) => [];
    }
}
