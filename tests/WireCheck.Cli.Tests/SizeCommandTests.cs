using System.Text.Json;

namespace WireCheck.Cli.Tests;

public sealed class SizeCommandTests : IDisposable
{
    private const string Box = """
        # A heater on a bank, with far more copper than it needs.
        pack: Heater box
        language: 1
        surroundings: {ambient: {from: 5 °C, to: 35 °C}}
        defaults: {conductor: {insulation: pvc-105, ends: crimped-ring}}
        cells:
          bank: {part: lfp-prismatic-100ah, series: 4, link_resistance: 0.1 mohm, clamp: yes, separators: yes, covered: yes, balanced: yes}
        fuses:
          main: {part: class-t,   rating: 60 A}   # what was in the drawer
        loads:
          heater: {power: 120 W}
        conductors:
          w1: {from: bank.+, to: main.1, size: 4 AWG, length: 90 mm}
          w2: {from: main.2, to: heater.+, size: '4 AWG', length: 900 mm} # to the heater
          w3: {from: heater.-, to: bank.-, size: 4 AWG, length: 900 mm}
        modes:
          warming: {draws: {heater: 120 W}, for: 2 h}

        """;

    private readonly string _folder = Directory.CreateTempSubdirectory("size-").FullName;

    public void Dispose() => Directory.Delete(_folder, recursive: true);

    [Fact]
    public void Writing_changes_the_values_and_nothing_else_in_the_file()
    {
        Write("box.yaml", Box);

        ProgramRun told = ProgramRun.In(_folder, "size", "box.yaml", "--format", "json");
        Read("box.yaml").ShouldBe(Box);
        ProgramRun written = ProgramRun.In(_folder, "size", "box.yaml", "--write", "--keep", "w1");

        written.Code.ShouldBeInRange(0, 1);
        JsonElement[] choices = [.. JsonDocument.Parse(told.Output).RootElement.GetProperty("choices").EnumerateArray()];
        string expected = Box
            .Replace("rating: 60 A", $"rating: {Chosen(choices, "main")}", StringComparison.Ordinal)
            .Replace("size: '4 AWG'", $"size: '{Chosen(choices, "w2")}'", StringComparison.Ordinal)
            .Replace("to: bank.-, size: 4 AWG", $"to: bank.-, size: {Chosen(choices, "w3")}", StringComparison.Ordinal);
        Read("box.yaml").ShouldBe(expected);
        expected.ShouldNotBe(Box);
        written.Errors.ShouldBeEmpty();
    }

    [Fact]
    public void Keeping_what_is_not_there_is_wrong_input_and_names_the_nearest()
    {
        Write("box.yaml", Box);

        ProgramRun run = ProgramRun.In(_folder, "size", "box.yaml", "--keep", "w1,heatr");

        run.Code.ShouldBe(2);
        run.Output.ShouldBeEmpty();
        run.Errors.ShouldBe("box.yaml:1:1: there is no part or conductor 'heatr' to keep; did you mean 'heater'?\n");
    }

    [Fact]
    public void A_wrong_description_is_told_and_nothing_is_written()
    {
        Write("box.yaml", "pack: Box\n");

        ProgramRun run = ProgramRun.In(_folder, "size", "box.yaml", "--write");

        run.Code.ShouldBe(2);
        run.Errors.ShouldContain("language");
        run.ShouldShowNoTrace();
        Read("box.yaml").ShouldBe("pack: Box\n");
    }

    [Fact]
    public void A_choice_that_brings_a_danger_is_told_and_not_written()
    {
        // All there is in stock is a fuse that lets more pass than any wire in stock bears; the box as written is better than that.
        string box = Box + "stock: [{size: 6 AWG, length: 5 m}, {part: class-t, ratings: [200 A]}]\n";
        Write("box.yaml", box);

        ProgramRun run = ProgramRun.In(_folder, "size", "box.yaml", "--write");

        run.Code.ShouldBe(1);
        run.Errors.ShouldStartWith("box.yaml:1:1: nothing is written: no choice passes every rule, and this one would bring ");
        run.Errors.ShouldContain("fuse-over-conductor at main");
        run.Output.ShouldContain("200 A");
        Read("box.yaml").ShouldBe(box);
    }

    private static string Chosen(JsonElement[] choices, string part) =>
        choices.First(c => c.GetProperty("part").GetString() == part).GetProperty("chosen").GetString()!;

    private void Write(string name, string text) => File.WriteAllText(Path.Combine(_folder, name), text);

    private string Read(string name) => File.ReadAllText(Path.Combine(_folder, name));
}
