using System.Diagnostics;

namespace WireCheck.Bench;

/// <summary>A program published into a folder of its own, and its runs.</summary>
/// <param name="file">The executable.</param>
/// <param name="first">What it is always given first, such as the program that a host is to run.</param>
internal sealed class PublishedProgram(string file, params string[] first)
{
    /// <summary>Publishes a project for the machine at hand; nothing is left in the folders of the project.</summary>
    /// <param name="project">Folder of the project.</param>
    /// <param name="work">Folder that receives what is built.</param>
    /// <param name="name">Name of the executable.</param>
    /// <param name="properties">Further properties of the build, each <c>name=value</c>.</param>
    /// <exception cref="InvalidOperationException">The build failed.</exception>
    internal static PublishedProgram Of(string project, string work, string name, params string[] properties)
    {
        string runtime = System.Runtime.InteropServices.RuntimeInformation.RuntimeIdentifier;
        string output = Path.Combine(work, "out");
        List<string> arguments =
        [
            "publish", project, "-c", "Release", "-r", runtime, "--artifacts-path", Path.Combine(work, "built"), "-o", output,
            "-v", "quiet", "-nologo",
        ];
        arguments.AddRange(properties.Select(p => $"-p:{p}"));
        ProgramAnswer said = Start("dotnet", arguments);
        return said.Code == 0
            ? new PublishedProgram(Path.Combine(output, name))
            : throw new InvalidOperationException($"could not publish {project}: {said.Output}{said.Errors}");
    }

    /// <summary>One whole run of the process.</summary>
    internal ProgramAnswer Run(params string[] arguments) => Start(file, [.. first, .. arguments]);

    private static ProgramAnswer Start(string program, IEnumerable<string> arguments)
    {
        long start = Stopwatch.GetTimestamp();
        using Process process = Process.Start(new ProcessStartInfo(program, arguments)
        {
            RedirectStandardOutput = true,
            RedirectStandardError = true,
        })!;
        Task<string> errors = process.StandardError.ReadToEndAsync();
        string output = process.StandardOutput.ReadToEnd();
        process.WaitForExit();
        return new ProgramAnswer(process.ExitCode, output, errors.Result, Stopwatch.GetElapsedTime(start));
    }
}
