using WireCheck.Knowledge;
using WireCheck.Text;

namespace WireCheck.Sizing;

/// <summary>Classes of the library among which a part may be exchanged: of the same make, by what they carry.</summary>
/// <param name="Section">Section of the description and of the library.</param>
/// <param name="Measure">Keys that lead to the current or power that orders them.</param>
/// <param name="Same">Keys, parted by a stroke, whose values must be those of the part's own class.</param>
internal sealed record ClassLadder(string Section, string Measure, IReadOnlyList<string> Same)
{
    /// <summary>Key of a value that must not be larger than that of the part's own class; null when there is none.</summary>
    internal string? NotLarger { get; init; }

    /// <summary>Why such a part is never exchanged for a smaller one; null when it may be.</summary>
    internal string? OnlyGrows { get; init; }

    /// <summary>Every section whose classes sizing may exchange.</summary>
    internal static IReadOnlyList<ClassLadder> All { get; } =
    [
        new("bms", "continuous", ["side", "port", "series"]),
        new("relays", "contact/carry", ["form", "coil/voltage", "latching", "polarised"]),
        new("switches", "contact/amps", ["style", "poles", "momentary"]) { OnlyGrows = Fitting },
        new("shunts", "rated", ["drop"]) { OnlyGrows = Fitting },
        new("diodes", "rated", ["style"]) { OnlyGrows = Fitting },

        // A higher resistance would keep a hand on the button for longer.
        new("resistors", "power", []) { NotLarger = "resistance" },
    ];

    private const string Fitting = "it is exchanged only for one that carries more";

    /// <summary>Classes that may stand instead of one, smallest first; among equals that one first.</summary>
    internal IReadOnlyList<PartClass> Instead(PartLibrary library, PartClass own)
    {
        List<PartClass> found = [];
        foreach (PartClass other in library.Classes(Section))
        {
            bool same = true;
            foreach (string keys in Same)
            {
                same &= WordAt(other.Values, keys) == WordAt(own.Values, keys);
            }

            if (same && (NotLarger is null || NumberAt(other, NotLarger) <= NumberAt(own, NotLarger)))
            {
                found.Add(other);
            }
        }

        List<PartClass> inOrder = [.. found];
        found.Sort((a, b) => MeasureOf(a) != MeasureOf(b) ? MeasureOf(a).CompareTo(MeasureOf(b))
            : (a.Name == own.Name) != (b.Name == own.Name) ? (a.Name == own.Name ? -1 : 1)
            : inOrder.IndexOf(a).CompareTo(inOrder.IndexOf(b)));
        return found;
    }

    /// <summary>What a class carries, in A; of a resistor what it bears, in W.</summary>
    internal double MeasureOf(PartClass part) => NumberAt(part, Measure);

    private static double NumberAt(PartClass part, string keys) => NodeAt(part.Values, keys) is YamlScalar scalar
        ? TableValue.Parse(scalar.Text, scalar.Position).Number
        : 0;

    private static string WordAt(YamlMap map, string keys) => NodeAt(map, keys) is YamlScalar scalar ? scalar.Text : "";

    private static YamlNode? NodeAt(YamlMap map, string keys)
    {
        YamlNode? node = map;
        foreach (string key in keys.Split('/'))
        {
            node = (node as YamlMap)?.Find(key);
        }

        return node;
    }
}
