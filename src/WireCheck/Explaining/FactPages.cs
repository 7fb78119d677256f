using WireCheck.Facts;
using WireCheck.Facts.Catalogue;
using WireCheck.Reports.Text;

namespace WireCheck.Explaining;

/// <summary>What facts are: one of them, or all by kind of part.</summary>
internal static class FactPages
{
    /// <summary>What a fact is and its unit.</summary>
    internal static string InWords(Fact fact)
    {
        string unit = fact.Type switch
        {
            FactType.Number when fact.Unit.Length > 0 => $" In {fact.Unit}.",
            FactType.Number => " A pure number.",
            FactType.YesNo => " Yes or no.",
            FactType.Names => " Names in order.",
            _ => " A word.",
        };
        string place = fact.HasPlace ? $" {fact.Name}_mode and {fact.Name}_corner tell where it was found." : "";
        return fact.Sentence + unit + place;
    }

    /// <summary>Facts of a name, for each kind that has it; the name may be written <c>kind.name</c>.</summary>
    internal static IReadOnlyList<Fact> Find(string name)
    {
        string[] parts = name.Split('.');
        return parts.Length == 2
            ? [.. FactCatalogue.All.Where(f => f.Kind == parts[0] && f.Name == parts[1])]
            : [.. FactCatalogue.All.Where(f => f.Name == name)];
    }

    /// <summary>Writes the page of one name.</summary>
    internal static void Write(TextLayout layout, IReadOnlyList<Fact> facts)
    {
        foreach (Fact fact in facts)
        {
            layout.Paragraph(0, $"{fact.Kind}.{fact.Name}:", InWords(fact));
        }
    }

    /// <summary>Writes all facts, by kind.</summary>
    internal static void WriteAll(TextLayout layout)
    {
        bool first = true;
        foreach (IGrouping<string, Fact> ofKind in FactCatalogue.All.GroupBy(f => f.Kind))
        {
            if (!first)
            {
                layout.Blank();
            }

            first = false;
            layout.Paragraph(0, "", ofKind.Key);
            foreach (Fact fact in ofKind)
            {
                layout.Paragraph(2, $"{fact.Name}:", InWords(fact));
            }
        }
    }
}
