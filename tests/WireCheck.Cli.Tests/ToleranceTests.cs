using System.Text.Json;

namespace WireCheck.Cli.Tests;

public sealed class ToleranceTests : IDisposable
{
    private readonly string _folder = Directory.CreateTempSubdirectory("tolerance-").FullName;

    public void Dispose() => Directory.Delete(_folder, recursive: true);

    /// <summary>A heater of 0.2 Ω behind about 6 mΩ; a rule of its own sets the limit of its current.</summary>
    private void Write(string limit)
    {
        File.WriteAllText(Path.Combine(_folder, "box.yaml"), """
            pack: Small box
            language: 1
            surroundings: {ambient: {from: 25 °C, to: 25 °C}}
            rules: [./mine.yaml]
            tolerances: {cell_resistance: 20 %, length: 10 %, joint: 0 %, coil: 0 %}
            cells:
              bank: {part: lfp-prismatic-100ah, series: 4, resistance: 0.5 mohm, resistance_ac: 0.5 mohm, link_resistance: 0.1 mohm}
            loads:
              heater: {resistance: 0.2 ohm}
            defaults:
              conductor: {insulation: pvc-105, ends: [{class: crimped-ring, resistance: 0.1 mohm}, {class: crimped-ring, resistance: 0.1 mohm}]}
            conductors:
              w1: {from: bank.+, to: heater.+, size: 8 AWG, length: 500 mm}
              w2: {from: heater.-, to: bank.-, size: 8 AWG, length: 500 mm}

            """);
        File.WriteAllText(Path.Combine(_folder, "mine.yaml"), $$"""
            - id: too-much
              for: conductor
              severity: fault
              title: Too much current
              require: it.current <= {{limit}}
              says: "{{ "{{ it.id }} carries {{ it.current | amps }}." }}"
              mend: Less.
              why: It is so.
              source: {work: Nobody, standing: from memory}
            """);
    }

    [Fact]
    public void A_margin_that_the_tolerances_eat_is_told_with_the_ends_that_it_takes_and_exits_1()
    {
        // Full, 13.6 V, new and cold: cells 2.0 + links 0.3 + copper 2.102 + joints 0.4 = 4.8 mΩ beside 200 mΩ: 66.4 A. With cells
        // 20 % and lengths 10 % low 4.2 mΩ: 66.60 A; with one of them alone at most 66.54 A.
        Write("66.57");

        ProgramRun plain = ProgramRun.In(_folder, "check", "box.yaml");
        ProgramRun run = ProgramRun.In(_folder, "check", "box.yaml", "--tolerance");

        plain.Code.ShouldBe(0);
        plain.Output.ShouldNotContain("Within tolerances");
        run.Code.ShouldBe(1);
        plain.Output.ShouldContain("PASSES: nothing found.");
        run.Output.ShouldContain("FAULTY: 2 margins lost within tolerances.");
        run.Output.ShouldContain("Within tolerances");
        run.Output.ShouldContain("Solved and judged at 4 corners:");
        string.Join(' ', run.Output.Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries))
            .ShouldContain("too-much. Passes as described, not with cells low, lengths low (1 of 4 corners).");
    }

    [Fact]
    public void A_margin_that_the_tolerances_eat_is_a_result_of_the_interchange_format_and_in_the_verdict_of_json()
    {
        Write("66.57");

        ProgramRun sarif = ProgramRun.In(_folder, "check", "box.yaml", "--tolerance", "--format", "sarif");
        ProgramRun json = ProgramRun.In(_folder, "check", "box.yaml", "--tolerance", "--format", "json");

        JsonElement result = JsonDocument.Parse(sarif.Output).RootElement.GetProperty("runs")[0].GetProperty("results").EnumerateArray().First();
        result.GetProperty("ruleId").GetString().ShouldBe("too-much");
        result.GetProperty("level").GetString().ShouldBe("warning");
        result.GetProperty("message").GetProperty("text").GetString()!.ShouldStartWith("Passes as described, not with cells low, lengths low (1 of 4 corners).");
        JsonDocument.Parse(json.Output).RootElement.GetProperty("verdict").GetString().ShouldBe("faulty");
    }

    [Fact]
    public void A_margin_that_survives_is_told_so_and_json_has_its_shares()
    {
        Write("70");

        ProgramRun run = ProgramRun.In(_folder, "check", "box.yaml", "--tolerance", "--format", "json");

        run.Code.ShouldBe(0);
        JsonElement tolerance = JsonDocument.Parse(run.Output).RootElement.GetProperty("tolerance");
        tolerance.GetProperty("corners").GetInt32().ShouldBe(4);
        tolerance.GetProperty("lost").GetArrayLength().ShouldBe(0);
        JsonElement thinnest = tolerance.GetProperty("thinnest")[0];
        thinnest.GetProperty("worst").GetDouble().ShouldBe(66.6 / 70, 0.002);
        thinnest.GetProperty("worst").GetDouble().ShouldBeGreaterThan(thinnest.GetProperty("described").GetDouble());
        thinnest.GetProperty("corner").GetString().ShouldBe("cells low, lengths low");
    }
}
