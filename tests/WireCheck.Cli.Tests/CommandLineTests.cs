namespace WireCheck.Cli.Tests;

public class CommandLineTests
{
    [Fact]
    public void The_version_is_a_line_of_its_own()
    {
        ProgramRun run = ProgramRun.Of("--version");

        run.Code.ShouldBe(0);
        run.Output.Trim().ShouldMatch("^[0-9]+\\.[0-9]+\\.[0-9]+$");
        run.Errors.ShouldBeEmpty();
    }

    [Fact]
    public void Help_goes_to_standard_output()
    {
        ProgramRun run = ProgramRun.Of("--help");

        run.Code.ShouldBe(0);
        run.Output.ShouldContain("explain");
        run.Errors.ShouldBeEmpty();
    }

    [Theory]
    [InlineData("wirecheck: nothing was asked. Judge a description: wirecheck check box.yaml.")]
    [InlineData("wirecheck: Unrecognized command or argument 'chek'.", "chek", "box.yaml")]
    [InlineData("wirecheck: give one of a name, --list or --facts", "explain")]
    [InlineData("wirecheck: give one of a name, --list or --facts", "explain", "--list", "--facts")]
    [InlineData("wirecheck: 'conductor-over-ampacit' is no rule, fact or part class; did you mean 'conductor-over-ampacity'?", "explain", "conductor-over-ampacit")]
    [InlineData("wirecheck: '\\u{1b}[2J' is no rule, fact or part class", "explain", "\u001b[2J")]
    [InlineData("wirecheck: '--colour' is no option of explain", "explain", "--list", "--colour")]
    [InlineData("wirecheck: '--fact' is no option of explain; did you mean '--facts'?", "explain", "--fact")]
    public void A_wrong_command_line_exits_2_with_a_line_on_standard_error(string expected, params string[] arguments)
    {
        ProgramRun run = ProgramRun.Of(arguments);

        run.Code.ShouldBe(2);
        run.Output.ShouldBeEmpty();
        run.Errors.ShouldContain(expected);
        run.ShouldShowNoTrace();
    }
}
