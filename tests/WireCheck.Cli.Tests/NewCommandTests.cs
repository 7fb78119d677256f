namespace WireCheck.Cli.Tests;

public sealed class NewCommandTests : IDisposable
{
    private readonly string _folder = Directory.CreateTempSubdirectory("new-").FullName;

    public void Dispose() => Directory.Delete(_folder, recursive: true);

    [Theory]
    [InlineData("12", "awg")]
    [InlineData("24", "awg")]
    [InlineData("48", "metric")]
    public void From_new_to_a_clean_check_are_two_commands(string volts, string wire)
    {
        ProgramRun made = ProgramRun.In(
            _folder, "new", "box.yaml", "--voltage", volts, "--capacity", "100Ah", "--load", "coolbox=45W", "--usb",
            "--inverter", "300W", "--charge", "mains,solar", "--wire", wire);

        made.Errors.ShouldBeEmpty();
        made.Code.ShouldBe(0);
        made.Output.ShouldBe("Wrote box.yaml. Read it through, change what is not as you build it, then: wirecheck check box.yaml\n");
        ProgramRun check = ProgramRun.In(_folder, "check", "box.yaml", "--fail-on", "advice");
        check.Output.ShouldContain("PASSES: nothing found.");
        check.Code.ShouldBe(0);
    }

    [Fact]
    public void Without_a_file_the_description_goes_to_standard_output()
    {
        ProgramRun run = ProgramRun.In(_folder, "new", "--voltage", "12", "--capacity", "100Ah", "--load", "lamp=10W", "--title", "Lamp box");

        run.Output.ShouldStartWith("# Lamp box: ");
        run.Output.ShouldContain("\npack: \"Lamp box\"\n");
        run.Code.ShouldBe(0);
        Directory.EnumerateFileSystemEntries(_folder).ShouldBeEmpty();
    }

    [Fact]
    public void A_file_that_is_there_is_left_alone_unless_told_otherwise()
    {
        string file = Path.Combine(_folder, "box.yaml");
        File.WriteAllText(file, "mine\n");
        string[] words = ["new", "box.yaml", "--voltage", "12", "--capacity", "100Ah", "--usb"];

        ProgramRun kept = ProgramRun.In(_folder, words);
        File.ReadAllText(file).ShouldBe("mine\n");
        ProgramRun replaced = ProgramRun.In(_folder, [.. words, "--overwrite"]);

        kept.Code.ShouldBe(2);
        kept.Errors.ShouldBe("wirecheck: 'box.yaml' is there already; choose another name, or say --overwrite\n");
        replaced.Code.ShouldBe(0);
        File.ReadAllText(file).ShouldStartWith("# My power box");
    }

    [Fact]
    public void What_cannot_be_built_is_told_with_the_reason_and_nothing_is_written()
    {
        ProgramRun run = ProgramRun.In(_folder, "new", "box.yaml", "--voltage", "12", "--capacity", "280Ah", "--inverter", "2kW");

        run.Code.ShouldBe(1);
        run.Errors.ShouldContain("nothing is written");
        run.Errors.ShouldContain("the library has no BMS of 12 V that carries");
        File.Exists(Path.Combine(_folder, "box.yaml")).ShouldBeFalse();
    }

    [Fact]
    public void Every_wrong_answer_is_told_at_once()
    {
        ProgramRun run = ProgramRun.In(_folder, "new", "box.yaml", "--voltage", "36", "--capacity", "100", "--load", "main=5W", "--charge", "wind");

        run.Code.ShouldBe(2);
        run.Errors.Split('\n', StringSplitOptions.RemoveEmptyEntries).Length.ShouldBe(4);
        run.ShouldShowNoTrace();
    }

    [Fact]
    public void Without_a_terminal_what_is_missing_is_told_and_nothing_waits()
    {
        ProgramRun run = ProgramRun.In(_folder, "new", "box.yaml");

        run.Code.ShouldBe(2);
        run.Errors.ShouldContain("--voltage and --capacity");
    }
}
