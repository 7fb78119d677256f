using System.Diagnostics;

namespace WireCheck.Outside.Tests.Reports;

/// <summary>Runs a program that someone else wrote.</summary>
internal static class Tool
{
    /// <summary>The folder that holds the solution.</summary>
    internal static string Root { get; } = FindRoot();

    /// <summary>The folder with the scripts and the packages of npm.</summary>
    internal static string Browser { get; } = Path.Combine(Root, "tests", "browser");

    /// <summary>Its exit code and what it wrote to both streams.</summary>
    internal static (int Code, string Output, string Errors) Run(string program, params string[] arguments)
    {
        ProcessStartInfo start = new(program) { RedirectStandardOutput = true, RedirectStandardError = true, WorkingDirectory = Browser };
        foreach (string argument in arguments)
        {
            start.ArgumentList.Add(argument);
        }

        using Process process = Process.Start(start)!;
        Task<string> errors = process.StandardError.ReadToEndAsync();
        string output = process.StandardOutput.ReadToEnd();
        process.WaitForExit();
        return (process.ExitCode, output, errors.Result);
    }

    /// <summary>A file of a package that npm installed from the lock file.</summary>
    internal static string Package(string path)
    {
        string file = Path.Combine(Browser, "node_modules", path);
        File.Exists(file).ShouldBeTrue($"{path} is missing; run npm ci in tests/browser, as tests/run does");
        return file;
    }

    private static string FindRoot()
    {
        DirectoryInfo? folder = new(AppContext.BaseDirectory);
        while (folder is not null && !File.Exists(Path.Combine(folder.FullName, "WireCheck.sln")))
        {
            folder = folder.Parent;
        }

        return folder?.FullName ?? throw new InvalidOperationException("the tests do not run inside the source tree");
    }
}
