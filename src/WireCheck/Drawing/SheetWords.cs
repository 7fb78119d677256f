namespace WireCheck.Drawing;

/// <summary>
/// The words beside wires and symbols. A wire that is drawn in two places is told in full at the first and by its
/// id at the second.
/// </summary>
/// <param name="extra">What is known of a wire besides size and length, such as its worst current; may be null.</param>
internal sealed class SheetWords(Func<string, string?> extra)
{
    private readonly HashSet<string> _told = new(StringComparer.Ordinal);

    /// <summary>True once the wire has been told in full.</summary>
    internal bool IsTold(DrawnWire wire) => _told.Contains(wire.Id);

    /// <summary>The captions of a wire, with where it leads when it is only referred to.</summary>
    internal List<Caption> Of(DrawnWire wire, string? leadsTo = null)
    {
        List<Caption> words = [];
        if (_told.Add(wire.Id))
        {
            words.AddRange(wire.Captions);
            if (extra(wire.Id) is { } more)
            {
                words.Add(new Caption(more));
            }
        }
        else
        {
            words.Add(new Caption(wire.Id));
        }

        if (leadsTo is not null)
        {
            words.Add(new Caption($"to {leadsTo}"));
        }

        return words;
    }

    /// <summary>One line for a wire on a pin at the side of a symbol.</summary>
    internal Caption AtPin(SymbolPin pin, DrawnWire wire)
    {
        bool first = !IsTold(wire);
        string words = string.Join(", ", Of(wire, wire.Other(pin.Node)).Select(c => c.Words));
        return new Caption($"{pin.Name}: {words}", first ? wire.Id : null);
    }
}
