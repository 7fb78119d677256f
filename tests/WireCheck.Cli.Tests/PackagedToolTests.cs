using System.Diagnostics;

namespace WireCheck.Cli.Tests;

/// <summary>What <c>dotnet pack</c> makes, installed as a user would: from a folder of packages and nothing else.</summary>
public sealed class PackagedToolTests : IDisposable
{
    private readonly string _work = Directory.CreateTempSubdirectory("wirecheck-package").FullName;

    [Fact]
    public void The_tool_installs_from_its_package_into_an_empty_folder_and_checks_an_example()
    {
        string packages = Path.Combine(_work, "packages");
        string tool = Path.Combine(_work, "tool");
        Pack("WireCheck", packages);
        Pack("WireCheck.Cli", packages);
        string[] made = [.. Directory.EnumerateFiles(packages).Select(p => Path.GetFileName(p)).Order(StringComparer.Ordinal)];
        made.Length.ShouldBe(2);
        made.ShouldAllBe(name => name.EndsWith(".nupkg", StringComparison.Ordinal));

        // The only source is the folder, so nothing is fetched.
        string sources = Path.Combine(_work, "nuget.config");
        File.WriteAllText(sources, $"<configuration><packageSources><clear/><add key=\"made\" value=\"{packages}\"/></packageSources></configuration>");
        Run("dotnet", "tool", "install", "WireCheck.Cli", "--tool-path", tool, "--configfile", sources);
        string installed = Path.Combine(tool, OperatingSystem.IsWindows() ? "wirecheck.exe" : "wirecheck");
        string example = Repository.File("examples", "market-stall-12v.yaml");

        string answer = Run(installed, "check", example, "--today", "2027-03-01");

        answer.ShouldBe(ProgramRun.Of("check", example, "--today", "2027-03-01").Output);
        answer.ShouldContain("PASSES");
    }

    public void Dispose() => Directory.Delete(_work, recursive: true);

    /// <summary>Packs what was built with the tests, without building it again.</summary>
    private static void Pack(string project, string packages)
    {
        // The tests lie in a folder such as bin/Release/net10.0.
        string configuration = new DirectoryInfo(AppContext.BaseDirectory).Parent!.Name;
        Run("dotnet", "pack", Repository.File("src", project), "--no-build", "-c", configuration, "-o", packages, "-v", "quiet", "-nologo");
    }

    private static string Run(string program, params string[] arguments)
    {
        using Process process = Process.Start(new ProcessStartInfo(program, arguments)
        {
            RedirectStandardOutput = true,
            RedirectStandardError = true,
            StandardOutputEncoding = System.Text.Encoding.UTF8,
        })!;
        Task<string> errors = process.StandardError.ReadToEndAsync();
        string output = process.StandardOutput.ReadToEnd();
        process.WaitForExit();
        process.ExitCode.ShouldBe(0, $"{program} {string.Join(' ', arguments)}: {output}{errors.Result}");
        return output;
    }
}
