using System.Globalization;
using System.Text;
using WireCheck.Description;
using WireCheck.Knowledge;

namespace WireCheck.Tests.Documentation;

/// <summary>The names of the terminals of each kind of part, as the boxes of the tests have them.</summary>
internal static class TerminalReference
{
    /// <summary>Of terminals that are counted, so many are told.</summary>
    private const int Counted = 2;

    internal static string Of()
    {
        StringBuilder page = new("## Terminals\n\n");
        page.Append(Guide.Row("part", "terminals")).Append("|---|---|\n");
        foreach (IGrouping<string, Part> kind in Boxes().SelectMany(b => b.Parts).GroupBy(p => p.Kind).OrderBy(k => k.Key, StringComparer.Ordinal))
        {
            string[] names = [.. kind.SelectMany(p => p.Terminals).Distinct().Where(n => NumberOf(n) is null or <= Counted).Order(StringComparer.Ordinal)];
            bool more = kind.SelectMany(p => p.Terminals).Any(n => NumberOf(n) > Counted);
            if (names.Length > 0)
            {
                page.Append(Guide.Row(kind.Key, string.Join(", ", names.Select(n => $"`{n}`")) + (more ? " and so on" : "")));
            }
        }

        return page.Append('\n').ToString();
    }

    private static IEnumerable<Pack> Boxes()
    {
        string[] files =
        [
            .. Directory.EnumerateFiles(Path.Combine(Golden.Root, "examples"), "*.yaml"),
            .. Directory.EnumerateFiles(Path.Combine(Golden.Root, "tests", "WireCheck.Tests", "Rules", "Cases"), "good.yaml", SearchOption.AllDirectories),
        ];
        return files.Order(StringComparer.Ordinal).Select(f => PackReader.Read(f, File.ReadAllText(f), LibraryClasses.Embedded).Pack).OfType<Pack>();
    }

    /// <summary>The number of a counted terminal such as <c>s3</c> or <c>12</c>; a relay's numbers are names.</summary>
    private static int? NumberOf(string terminal) =>
        int.TryParse(terminal.TrimStart('s', 't'), NumberStyles.None, CultureInfo.InvariantCulture, out int number) && number < 30 ? number : null;
}
