using System.Globalization;

namespace WireCheck.Bench;

/// <summary>
/// The check of <c>tests/run</c>: publishes the program as machine code, asks it a few questions, and compares each answer with
/// that of the built program on the installed runtime.
/// </summary>
internal static class AnswersCheck
{
    /// <summary>Prints each answer that differs and a last line, <c>N passed, N failed</c>.</summary>
    internal static void Print()
    {
        string source = Path.Combine(Repository.Root, "src", "WireCheck.Cli");
        string work = Directory.CreateTempSubdirectory("wirecheck-answers").FullName;
        try
        {
            PublishedProgram native = PublishedProgram.Of(source, work, "wirecheck");
            PublishedProgram hosted = new("dotnet", Path.Combine(source, "bin", "Release", "net10.0", "wirecheck.dll"));
            List<string[]> questions = [.. new Questions(hosted).Few()];
            IReadOnlyList<string> different = SameAnswers.Differences(native, hosted, questions);
            foreach (string question in different)
            {
                Console.WriteLine($"the published program answers differently: {question}");
            }

            Tell(questions.Count - different.Count, different.Count);
        }
        catch (InvalidOperationException failure)
        {
            Console.WriteLine(failure.Message);
            Tell(0, 1);
        }
        finally
        {
            Directory.Delete(work, recursive: true);
        }
    }

    private static void Tell(int passed, int failed) =>
        Console.WriteLine(string.Create(CultureInfo.InvariantCulture, $"{passed} passed, {failed} failed"));
}
