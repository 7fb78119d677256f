namespace WireCheck.Cli.Tests;

public class ExplainCommandTests
{
    [Theory]
    [InlineData("conductor-over-ampacity", "conductor-over-ampacity (danger, rule set portable-box)")]
    [InlineData("conductor.ampacity", "conductor.ampacity: ")]
    [InlineData("bms-4s-lfp-80a", "bms-4s-lfp-80a (part class of bms)")]
    [InlineData("--list", "portable-box: ")]
    [InlineData("--facts", "")]
    public void What_is_known_is_explained_on_standard_output(string argument, string beginning)
    {
        ProgramRun run = ProgramRun.Of("explain", argument);

        run.Code.ShouldBe(0);
        run.Output.ShouldStartWith(beginning);
        run.Output.ShouldNotContain("\u001b");
        run.Output.Split('\n').ShouldAllBe(line => line.Length <= 100);
        run.Errors.ShouldBeEmpty();
    }

    [Fact]
    public void Two_runs_give_the_same_bytes() =>
        ProgramRun.Of("explain", "--facts").ShouldBe(ProgramRun.Of("explain", "--facts"));
}
