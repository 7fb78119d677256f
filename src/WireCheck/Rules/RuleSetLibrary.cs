using System.Reflection;
using WireCheck.Text;

namespace WireCheck.Rules;

/// <summary>Finds rule sets: those that come with the tool by name, a user's own by a path beside the description.</summary>
public sealed class RuleSetLibrary
{
    private const string Folder = "rules/sets/";
    private const int MostFiles = 100;

    private static readonly Assembly Home = typeof(RuleSetLibrary).Assembly;

    private readonly FactVocabulary _vocabulary;
    private readonly Dictionary<string, RuleSet?> _loaded = new(StringComparer.Ordinal);
    private readonly HashSet<string> _loading = new(StringComparer.Ordinal);

    /// <summary>A library whose rules may name these facts.</summary>
    public RuleSetLibrary(FactVocabulary vocabulary) => _vocabulary = vocabulary;

    /// <summary>The set that judges a description which names none.</summary>
    public const string DefaultSet = "portable-box";

    /// <summary>Names of the sets that come with the tool, in alphabetical order.</summary>
    public static IReadOnlyList<string> Names { get; } =
    [
        .. ResourceNames().Select(name => name[Folder.Length..name.LastIndexOf('/')]).Distinct().Order(StringComparer.Ordinal),
    ];

    /// <summary>
    /// The set of that name, read once; expressions are compiled when first used. Null, with a problem noted
    /// at <paramref name="at"/>, when there is none.
    /// </summary>
    public RuleSet? Find(string name, Position at, ProblemList problems)
    {
        RuleSet? set = FindBuiltIn(name, problems);
        if (set is null)
        {
            problems.Add(at, RuleProblemWords.UnknownSet(name, Names));
        }

        return set;
    }

    /// <summary>
    /// A set of the user's own: a file or a folder of files beside the description. It is checked whole. Null,
    /// with problems noted, when it is not there, lies outside the folder or is wrong.
    /// </summary>
    /// <param name="path">The path as the description writes it.</param>
    /// <param name="folder">Folder of the description.</param>
    /// <param name="at">Where the description names it.</param>
    /// <param name="problems">Receives every problem.</param>
    public RuleSet? FindBeside(string path, string folder, Position at, ProblemList problems)
    {
        if (RuleSetFiles.Read(path, folder, MostFiles, at, problems) is not { } files)
        {
            return null;
        }

        ProblemList found = new();
        RuleSet? set = new RuleSetReader(_vocabulary, name => FindBuiltIn(name, found), found).Read(path, files);
        if (set is not null)
        {
            RuleSetReader.CheckAll(set, found);
        }

        foreach (Problem problem in found.InOrder())
        {
            problems.Add(problem.Position, problem.Message);
        }

        return found.IsEmpty ? set : null;
    }

    /// <summary>True when a description means a path, not a set that comes with the tool.</summary>
    public static bool IsPath(string written) =>
        written.Contains('/', StringComparison.Ordinal)
        || written.Contains('\\', StringComparison.Ordinal)
        || written.StartsWith('.')
        || written.EndsWith(".yaml", StringComparison.OrdinalIgnoreCase)
        || written.EndsWith(".yml", StringComparison.OrdinalIgnoreCase);

    /// <summary>Reads a set that comes with the tool now, so that <see cref="Find"/> has it; one with problems is left for it to tell.</summary>
    internal void Prepare(string name)
    {
        ProblemList problems = new();
        FindBuiltIn(name, problems);
        if (!problems.IsEmpty)
        {
            _loaded.Clear();
        }
    }

    private RuleSet? FindBuiltIn(string name, ProblemList problems)
    {
        if (_loaded.TryGetValue(name, out RuleSet? held))
        {
            return held;
        }

        if (!_loading.Add(name))
        {
            problems.Add(new Position($"{Folder}{name}", 1, 1), RuleProblemWords.ExtendsItself(name));
            return null;
        }

        List<RuleFile> files = [.. ResourceNames().Where(r => r.StartsWith($"{Folder}{name}/", StringComparison.Ordinal)).Select(ReadResource)];
        RuleSet? set = files.Count == 0
            ? null
            : new RuleSetReader(_vocabulary, other => FindBuiltIn(other, problems), problems).Read(name, files);
        _loading.Remove(name);
        return _loaded[name] = set;
    }

    private static IEnumerable<string> ResourceNames() => Home.GetManifestResourceNames()
        .Select(name => name.Replace('\\', '/'))
        .Where(name => name.StartsWith(Folder, StringComparison.Ordinal) && name.LastIndexOf('/') > Folder.Length)
        .Order(StringComparer.Ordinal);

    private static RuleFile ReadResource(string name)
    {
        // The build writes the separators of the machine it ran on into the name.
        string stored = Home.GetManifestResourceNames().First(n => n.Replace('\\', '/') == name);
        using Stream stream = Home.GetManifestResourceStream(stored)!;
        using StreamReader reader = new(stream);
        return new RuleFile(name, reader.ReadToEnd());
    }
}
