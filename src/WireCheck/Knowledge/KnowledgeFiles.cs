using System.Reflection;
using WireCheck.Text;

namespace WireCheck.Knowledge;

/// <summary>Texts of the tool's own tables and part classes, by names such as <c>rules/tables/insulation.yaml</c>.</summary>
internal sealed class KnowledgeFiles
{
    private static readonly Assembly Home = typeof(KnowledgeFiles).Assembly;

    private readonly Dictionary<string, Func<string>> _texts;

    private KnowledgeFiles(Dictionary<string, Func<string>> texts) => _texts = texts;

    /// <summary>The files that are built into the tool.</summary>
    internal static KnowledgeFiles Embedded()
    {
        Dictionary<string, Func<string>> texts = new(StringComparer.Ordinal);
        foreach (string stored in Home.GetManifestResourceNames())
        {
            // The build writes the separators of the machine it ran on into the name.
            texts[stored.Replace('\\', '/')] = () => ReadResource(stored);
        }

        return new KnowledgeFiles(texts);
    }

    /// <summary>Files given as texts, for tests; what is not given is taken from the tool.</summary>
    internal static KnowledgeFiles With(IReadOnlyDictionary<string, string> given)
    {
        KnowledgeFiles files = Embedded();
        foreach ((string name, string text) in given)
        {
            files._texts[name] = () => text;
        }

        return files;
    }

    /// <summary>Names of the files of a folder, in alphabetical order.</summary>
    internal IReadOnlyList<string> In(string folder) =>
        [.. _texts.Keys.Where(name => name.StartsWith(folder, StringComparison.Ordinal)).Order(StringComparer.Ordinal)];

    internal bool Has(string name) => _texts.ContainsKey(name);

    /// <summary>Reads a file into its mapping.</summary>
    /// <exception cref="KnowledgeException">The file is not there or is no mapping.</exception>
    internal TableNode Read(string name)
    {
        if (!_texts.TryGetValue(name, out Func<string>? text))
        {
            throw new KnowledgeException($"{name}: no such file in the tool");
        }

        ProblemList problems = new();
        YamlMap? map = YamlReader.ReadMap(name, text(), YamlLimits.Default, problems);
        return map is not null && problems.IsEmpty
            ? new TableNode(map)
            : throw new KnowledgeException(string.Join(Environment.NewLine, problems.InOrder()));
    }

    private static string ReadResource(string stored)
    {
        using Stream stream = Home.GetManifestResourceStream(stored)!;
        using StreamReader reader = new(stream);
        return reader.ReadToEnd();
    }
}
