using System.Diagnostics;

namespace WireCheck.Cli.Tests;

public class CompletionTests
{
    [Theory]
    [InlineData("wirecheck ch", "check")]
    [InlineData("wirecheck check --fo", "--format")]
    [InlineData("wirecheck check --format ", "sarif")]
    [InlineData("wirecheck numbers st", "standby")]
    public void The_program_is_asked_what_can_stand_at_the_end_of_a_line(string line, string offered)
    {
        ProgramRun run = ProgramRun.Of($"[suggest:{line.Length}]", line);

        run.Code.ShouldBe(0);
        run.Output.Split('\n', StringSplitOptions.TrimEntries).ShouldContain(offered);
        run.Errors.ShouldBeEmpty();
    }

    [Theory]
    [InlineData("wirecheck numbers st", "standby states")]
    [InlineData("wirecheck check --fail-on d", "danger")]
    [InlineData("wirecheck check no-such-fil", "")]
    public void Bash_is_offered_the_words_that_go_on_as_the_line_does(string line, string offered)
    {
        if (OperatingSystem.IsWindows())
        {
            return;
        }

        string script = Path.Combine(AppContext.BaseDirectory, "Completion", "wirecheck.bash");
        string program = Path.Combine(AppContext.BaseDirectory, "wirecheck.dll");
        string asks = $$"""
            wirecheck() { dotnet '{{program}}' "$@"; }
            source '{{script}}'
            COMP_LINE='{{line}}'; COMP_POINT=${#COMP_LINE}
            read -ra COMP_WORDS <<<"$COMP_LINE"; COMP_CWORD=$((${#COMP_WORDS[@]} - 1))
            _wirecheck
            echo "${COMPREPLY[*]}"
            """;
        using Process bash = Process.Start(new ProcessStartInfo("bash", ["-c", asks]) { RedirectStandardOutput = true })!;

        bash.StandardOutput.ReadToEnd().Trim().ShouldBe(offered);
        bash.WaitForExit();
    }
}
