using System.Reflection;
using WireCheck.Description;
using WireCheck.Text;

namespace WireCheck.Tests.Description;

/// <summary>The parts library straight from its files, so that tests of the reader need nothing else.</summary>
internal sealed class LibraryFiles : IPartClasses
{
    private static readonly Assembly Core = typeof(PackReader).Assembly;
    private readonly Dictionary<string, Dictionary<string, YamlMap>> _sections = [];

    public LibraryFiles()
    {
        foreach (string name in Core.GetManifestResourceNames().Where(n => n.StartsWith("rules/parts/", StringComparison.Ordinal)))
        {
            YamlMap file = ReadResource(name);
            string section = ((YamlScalar)file.Find("kind")!).Text;
            _sections[section] = ((YamlList)file.Find("classes")!).Items.Cast<YamlMap>().ToDictionary(
                c => ((YamlScalar)c.Find("class")!).Text, c => (YamlMap)c.Find("values")!);
        }
    }

    public YamlMap? Find(string section, string className) => _sections.GetValueOrDefault(section)?.GetValueOrDefault(className);

    public IEnumerable<string> Names(string section) => _sections.GetValueOrDefault(section)?.Keys ?? Enumerable.Empty<string>();

    public IReadOnlyCollection<string> Words(WordTable table) => table switch
    {
        WordTable.Chemistry => Named("chemistry", "chemistries", "chemistry"),
        WordTable.Material => Named("materials", "materials", "material"),
        WordTable.Insulation => Named("insulation", "insulation", "insulation"),
        WordTable.Joint => Named("joints", "joints", "joint"),
        WordTable.FuseClass => Named("fuse-classes", "classes", "class"),
        WordTable.PortContact => Named("port-contacts", "contacts", "contact"),
        _ => ["sheet-steel", "aluminium", "plastic", "wood"],
    };

    private static IReadOnlyCollection<string> Named(string table, string list, string key) =>
        [.. ((YamlList)ReadResource($"rules/tables/{table}.yaml").Find(list)!).Items.Cast<YamlMap>().Select(m => ((YamlScalar)m.Find(key)!).Text)];

    private static YamlMap ReadResource(string name)
    {
        using StreamReader reader = new(Core.GetManifestResourceStream(name)!);
        ProblemList problems = new();
        YamlMap? map = YamlReader.ReadMap(name, reader.ReadToEnd(), YamlLimits.Default, problems);
        problems.InOrder().ShouldBeEmpty();
        return map!;
    }
}
