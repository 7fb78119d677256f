using System.CommandLine;
using System.Diagnostics;
using WireCheck.Cli.Commands;

namespace WireCheck.Fuzz;

/// <summary>What came of an input.</summary>
/// <param name="Code">Exit code; null when the tool failed.</param>
/// <param name="Seconds">Time it took, s.</param>
/// <param name="Failure">What it did that it must not do; null when all is well.</param>
internal sealed record RunOutcome(int? Code, double Seconds, string? Failure);

/// <summary>
/// Runs <c>check</c> in this process as the program runs it, and judges: an exit code of 0, 1 or 2, soon, and in
/// the memory that this process may take.
/// </summary>
internal sealed class InputRun
{
    /// <summary>Longest an input may take, s.</summary>
    internal const double MostSeconds = 2;

    /// <summary>A machine that does other work as well is asked again before an input counts as slow.</summary>
    private const int Attempts = 3;

    private readonly RootCommand _root = [];
    private readonly string _folder;

    /// <summary>A run in a folder, which need not exist.</summary>
    internal InputRun(string folder)
    {
        _folder = folder;
        _root.Add(CheckCommand.Make(PackCheck.Standard));
    }

    /// <summary>Runs one input; its files stay in the folder until the next.</summary>
    internal RunOutcome Of(FuzzInput input)
    {
        if (Directory.Exists(_folder))
        {
            Directory.Delete(_folder, recursive: true);
        }

        input.WriteTo(_folder);
        string[] arguments =
        [
            "check",
            .. input.Arguments.Select(a => input.Files.ContainsKey(a) ? Path.Combine(_folder, a) : a),
            "--out", Path.Combine(_folder, "answer"), "--today", "2027-01-01",
        ];
        double fastest = double.PositiveInfinity;
        int code = 0;
        for (int attempt = 0; attempt < Attempts && fastest > MostSeconds; attempt++)
        {
            Stopwatch clock = Stopwatch.StartNew();
            try
            {
                code = _root.Parse(arguments).Invoke(new InvocationConfiguration { EnableDefaultExceptionHandler = false });
            }
            catch (Exception failure)
            {
                return new RunOutcome(null, clock.Elapsed.TotalSeconds, failure.ToString());
            }

            fastest = Math.Min(fastest, clock.Elapsed.TotalSeconds);
        }

        string? wrong = code is < 0 or > 2 ? FormattableString.Invariant($"exit code {code}")
            : fastest > MostSeconds ? FormattableString.Invariant($"took {fastest:F1} s at best of {Attempts} times")
            : null;
        return new RunOutcome(code, fastest, wrong);
    }
}
