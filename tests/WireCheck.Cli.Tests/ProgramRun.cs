using System.Diagnostics;
using System.Text;

namespace WireCheck.Cli.Tests;

/// <summary>One run of the built program.</summary>
/// <param name="Code">Exit code.</param>
/// <param name="Output">Standard output.</param>
/// <param name="Errors">Standard error.</param>
internal sealed record ProgramRun(int Code, string Output, string Errors)
{
    /// <summary>Runs the program that the build put beside the tests.</summary>
    internal static ProgramRun Of(params string[] arguments) => In(AppContext.BaseDirectory, arguments);

    /// <summary>Runs the program in a folder.</summary>
    internal static ProgramRun In(string folder, params string[] arguments)
    {
        ProcessStartInfo start = new("dotnet")
        {
            WorkingDirectory = folder,
            RedirectStandardOutput = true,
            RedirectStandardError = true,
            StandardOutputEncoding = Encoding.UTF8,
            StandardErrorEncoding = Encoding.UTF8,
        };
        start.ArgumentList.Add(Path.Combine(AppContext.BaseDirectory, "wirecheck.dll"));
        foreach (string argument in arguments)
        {
            start.ArgumentList.Add(argument);
        }

        using Process process = Process.Start(start)!;
        Task<string> errors = process.StandardError.ReadToEndAsync();
        string output = process.StandardOutput.ReadToEnd();
        process.WaitForExit();
        return new ProgramRun(process.ExitCode, output, errors.Result);
    }

    /// <summary>Nothing that a person cannot use: no stack trace, no type names of the runtime.</summary>
    internal void ShouldShowNoTrace()
    {
        foreach (string text in (string[])[Output, Errors])
        {
            text.ShouldNotContain("   at ");
            text.ShouldNotContain("Exception");
        }
    }
}
