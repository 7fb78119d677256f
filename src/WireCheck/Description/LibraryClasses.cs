using WireCheck.Knowledge;
using WireCheck.Text;

namespace WireCheck.Description;

/// <summary>The tool's own library as the reader sees it.</summary>
public sealed class LibraryClasses(Library library) : IPartClasses
{
    /// <summary>The library that comes with the tool.</summary>
    public static LibraryClasses Embedded { get; } = new(Library.Embedded);

    public void Expect(IReadOnlyList<string> sections) => Task.Run(() =>
    {
        library.ReadAhead();
        foreach (string section in sections)
        {
            library.Parts.ReadAhead(section);
        }
    });

    public YamlMap? Find(string section, string className) => library.Parts.Find(section, className)?.Values;

    public IEnumerable<string> Names(string section) => library.Parts.Classes(section).Select(c => c.Name);

    public IReadOnlyCollection<string> Words(WordTable table) => table switch
    {
        WordTable.Chemistry => library.Chemistries.Names,
        WordTable.Material => library.Materials.Names,
        WordTable.Insulation => library.Insulation.Names,
        WordTable.Joint => library.Joints.Names,
        WordTable.FuseClass => library.Fuses.Names,
        WordTable.PortContact => library.PortContacts.Names,
        _ => library.Walls.Names,
    };
}
