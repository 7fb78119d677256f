using System.Text;
using System.Text.RegularExpressions;
using System.Xml.Linq;

namespace WireCheck.Tests.Documentation;

/// <summary>The formulas as the docstrings of the library tell them, with units, ranges and sources.</summary>
internal static partial class PhysicsReference
{
    /// <summary>Namespaces that compute, in the order of the page, each with a title.</summary>
    private static readonly (string Space, string Title)[] Spaces =
    [
        ("WireCheck.Physics", "Formulas"),
        ("WireCheck.Circuit.Elements", "Elements of the circuit"),
        ("WireCheck.Heat", "Heat"),
        ("WireCheck.Faults", "Shorts and what ends them"),
        ("WireCheck.Faults.Inrush", "Inrush and precharge"),
        ("WireCheck.Energy", "Energy and runtime"),
    ];

    internal static string Of(XDocument docs)
    {
        XElement[] members = [.. docs.Descendants("member").Where(m => m.Element("summary") is not null)];
        StringBuilder page = new();
        foreach ((string space, string title) in Spaces)
        {
            page.Append($"{(page.Length == 0 ? "" : "\n")}## {title}\n");
            foreach (XElement type in members.Where(m => IsIn(Name(m), "T:" + space)).OrderBy(Name, StringComparer.Ordinal))
            {
                string full = Name(type)[2..];
                List<string> lines = [.. members.Where(m => IsFormula(m, full)).OrderBy(Name, StringComparer.Ordinal).Select(Line)];

                // What only carries values or decides the order of things has no formula to tell.
                if (lines.Count > 0 || TellsFormula(Words(type.Element("summary")!)))
                {
                    page.Append($"\n**{full[(full.LastIndexOf('.') + 1)..]}.** {Words(type.Element("summary")!)}\n");
                    page.AppendJoin("", lines.Prepend(lines.Count > 0 ? "\n" : ""));
                }
            }
        }

        return page.ToString();
    }

    private static string Name(XElement member) => member.Attribute("name")!.Value;

    private static bool IsIn(string name, string space) =>
        name.StartsWith(space + ".", StringComparison.Ordinal) && !name[(space.Length + 1)..].Contains('.', StringComparison.Ordinal);

    /// <summary>A member of a type that tells a formula or gives a source; of the plain formulas, each that is no constructor.</summary>
    private static bool IsFormula(XElement member, string type)
    {
        string name = Name(member);
        return name[0] is 'M' or 'P' && name.StartsWith($"{name[0]}:{type}.", StringComparison.Ordinal)
            && !name[(type.Length + 3)..].Split('(')[0].Contains('.', StringComparison.Ordinal)
            && !name.Contains("#ctor", StringComparison.Ordinal)
            && ((name[0] == 'M' && type.StartsWith("WireCheck.Physics.", StringComparison.Ordinal)) || TellsFormula(Words(member.Element("summary")!)));
    }

    private static bool TellsFormula(string words) => words.Contains(" = ", StringComparison.Ordinal) || Standing().IsMatch(words);

    private static string Line(XElement member)
    {
        string name = Name(member)[2..].Split('(')[0];
        return $"- `{name[(name.LastIndexOf('.') + 1)..]}`: {Words(member.Element("summary")!)}\n";
    }

    /// <summary>The words of a docstring; what it refers to by its last name.</summary>
    private static string Words(XElement summary)
    {
        StringBuilder words = new();
        foreach (XNode node in summary.Nodes())
        {
            words.Append(node switch
            {
                XElement { Name.LocalName: "see" or "seealso" } see => $"`{LastName(see.Attribute("cref")?.Value ?? see.Value)}`",
                XElement { Name.LocalName: "paramref" } named => $"`{named.Attribute("name")!.Value}`",
                XElement { Name.LocalName: "c" } code => $"`{code.Value}`",
                XElement other => other.Value,
                XText text => text.Value,
                _ => "",
            });
        }

        return string.Join(' ', words.ToString().Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries));
    }

    private static string LastName(string reference)
    {
        string bare = reference.Split('(')[0];
        return bare[(bare.LastIndexOfAny([':', '.']) + 1)..];
    }

    [GeneratedRegex(@"from memory|common practice|\b(IEC|ISO|NEC|AC 43|CFR|UL|VDE|DIN|BS)\b|\b(18|19|20)\d\d\b")]
    private static partial Regex Standing();
}
