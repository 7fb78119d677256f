using WireCheck.Text;

namespace WireCheck.Description;

/// <summary>Tables of the library whose names a description may use.</summary>
public enum WordTable
{
    Chemistry,
    Material,
    Insulation,
    Joint,
    FuseClass,
    PortContact,
    EnclosureWall,
}

/// <summary>What the reader needs of the parts library.</summary>
public interface IPartClasses
{
    /// <summary>
    /// Told before anything is asked for which sections a description has, last first, so that their classes can be read on
    /// another thread meanwhile.
    /// </summary>
    void Expect(IReadOnlyList<string> sections)
    {
    }

    /// <summary>Values of a part class of a section such as <c>relays</c>, or null when there is none of that name.</summary>
    YamlMap? Find(string section, string className);

    /// <summary>Names of the part classes of a section.</summary>
    IEnumerable<string> Names(string section);

    /// <summary>Names in a table of the library; empty when the table is not bounded.</summary>
    IReadOnlyCollection<string> Words(WordTable table);
}
