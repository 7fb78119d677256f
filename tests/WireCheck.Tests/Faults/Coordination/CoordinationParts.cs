using WireCheck.Description;
using WireCheck.Description.Kinds;
using WireCheck.Knowledge;
using WireCheck.Faults.Coordination;
using WireCheck.Text;

namespace WireCheck.Tests.Faults.Coordination;

/// <summary>Single fuses and conductors read from a description, for the tests of coordination.</summary>
internal static class CoordinationParts
{
    internal static readonly Library Tables = Library.Embedded;

    /// <summary>A fuse, written as in the section <c>fuses</c>: <c>part: blade, rating: 20 A</c>.</summary>
    internal static Fuse Fuse(string values) => Pack($"fuses: {{f: {{{values}}}}}", Wire("6 AWG")).Of<Fuse>().Single();

    /// <summary>A breaker, written as in the section <c>breakers</c>.</summary>
    internal static Fuse Breaker(string values) => Pack($"breakers: {{f: {{{values}}}}}", Wire("6 AWG")).Of<Fuse>().Single();

    /// <summary>A conductor of a size, insulation and metal.</summary>
    internal static Conductor Conductor(string size, string insulation = "pvc-105", string material = "copper") =>
        Pack("fuses: {f: {part: class-t, rating: 60 A}}", Wire(size, insulation, material)).Conductors[0];

    /// <summary>The band at the air of the tests of the standards, 20 to 25 °C.</summary>
    internal static TimeCurrentBand Band(string values, double coldest = 20, double hottest = 20) =>
        TimeCurrentBand.Of(Fuse(values), Tables, coldest, hottest);

    /// <summary>The withstand of a conductor alone in air.</summary>
    internal static ConductorDamage Damage(Conductor conductor, double ambient = 30)
    {
        double rated = Tables.Insulation[conductor.Insulation.Value].RatedCelsius;
        double amps = Tables.Ampacity.Rate(new AmpacityQuestion(
            conductor.Size.Value, Tables.Materials[conductor.Material.Value], rated, ambient, 1)).ShouldNotBeNull().Amps;
        return ConductorDamage.Of(conductor, Tables, amps, ambient);
    }

    private static string Wire(string size, string insulation = "pvc-105", string material = "copper") =>
        $"size: {size}, insulation: {insulation}, material: {material}, length: 100 mm, ends: crimped-ring";

    private static Pack Pack(string section, string wire)
    {
        ProblemList problems = new();
        Pack? pack = PackReader.Read(
            "parts.yaml",
            $$"""
            pack: Parts
            language: 1
            surroundings: {ambient: {from: 20 °C, to: 20 °C} }
            cells: {bank: {part: lfp-prismatic-100ah, series: 4, links: {section: 20 x 2 mm, length: 70 mm } } }
            loads: {lamp: {current: 1 A, window: 10 .. 15 V} }
            {{section}}
            conductors:
              w1: {from: bank.+, to: f.1, {{wire}} }
              w2: {from: f.2, to: lamp.+, {{wire}} }
              w3: {from: lamp.-, to: bank.-, {{wire}} }
            """,
            problems);
        problems.InOrder().Select(p => p.ToString()).ShouldBeEmpty();
        return pack.ShouldNotBeNull();
    }
}
