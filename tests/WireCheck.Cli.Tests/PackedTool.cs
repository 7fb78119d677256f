using System.Diagnostics;

namespace WireCheck.Cli.Tests;

/// <summary>What <c>dotnet pack</c> makes, in a folder that is the only source of packages there, and a way to run programs in it.</summary>
public sealed class PackedTool : IDisposable
{
    public PackedTool()
    {
        Pack("WireCheck");
        Pack("WireCheck.Cli");

        // The only source is the folder, so nothing is fetched.
        File.WriteAllText(
            Path.Combine(Folder, "nuget.config"),
            $"<configuration><packageSources><clear/><add key=\"made\" value=\"{Packages}\"/></packageSources></configuration>");
    }

    /// <summary>A folder of its own, gone after the tests.</summary>
    public string Folder { get; } = Directory.CreateTempSubdirectory("wirecheck-package").FullName;

    /// <summary>The packages made.</summary>
    public string Packages => Path.Combine(Folder, "packages");

    public void Dispose() => Directory.Delete(Folder, recursive: true);

    /// <summary>A folder in it, made where it is not there.</summary>
    public string Within(string name) => Directory.CreateDirectory(Path.Combine(Folder, name)).FullName;

    /// <summary>Runs a program in a folder, <paramref name="path"/> before the others that programs are looked for in.</summary>
    internal static (int Exit, string Output, string Error) Run(string folder, string? path, string program, params string[] arguments)
    {
        ProcessStartInfo start = new(program, arguments)
        {
            WorkingDirectory = folder,
            RedirectStandardOutput = true,
            RedirectStandardError = true,
            StandardOutputEncoding = System.Text.Encoding.UTF8,
            StandardErrorEncoding = System.Text.Encoding.UTF8,
        };
        if (path is not null)
        {
            start.Environment["PATH"] = path + Path.PathSeparator + Environment.GetEnvironmentVariable("PATH");
        }

        using Process process = Process.Start(start)!;
        Task<string> errors = process.StandardError.ReadToEndAsync();
        string output = process.StandardOutput.ReadToEnd();
        process.WaitForExit();
        return (process.ExitCode, output, errors.Result);
    }

    /// <summary>The output of a run that must end with 0.</summary>
    internal static string Sound(string folder, string program, params string[] arguments)
    {
        (int exit, string output, string error) = Run(folder, null, program, arguments);
        exit.ShouldBe(0, $"{program} {string.Join(' ', arguments)}: {output}{error}");
        return output;
    }

    /// <summary>Packs what was built with the tests, without building it again.</summary>
    private void Pack(string project)
    {
        // The tests lie in a folder such as bin/Release/net10.0.
        string configuration = new DirectoryInfo(AppContext.BaseDirectory).Parent!.Name;
        Sound(Folder, "dotnet", "pack", Repository.File("src", project), "--no-build", "-c", configuration, "-o", Packages, "-v", "quiet", "-nologo");
    }
}
