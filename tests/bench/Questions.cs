using System.Text.RegularExpressions;

namespace WireCheck.Bench;

/// <summary>
/// What a published program is asked: every command in every format on every example, the tool's templates as a user's own,
/// and every broken description of the tests. The words that <c>numbers</c> and <c>--format</c> take are read from
/// the program's help, so that a new one is asked as soon as there is one.
/// </summary>
/// <param name="program">The program whose help tells the words.</param>
internal sealed partial class Questions(PublishedProgram program)
{
    private static readonly string[] Templates = ["report.txt", "report.md", "report.html"];

    private readonly string[] _formats = Words(program.Run("check", "--help"));
    private readonly string[] _whats = Words(program.Run("numbers", "--help"));

    /// <summary>All of them.</summary>
    internal IEnumerable<string[]> All()
    {
        foreach (string[] question in WithoutExample())
        {
            yield return question;
        }

        foreach (string example in Files("examples"))
        {
            foreach (string[] question in About(example))
            {
                yield return question;
            }
        }

        foreach (string broken in Files("tests", "WireCheck.Tests", "Description", "Broken"))
        {
            yield return ["check", broken];
        }
    }

    /// <summary>Those that reach every library and every writer once: without an example, and on one with findings.</summary>
    internal IEnumerable<string[]> Few() =>
        [.. WithoutExample(), .. About(Example("first-draft-12v.yaml")), ["check", Files("tests", "WireCheck.Tests", "Description", "Broken").First()]];

    private static IEnumerable<string[]> WithoutExample() =>
    [
        ["--help"],
        ["check"],
        ["explain", "--list"],
        ["explain", "--facts"],
        ["explain", "drop-over-percent"],
        ["explain", "lfp-prismatic-100ah"],
        ["explain", "no-such-name"],
    ];

    private IEnumerable<string[]> About(string example)
    {
        foreach (string format in _formats)
        {
            yield return ["check", "--format", format, example];
        }

        foreach ((string template, string format) in Templates.Zip(["text", "markdown", "html"]))
        {
            string file = Path.Combine(Repository.Root, "src", "WireCheck", "Reports", "Templates", template);
            yield return ["check", "--format", format, "--template", file, example];
        }

        foreach (string what in _whats)
        {
            yield return ["numbers", what, example];
            yield return ["numbers", what, "--format", "json", example];
        }
    }

    /// <summary>The first choice of words in a help, printed as <c>&lt;one|other&gt;</c>.</summary>
    private static string[] Words(ProgramAnswer help) => Choice().Match(help.Output) is { Success: true } found
        ? found.Groups[1].Value.Split('|')
        : throw new InvalidOperationException("the help of the program names no choice of words");

    private static string Example(string name) => Path.Combine(Repository.Root, "examples", name);

    private static IEnumerable<string> Files(params string[] folder) =>
        Directory.EnumerateFiles(Path.Combine([Repository.Root, .. folder]), "*.yaml").Order(StringComparer.Ordinal);

    [GeneratedRegex(@"<([a-z-]+(?:\|[a-z-]+)+)>")]
    private static partial Regex Choice();
}
