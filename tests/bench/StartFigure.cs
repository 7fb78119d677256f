using System.Diagnostics;
using System.Globalization;

namespace WireCheck.Bench;

/// <summary>
/// The whole cold process of a check of the flagship, published ReadyToRun, beside a bare .NET program that prints a line,
/// published the same way; in turn, so that a drift of the machine touches both.
/// </summary>
internal static class StartFigure
{
    private const int Rounds = 11;

    internal static void Print()
    {
        string work = Directory.CreateTempSubdirectory("wirecheck-bench").FullName;
        try
        {
            string tool = Publish(Path.Combine(Repository.Root, "src", "WireCheck.Cli"), Path.Combine(work, "tool"));
            string hello = Publish(MakeHello(Path.Combine(work, "hello-source")), Path.Combine(work, "hello"));
            string example = Path.Combine(Repository.Root, "examples", "market-stall-12v.yaml");
            List<double> ratios = [];
            List<double> bare = [];
            List<double> check = [];
            for (int i = 0; i < Rounds; i++)
            {
                double a = Run(Path.Combine(hello, "hello"));
                double b = Run(Path.Combine(tool, "wirecheck"), "check", example);
                bare.Add(a);
                check.Add(b);
                ratios.Add(b / a);
            }

            Console.WriteLine(string.Create(CultureInfo.InvariantCulture,
                $"cold check of the flagship: {Median(ratios):0.0} times a bare .NET process (at most 5; aim 3): {Median(check):0} ms beside {Median(bare):0} ms, medians of {Rounds}"));
        }
        finally
        {
            Directory.Delete(work, recursive: true);
        }
    }

    private static string MakeHello(string folder)
    {
        Directory.CreateDirectory(folder);
        File.WriteAllText(Path.Combine(folder, "hello.csproj"),
            "<Project Sdk=\"Microsoft.NET.Sdk\"><PropertyGroup><OutputType>Exe</OutputType><TargetFramework>net10.0</TargetFramework><InvariantGlobalization>true</InvariantGlobalization></PropertyGroup></Project>");
        File.WriteAllText(Path.Combine(folder, "Program.cs"), "System.Console.WriteLine(\"hello\");");
        return folder;
    }

    private static string Publish(string project, string output)
    {
        string runtime = System.Runtime.InteropServices.RuntimeInformation.RuntimeIdentifier;
        using Process process = Process.Start(new ProcessStartInfo("dotnet",
            ["publish", project, "-c", "Release", "-r", runtime, "--self-contained", "false", "-p:PublishReadyToRun=true", "-o", output, "-v", "quiet", "-nologo"])
        {
            RedirectStandardOutput = true,
        })!;
        string said = process.StandardOutput.ReadToEnd();
        process.WaitForExit();
        return process.ExitCode == 0 ? output : throw new InvalidOperationException($"could not publish {project}: {said}");
    }

    private static double Run(string program, params string[] arguments)
    {
        long start = Stopwatch.GetTimestamp();
        using Process process = Process.Start(new ProcessStartInfo(program, arguments) { RedirectStandardOutput = true })!;
        process.StandardOutput.ReadToEnd();
        process.WaitForExit();
        double milliseconds = Stopwatch.GetElapsedTime(start).TotalMilliseconds;
        return process.ExitCode is 0 or 1 ? milliseconds : throw new InvalidOperationException($"{program} ended with {process.ExitCode}");
    }

    private static double Median(List<double> values) => values.Order().ElementAt(values.Count / 2);
}
