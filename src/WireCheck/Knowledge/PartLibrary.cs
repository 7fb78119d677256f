namespace WireCheck.Knowledge;

/// <summary>The generic parts, one file for each section of a description, read when first asked for.</summary>
public sealed class PartLibrary
{
    private const string Folder = "rules/parts/";

    private readonly KnowledgeFiles _files;
    private readonly Dictionary<string, NamedTable<PartClass>> _read = new(StringComparer.Ordinal);
    private readonly Lock _reading = new();

    internal PartLibrary(KnowledgeFiles files) => _files = files;

    /// <summary>Sections that have classes, in alphabetical order.</summary>
    public IReadOnlyList<string> Sections => [.. _files.In(Folder).Select(name => name[Folder.Length..^".yaml".Length])];

    /// <summary>The class of that name in a section, or null.</summary>
    public PartClass? Find(string section, string name) => ClassesOf(section)?.Find(name);

    /// <summary>All classes of a section in the order of its file; empty when there are none.</summary>
    public IReadOnlyList<PartClass> Classes(string section) => ClassesOf(section) is { } table ? [.. table.All] : [];

    private NamedTable<PartClass>? ClassesOf(string section)
    {
        string file = $"{Folder}{section}.yaml";
        lock (_reading)
        {
            if (!_read.TryGetValue(section, out NamedTable<PartClass>? table) && _files.Has(file))
            {
                table = Read(_files.Read(file), section);
                _read[section] = table;
            }

            return table;
        }
    }

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
