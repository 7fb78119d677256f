using System.Globalization;

namespace WireCheck.Bench;

/// <summary>
/// The whole cold process of a check of the flagship beside a bare .NET program that prints a line, in turn, so that a drift
/// of the machine touches all. The check is published twice: compiled to machine code, as a publish makes it, and on
/// the installed runtime, as the bare program is.
/// </summary>
internal static class StartFigure
{
    private const int Rounds = 15;

    internal static void Print()
    {
        string work = Directory.CreateTempSubdirectory("wirecheck-bench").FullName;
        try
        {
            string source = Path.Combine(Repository.Root, "src", "WireCheck.Cli");
            PublishedProgram native = PublishedProgram.Of(source, Path.Combine(work, "native"), "wirecheck");
            PublishedProgram hosted = PublishedProgram.Of(source, Path.Combine(work, "hosted"), "wirecheck", "PublishAot=false");
            PublishedProgram hello = PublishedProgram.Of(MakeHello(Path.Combine(work, "hello-source")), Path.Combine(work, "hello"), "hello",
                "SelfContained=false", "PublishReadyToRun=true");
            Console.WriteLine(string.Create(CultureInfo.InvariantCulture,
                $"compiled to machine code and on the installed runtime: {SameAnswers.Compare(native, hosted)} answers, all the same"));

            string example = Path.Combine(Repository.Root, "examples", "market-stall-12v.yaml");
            List<double> bare = [];
            List<double> asNative = [];
            List<double> asHosted = [];
            for (int i = 0; i < Rounds; i++)
            {
                bare.Add(Milliseconds(hello.Run()));
                asNative.Add(Milliseconds(native.Run("check", example)));
                asHosted.Add(Milliseconds(hosted.Run("check", example)));
            }

            PrintRatio("compiled to machine code", asNative, bare);
            PrintRatio("on the installed runtime", asHosted, bare);
        }
        finally
        {
            Directory.Delete(work, recursive: true);
        }
    }

    private static void PrintRatio(string how, List<double> check, List<double> bare) =>
        Console.WriteLine(string.Create(CultureInfo.InvariantCulture,
            $"cold check of the flagship, {how}: {Median([.. check.Zip(bare, (c, b) => c / b)]):0.0} times a bare .NET process (at most 5; aim 3): {Median(check):0} ms beside {Median(bare):0} ms, medians of {Rounds}"));

    private static string MakeHello(string folder)
    {
        Directory.CreateDirectory(folder);
        File.WriteAllText(Path.Combine(folder, "hello.csproj"),
            "<Project Sdk=\"Microsoft.NET.Sdk\"><PropertyGroup><OutputType>Exe</OutputType><TargetFramework>net10.0</TargetFramework><InvariantGlobalization>true</InvariantGlobalization></PropertyGroup></Project>");
        File.WriteAllText(Path.Combine(folder, "Program.cs"), "System.Console.WriteLine(\"hello\");");
        return folder;
    }

    private static double Milliseconds(ProgramAnswer run) => run.Code is 0 or 1
        ? run.Took.TotalMilliseconds
        : throw new InvalidOperationException($"a program ended with {run.Code}: {run.Errors}");

    private static double Median(List<double> values) => values.Order().ElementAt(values.Count / 2);
}
