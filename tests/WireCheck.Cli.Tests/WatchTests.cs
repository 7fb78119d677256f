using System.Diagnostics;
using System.Text;

namespace WireCheck.Cli.Tests;

/// <summary>A real process that watches a file which is written while it runs.</summary>
public sealed class WatchTests : IDisposable
{
    private const string Box = """
        pack: Small box
        language: 1
        surroundings: {ambient: {from: 0 °C, to: 35 °C}}
        rules: [./mine.yaml]
        cells:
          bank: {part: lfp-prismatic-100ah, series: 4, link_resistance: 0.1 mohm}

        """;

    private static readonly TimeSpan Patience = TimeSpan.FromMinutes(3);

    private readonly string _folder = Directory.CreateTempSubdirectory("watch-").FullName;
    private readonly StringBuilder _output = new();

    public void Dispose() => Directory.Delete(_folder, recursive: true);

    [Fact]
    public async Task A_save_of_the_description_or_of_its_rules_is_checked_and_told_and_the_last_code_is_the_exit_code()
    {
        Write("box.yaml", Box);
        Write("mine.yaml", Rule("it.series <= 4"));
        using Process process = Start("check", "box.yaml", "--watch");
        await Until("Watching for saves");
        _output.ToString().ShouldContain("PASSES");

        Write("box.yaml", Box.Replace("series: 4", "series: 8", StringComparison.Ordinal));
        await Until("gained fault bank, line 6: too-many-cells");
        _output.ToString().ShouldContain("FAULTY: box.yaml, 1 fault (before: passes). 1 gained, 0 lost, 0 changed.");

        Write("mine.yaml", Rule("it.series <= 8"));
        await Until("lost fault bank: too-many-cells");

        Write("box.yaml", "pack: [\n");
        await Until("Not checked: what is wrong stands above.");

        // Not the signal of Ctrl-C, which ends it as well: a shell that runs the tests in the background has its children ignore that one.
        using Process kill = Process.Start("kill", ["-TERM", process.Id.ToString(System.Globalization.CultureInfo.InvariantCulture)]);
        process.WaitForExit(Patience).ShouldBeTrue();
        process.ExitCode.ShouldBe(2);
        _output.ToString().ShouldNotContain("\u001b");
    }

    [Fact]
    public void It_writes_text_and_nothing_else()
    {
        Write("box.yaml", Box);

        ProgramRun run = ProgramRun.In(_folder, "check", "box.yaml", "--watch", "--format", "json");

        run.Code.ShouldBe(2);
        run.Errors.ShouldContain("--watch writes text to the terminal");
    }

    private static string Rule(string require) => $"""
        - id: too-many-cells
          for: cells
          severity: fault
          title: Too many cells
          require: {require}
          says: There are too many.
          mend: Take some out.
          why: They are heavy.
          source: {"{work: Nobody, standing: from memory}"}
        """;

    private Process Start(params string[] arguments)
    {
        ProcessStartInfo start = new("dotnet")
        {
            WorkingDirectory = _folder,
            RedirectStandardOutput = true,
            RedirectStandardError = true,
            StandardOutputEncoding = Encoding.UTF8,
        };
        start.ArgumentList.Add(Path.Combine(AppContext.BaseDirectory, "wirecheck.dll"));
        foreach (string argument in arguments)
        {
            start.ArgumentList.Add(argument);
        }

        Process process = Process.Start(start)!;
        process.OutputDataReceived += (_, line) =>
        {
            lock (_output)
            {
                _output.Append(line.Data).Append('\n');
            }
        };
        process.BeginOutputReadLine();
        process.BeginErrorReadLine();
        return process;
    }

    private async Task Until(string words)
    {
        Stopwatch waited = Stopwatch.StartNew();
        while (waited.Elapsed < Patience)
        {
            lock (_output)
            {
                if (_output.ToString().Contains(words, StringComparison.Ordinal))
                {
                    return;
                }
            }

            await Task.Delay(50);
        }

        throw new TimeoutException($"'{words}' was not written; there is:\n{_output}");
    }

    private void Write(string name, string text) => File.WriteAllText(Path.Combine(_folder, name), text);
}
