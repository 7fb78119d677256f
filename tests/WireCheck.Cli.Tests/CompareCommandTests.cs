using System.Text.Json;

namespace WireCheck.Cli.Tests;

public sealed class CompareCommandTests : IDisposable
{
    private const string Box = """
        pack: Small box
        language: 1
        surroundings: {ambient: {from: 25 °C, to: 25 °C}}
        defaults:
          conductor: {insulation: pvc-105, ends: crimped-ring}
        cells:
          bank: {part: lfp-prismatic-100ah, series: 4, link_resistance: 0.1 mohm}
        fuses:
          main: {part: class-t, rating: 110 A}
        inverters:
          inverter: {part: inverter-12v-500w}
        conductors:
          w1: {from: bank.+, to: main.1, size: 8 AWG, length: 100 mm}
          w2: {from: main.2, to: inverter.in+, size: 8 AWG, length: 400 mm}
          w3: {from: inverter.in-, to: bank.-, size: 8 AWG, length: 500 mm}

        """;

    private readonly string _folder = Directory.CreateTempSubdirectory("compare-").FullName;

    public CompareCommandTests()
    {
        File.WriteAllText(Path.Combine(_folder, "old.yaml"), Box);
        File.WriteAllText(Path.Combine(_folder, "new.yaml"), Box.Replace("inverter-12v-500w", "inverter-12v-1000w", StringComparison.Ordinal));
    }

    public void Dispose() => Directory.Delete(_folder, recursive: true);

    [Fact]
    public void A_swap_for_the_worse_exits_1_and_tells_what_breaks_first()
    {
        ProgramRun run = ProgramRun.In(_folder, "compare", "old.yaml", "new.yaml");

        run.Code.ShouldBe(1);
        run.Output.ShouldContain("WORSE:");
        run.Output.ShouldContain("First to break\n  1. inverter, by ");
        run.Output.ShouldContain("part inverter-12v-500w → inverter-12v-1000w");
        run.Output.ShouldNotContain("\u001b");
        run.Errors.ShouldBeEmpty();
    }

    [Fact]
    public void The_way_back_and_the_same_file_exit_0()
    {
        ProgramRun back = ProgramRun.In(_folder, "compare", "new.yaml", "old.yaml");
        back.Code.ShouldBe(0);
        back.Output.ShouldContain("NO WORSE:");

        ProgramRun.In(_folder, "compare", "old.yaml", "old.yaml").Code.ShouldBe(0);
    }

    [Fact]
    public void Json_goes_into_a_file_and_the_tolerance_is_as_asked()
    {
        ProgramRun run = ProgramRun.In(_folder, "compare", "old.yaml", "new.yaml", "--format", "json", "--tolerance", "20 %", "--out", "answer.json");

        run.Code.ShouldBe(1);
        run.Output.ShouldBeEmpty();
        using JsonDocument answer = JsonDocument.Parse(File.ReadAllBytes(Path.Combine(_folder, "answer.json")));
        answer.RootElement.GetProperty("tolerance").GetDouble().ShouldBe(0.2);
        answer.RootElement.GetProperty("worse").GetBoolean().ShouldBeTrue();
    }

    [Theory]
    [InlineData("none.yaml:1:1: there is no such file", "compare", "old.yaml", "none.yaml")]
    [InlineData("Required argument missing", "compare", "old.yaml")]
    [InlineData("'some' is no share", "compare", "old.yaml", "new.yaml", "--tolerance", "some")]
    [InlineData("'html' not recognized", "compare", "old.yaml", "new.yaml", "--format", "html")]
    public void A_wrong_use_exits_2(string expected, params string[] arguments)
    {
        ProgramRun run = ProgramRun.In(_folder, arguments);

        run.Code.ShouldBe(2);
        run.Output.ShouldBeEmpty();
        run.Errors.ShouldContain(expected);
        run.ShouldShowNoTrace();
    }
}
