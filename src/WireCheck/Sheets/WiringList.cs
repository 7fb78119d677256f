using WireCheck.Description;
using WireCheck.Description.Kinds;

namespace WireCheck.Sheets;

/// <summary>Terminal by terminal: what is put on it and where that goes.</summary>
internal static class WiringList
{
    internal static Sheet Of(Pack pack) => new(
        "wiring-list",
        "Wiring list",
        ["Each terminal with everything that goes on it; each wire stands twice, once at each end. Tick when it is on, tight and labelled."],
        ["terminal", "wire or joint", "size", "colour", "end", "goes to", "done"],
        [.. Ends(pack)
            .GroupBy(e => e.At.ToString())
            .OrderBy(g => OrderOf(pack, g.First().At))
            .ThenBy(g => TerminalOrder(pack, g.First().At))
            .SelectMany(g => g.Select(e => (IReadOnlyList<string>)[e.At.ToString(), e.Id, e.Size, e.Colour, e.Class, e.Other.ToString(), ""])),
            .. SenseLead.In(pack).SelectMany(l => new IReadOnlyList<string>[]
            {
                [l.Tap, l.Id, l.Leads.Size.Value.ToString(), "", l.FuseWords, l.Id, ""],
                [l.Id, l.Id, l.Leads.Size.Value.ToString(), "", "plug", l.Tap, ""],
            })]);

    private sealed record End(TerminalReference At, TerminalReference Other, string Id, string Size, string Colour, string Class);

    private static IEnumerable<End> Ends(Pack pack)
    {
        foreach (Joint joint in pack.Of<Joint>())
        {
            yield return new End(joint.First, joint.Second, joint.Id, "", "", joint.JointKind.Value);
            yield return new End(joint.Second, joint.First, joint.Id, "", "", joint.JointKind.Value);
        }

        foreach (Conductor wire in pack.Conductors)
        {
            string size = wire.Size.Value.ToString();
            yield return new End(wire.From, wire.To, wire.Id, size, SheetWords.Colour(wire), wire.FromEnd.Class.Value);
            yield return new End(wire.To, wire.From, wire.Id, size, SheetWords.Colour(wire), wire.ToEnd.Class.Value);
        }
    }

    /// <summary>Parts in the order of the description; the nodes that exist everywhere last.</summary>
    private static int OrderOf(Pack pack, TerminalReference at)
    {
        for (int i = 0; i < pack.Parts.Count; i++)
        {
            if (pack.Parts[i].Id == at.PartId)
            {
                return i;
            }
        }

        return int.MaxValue;
    }

    private static int TerminalOrder(Pack pack, TerminalReference at) =>
        pack.Find(at.PartId) is { } part && part.Terminals.ToList().IndexOf(at.Terminal) is >= 0 and var place ? place
        : int.TryParse(at.Terminal, System.Globalization.NumberStyles.None, System.Globalization.CultureInfo.InvariantCulture, out int stud) ? stud
        : 0;
}
