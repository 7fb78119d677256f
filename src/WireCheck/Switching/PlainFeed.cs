using WireCheck.Circuit.Elements;
using WireCheck.Circuit.Topology;

namespace WireCheck.Switching;

/// <summary>
/// Which rails each source reaches in plain ways in the present state: wire, closed contacts, diodes forward and the bond
/// of the case. Lamps, coils, loads, resistors and declared outside links are no plain ways.
/// </summary>
internal sealed class PlainFeed
{
    private readonly SwitchedBox _box;
    private readonly Rails _rails;
    private readonly SourcePoint[] _sources;
    private readonly bool _withLinks;
    private readonly bool[][] _plus;
    private readonly bool[][] _minus;

    /// <summary>Prepares a search.</summary>
    /// <param name="box">The box; contacts are read as they stand.</param>
    /// <param name="rails">Its rails, or those with a part left out.</param>
    /// <param name="sources">The sources looked at.</param>
    /// <param name="withLinks">Declared outside links count as ways.</param>
    internal PlainFeed(SwitchedBox box, Rails rails, IEnumerable<SourcePoint> sources, bool withLinks = false)
    {
        _box = box;
        _rails = rails;
        _sources = [.. sources];
        _withLinks = withLinks;
        _plus = [.. _sources.Select(_ => new bool[rails.Count])];
        _minus = [.. _sources.Select(_ => new bool[rails.Count])];
    }

    /// <summary>Looks at the contacts as they stand now.</summary>
    internal void Find()
    {
        for (int s = 0; s < _sources.Length; s++)
        {
            Array.Clear(_plus[s]);
            Array.Clear(_minus[s]);
            if (_box.GivesPower(_sources[s]))
            {
                Spread(_plus[s], _rails.Of(_sources[s].Plus), forward: true);
                Spread(_minus[s], _rails.Of(_sources[s].Minus), forward: false);
            }
        }
    }

    /// <summary>True when one source reaches both poles.</summary>
    internal bool Feeds(int plus, int minus)
    {
        for (int s = 0; s < _sources.Length; s++)
        {
            if (_plus[s][_rails.Of(plus)] && _minus[s][_rails.Of(minus)])
            {
                return true;
            }
        }

        return false;
    }

    /// <summary>True when the positive of a source reaches a node.</summary>
    internal bool ReachesPlus(int node)
    {
        for (int s = 0; s < _sources.Length; s++)
        {
            if (_plus[s][_rails.Of(node)])
            {
                return true;
            }
        }

        return false;
    }

    /// <summary>Spreads over a few ways until nothing is added; boxes have a dozen or two.</summary>
    private void Spread(bool[] reached, int start, bool forward)
    {
        reached[start] = true;
        bool added = true;
        while (added)
        {
            added = false;
            foreach (RailWay way in _rails.Contacts)
            {
                added |= ((Contact)way.Element).Closed && Both(reached, way);
            }

            foreach (RailWay way in _rails.Links)
            {
                added |= (_withLinks || way.PartId == Rails.CaseBond) && Both(reached, way);
            }

            foreach (RailWay way in _rails.Diodes)
            {
                (int from, int to) = forward ? (way.From, way.To) : (way.To, way.From);
                if (reached[from] && !reached[to])
                {
                    reached[to] = added = true;
                }
            }
        }
    }

    private static bool Both(bool[] reached, RailWay way)
    {
        if (reached[way.From] == reached[way.To])
        {
            return false;
        }

        reached[way.From] = reached[way.To] = true;
        return true;
    }
}
