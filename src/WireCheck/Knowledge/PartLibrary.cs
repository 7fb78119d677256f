namespace WireCheck.Knowledge;

/// <summary>The generic parts, one file for each section of a description, read when first asked for.</summary>
public sealed class PartLibrary
{
    private const string Folder = "rules/parts/";

    private readonly Dictionary<string, Lazy<NamedTable<PartClass>>> _tables = new(StringComparer.Ordinal);

    internal PartLibrary(KnowledgeFiles files)
    {
        Sections = [.. files.In(Folder).Select(name => name[Folder.Length..^".yaml".Length])];
        foreach (string section in Sections)
        {
            _tables.Add(section, new Lazy<NamedTable<PartClass>>(() => Read(files.Read($"{Folder}{section}.yaml"), section)));
        }
    }

    /// <summary>Sections that have classes, in alphabetical order.</summary>
    public IReadOnlyList<string> Sections { get; }

    /// <summary>The class of that name in a section, or null.</summary>
    public PartClass? Find(string section, string name) => ClassesOf(section)?.Find(name);

    /// <summary>All classes of a section in the order of its file; empty when there are none.</summary>
    public IReadOnlyList<PartClass> Classes(string section) => ClassesOf(section) is { } table ? [.. table.All] : [];

    /// <summary>Reads the classes of a section now, for whoever asks for them later.</summary>
    internal void ReadAhead(string section) => _ = ClassesOf(section);

    private NamedTable<PartClass>? ClassesOf(string section) => _tables.GetValueOrDefault(section)?.Value;

    private static NamedTable<PartClass> Read(TableNode file, string section)
    {
        string kind = file.Word("kind");
        return kind == section
            ? new NamedTable<PartClass>(file.Children("classes").Select(c => ReadOne(c, section)))
            : throw new KnowledgeException($"{file.Position}: the kind '{kind}' does not match the file of '{section}'");
    }

    private static (string, PartClass) ReadOne(TableNode node, string section)
    {
        string name = node.Word("class");
        return (name, new PartClass(section, name, node.Word("title"), node.Source("source"), node.Child("values").Map));
    }
}
