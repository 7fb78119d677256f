using System.Text.Json;

namespace WireCheck.Cli.Tests;

/// <summary><c>numbers heat</c> and <c>numbers energy</c> as they are run.</summary>
public class NumbersCommandTests
{
    private static readonly string Stall = Path.Combine(Examples(), "market-stall-12v.yaml");

    [Theory]
    [InlineData("heat", "Air in the box after hours", "Conductors, hottest first", "Joints, most heat first")]
    [InlineData("energy", "By the label", "From full until something stops the mode", "From empty to the end of the charge")]
    public void The_text_goes_to_standard_output_and_the_exit_is_0(string what, params string[] headings)
    {
        ProgramRun run = ProgramRun.Of("numbers", what, Stall);

        run.Code.ShouldBe(0);
        run.Errors.ShouldBeEmpty();
        foreach (string heading in headings)
        {
            run.Output.ShouldContain(heading);
        }
    }

    [Theory]
    [InlineData("heat", "conductors")]
    [InlineData("energy", "days")]
    public void The_JSON_is_one_document_and_the_same_each_time(string what, string property)
    {
        ProgramRun run = ProgramRun.Of("numbers", what, Stall, "--format", "json");

        run.Code.ShouldBe(0);
        using JsonDocument json = JsonDocument.Parse(run.Output);
        json.RootElement.GetProperty(property).GetArrayLength().ShouldBeGreaterThan(0);
        json.RootElement.GetProperty("modes").GetArrayLength().ShouldBeGreaterThan(0);
        ProgramRun.Of("numbers", what, Stall, "--format", "json").Output.ShouldBe(run.Output);
    }

    [Fact]
    public void One_mode_stands_alone_and_an_unknown_one_exits_2_with_the_nearest_name()
    {
        ProgramRun one = ProgramRun.Of("numbers", "heat", Stall, "--mode", "trading", "--format", "json");
        one.Code.ShouldBe(0);
        using JsonDocument json = JsonDocument.Parse(one.Output);
        json.RootElement.GetProperty("modes").EnumerateArray().Single().GetProperty("mode").GetString().ShouldBe("trading");

        ProgramRun none = ProgramRun.Of("numbers", "energy", Stall, "--mode", "tradin");
        none.Code.ShouldBe(2);
        none.Output.ShouldBeEmpty();
        none.Errors.ShouldContain("'trading'");
        none.ShouldShowNoTrace();
    }

    private static string Examples()
    {
        DirectoryInfo? folder = new(AppContext.BaseDirectory);
        while (folder is not null && !File.Exists(Path.Combine(folder.FullName, "WireCheck.sln")))
        {
            folder = folder.Parent;
        }

        return Path.Combine(folder!.FullName, "examples");
    }
}
