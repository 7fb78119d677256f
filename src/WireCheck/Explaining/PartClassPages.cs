using WireCheck.Knowledge;
using WireCheck.Reports.Text;
using WireCheck.Text;

namespace WireCheck.Explaining;

/// <summary>What a part class gives where a description leaves it out.</summary>
internal static class PartClassPages
{
    /// <summary>The classes of a name; more than one when sections share it.</summary>
    internal static IReadOnlyList<PartClass> Find(string name) => [.. All().Where(c => c.Name == name)];

    /// <summary>Names of all classes.</summary>
    internal static IEnumerable<string> Names() => All().Select(c => c.Name);

    /// <summary>Writes the pages.</summary>
    internal static void Write(TextLayout layout, IReadOnlyList<PartClass> classes)
    {
        foreach (PartClass part in classes)
        {
            layout.Paragraph(0, part.Name, $"(part class of {part.Section})");
            layout.Paragraph(0, "", part.Title);
            layout.Heading("Gives, where a description leaves it out");
            foreach (YamlEntry entry in part.Values.Entries)
            {
                layout.Paragraph(2, $"{entry.Key.Text}:", InWords(entry.Value));
            }

            layout.Heading("Source");
            layout.Paragraph(2, "", part.Source.ToString());
        }
    }

    private static IEnumerable<PartClass> All()
    {
        PartLibrary parts = Library.Embedded.Parts;
        return parts.Sections.SelectMany(parts.Classes);
    }

    private static string InWords(YamlNode node) => node switch
    {
        YamlMap map => string.Join(", ", map.Entries.Select(e => $"{e.Key.Text} {InWords(e.Value)}")),
        YamlList list => string.Join("; ", list.Items.Select(InWords)),
        YamlScalar scalar => scalar.Text,
        _ => "",
    };
}
