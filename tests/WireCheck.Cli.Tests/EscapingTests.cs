using System.Text.Json;

namespace WireCheck.Cli.Tests;

/// <summary>
/// What a description says in its own words (its title, a colour, why something is accepted) through every command that prints
/// it, in every format: a terminal, a browser, a pull request and a reader of JSON get letters, and nothing that acts.
/// </summary>
public sealed class EscapingTests : IDisposable
{
    /// <summary>As double-quoted YAML: tags, Markdown, a terminal's escape, a bell, turned reading order, a line of its own.</summary>
    private const string Words = @"</script><img src=x onerror=alert(1)> [a](javascript:b) `c` **d** \e[31m\e]0;t\a\u202Egnp\u2066\u200F \x9b2J | = 1\n# e";

    private readonly string _folder = Directory.CreateTempSubdirectory("escaping-").FullName;

    public EscapingTests()
    {
        string box = $$"""
            pack: "{{Words}}"
            language: 1
            surroundings: {ambient: {from: 5 °C, to: 35 °C} }
            defaults: {conductor: {insulation: pvc-105, ends: crimped-ring} }
            cells:
              bank: {part: lfp-prismatic-100ah, series: 4, link_resistance: 0.1 mohm, clamp: yes, separators: yes, covered: yes, balanced: yes}
            fuses:
              main: {part: class-t, rating: 60 A}
            loads:
              heater: {power: 120 W}
            conductors:
              w1: {from: bank.+, to: main.1, size: 4 AWG, length: 90 mm, colour: "{{Words}}"}
              w2: {from: main.2, to: heater.+, size: 4 AWG, length: 900 mm}
              w3: {from: heater.-, to: bank.-, size: 4 AWG, length: 900 mm}
            settings: {drop_limit: {value: 5 %, because: "{{Words}}"} }
            waivers: [{rule: bank-without-bms, part: bank, because: "{{Words}}"}]
            modes:
              warming: {draws: {heater: 120 W}, for: 2 h}

            """;
        File.WriteAllText(Path.Combine(_folder, "box.yaml"), box);
        File.WriteAllText(Path.Combine(_folder, "new.yaml"), box.Replace("120 W", "200 W", StringComparison.Ordinal));
    }

    public void Dispose() => Directory.Delete(_folder, recursive: true);

    [Theory]
    [InlineData("check box.yaml --format text")]
    [InlineData("check box.yaml --format markdown")]
    [InlineData("check box.yaml --format html")]
    [InlineData("check box.yaml --format json")]
    [InlineData("check box.yaml --format sarif")]
    [InlineData("compare box.yaml new.yaml --format text")]
    [InlineData("compare box.yaml new.yaml --format markdown")]
    [InlineData("compare box.yaml new.yaml --format json")]
    [InlineData("sheets box.yaml --format markdown")]
    [InlineData("sheets box.yaml --format html")]
    [InlineData("sheets box.yaml --sheet cut-list --format csv")]
    [InlineData("numbers modes box.yaml --format text")]
    [InlineData("numbers modes box.yaml --format json")]
    [InlineData("size box.yaml --format text")]
    [InlineData("size box.yaml --format json")]
    public void Words_of_a_description_act_nowhere(string command)
    {
        ProgramRun run = ProgramRun.In(_folder, command.Split(' '));

        run.Code.ShouldBeInRange(0, 1, run.Errors);
        string format = command.Split(' ')[^1];
        string told = format == "csv" ? run.Output.Replace("\r\n", "\n", StringComparison.Ordinal) : run.Output;
        foreach (char c in told + run.Errors)
        {
            (c is '\n' or '\t' || !(char.IsControl(c) || c is '\u202E' or '\u2066' or '\u200F')).ShouldBeTrue($"U+{(int)c:X4}");
        }

        switch (format)
        {
            case "json" or "sarif":
                JsonDocument.Parse(run.Output).RootElement.ValueKind.ShouldBe(JsonValueKind.Object);
                break;
            case "html":
                run.Output.ShouldNotContain("<img");
                run.Output.ShouldNotContain("</script>");
                run.Output.ShouldContain("&lt;img");
                break;
            case "markdown":
                run.Output.ShouldNotContain("<img");
                run.Output.ShouldNotContain(" [a](javascript");
                run.Output.ShouldNotContain("\n# e");
                break;
            default:
                run.Output.ShouldNotContain("\n# e");
                break;
        }
    }
}
