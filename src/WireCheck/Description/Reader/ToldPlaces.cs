using WireCheck.Text;

namespace WireCheck.Description.Reader;

/// <summary>Finds out whether a problem is already told for a piece of a file or for something inside it.</summary>
internal sealed class ToldPlaces
{
    private readonly HashSet<Position> _told;
    private readonly Dictionary<Position, List<YamlNode>> _nodes = [];

    internal ToldPlaces(YamlMap root, IReadOnlyList<Problem> problems)
    {
        _told = [.. problems.Select(p => p.Position)];
        Collect(root);
    }

    /// <summary>True when a problem is told at this place or, unless it is the whole file, inside the piece that begins there.</summary>
    internal bool Within(Position place) =>
        _told.Contains(place) || (_nodes.TryGetValue(place, out List<YamlNode>? nodes) && nodes.Any(Holds));

    private bool Holds(YamlNode node) => _told.Contains(node.Position) || node switch
    {
        YamlMap map => map.Entries.Any(e => _told.Contains(e.Key.Position) || Holds(e.Value)),
        YamlList list => list.Items.Any(Holds),
        _ => false,
    };

    private void Collect(YamlNode node)
    {
        if (!_nodes.TryGetValue(node.Position, out List<YamlNode>? here))
        {
            here = [];
            _nodes.Add(node.Position, here);
        }

        here.Add(node);
        switch (node)
        {
            case YamlMap map:
                foreach (YamlEntry entry in map.Entries)
                {
                    Collect(entry.Value);
                }

                break;
            case YamlList list:
                foreach (YamlNode item in list.Items)
                {
                    Collect(item);
                }

                break;
        }
    }
}
