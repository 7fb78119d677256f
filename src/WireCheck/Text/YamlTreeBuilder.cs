using YamlDotNet.Core;
using YamlDotNet.Core.Events;

namespace WireCheck.Text;

/// <summary>A bound of <see cref="YamlLimits"/> was passed.</summary>
internal sealed class YamlLimitException(Position position, string message) : Exception(message)
{
    public Position Position { get; } = position;
}

/// <summary>Builds the nodes of one file from the parser's events.</summary>
internal sealed class YamlTreeBuilder
{
    private readonly string _file;
    private readonly YamlLimits _limits;
    private readonly ProblemList _problems;
    private readonly Parser _parser;
    private readonly Dictionary<AnchorName, (YamlNode Node, int Size)> _anchors = [];
    private int _nodes;
    private int _depth;

    internal YamlTreeBuilder(string file, string text, YamlLimits limits, ProblemList problems)
    {
        _file = file;
        _limits = limits;
        _problems = problems;
        _parser = new Parser(new StringReader(text));
        LastPlace = new Position(file, 1, 1);
    }

    /// <summary>Where the last piece began that could be read.</summary>
    internal Position LastPlace { get; private set; }

    internal YamlNode? Build()
    {
        _parser.Consume<StreamStart>();
        if (_parser.TryConsume<StreamEnd>(out _))
        {
            _problems.Add(new Position(_file, 1, 1), "the file is empty");
            return null;
        }

        _parser.Consume<DocumentStart>();
        YamlNode root = ReadNode();
        _parser.Consume<DocumentEnd>();
        if (!_parser.TryConsume<StreamEnd>(out _))
        {
            DocumentStart next = _parser.Consume<DocumentStart>();
            _problems.Add(At(next.Start), "only one document may stand in a file");
        }

        if (root is YamlScalar { IsEmpty: true })
        {
            _problems.Add(root.Position, "the file is empty");
            return null;
        }

        return root;
    }

    private YamlNode ReadNode()
    {
        int before = _nodes;
        ParsingEvent current = _parser.Current ?? throw new YamlException("the text ends too early");
        LastPlace = At(current.Start);
        Count(1, LastPlace);
        if (current is AnchorAlias alias)
        {
            _parser.MoveNext();
            return Follow(alias);
        }

        if (current is not NodeEvent { Anchor: AnchorName anchor })
        {
            throw new YamlException(current.Start, current.End, "something is due here that is not there");
        }

        if (++_depth > _limits.Depth)
        {
            throw new YamlLimitException(At(current.Start), $"values are nested deeper than {_limits.Depth} levels");
        }

        YamlNode node = current switch
        {
            Scalar => ReadScalar(),
            SequenceStart => ReadList(),
            MappingStart => ReadMap(),
            _ => throw new YamlException(current.Start, current.End, "this cannot stand here"),
        };
        _depth--;
        if (!anchor.IsEmpty)
        {
            _anchors[anchor] = (node, _nodes - before);
        }

        return node;
    }

    private YamlNode Follow(AnchorAlias alias)
    {
        if (!_anchors.TryGetValue(alias.Value, out var target))
        {
            throw new YamlException(alias.Start, alias.End, $"the alias *{alias.Value} names no anchor before it");
        }

        // The whole target counts again, so that aliases of aliases cannot grow without bound.
        Count(target.Size, At(alias.Start));
        return target.Node;
    }

    private YamlScalar ReadScalar()
    {
        Scalar scalar = _parser.Consume<Scalar>();
        return new YamlScalar(At(scalar.Start), scalar.Value, scalar.Style != ScalarStyle.Plain);
    }

    private YamlList ReadList()
    {
        Mark start = _parser.Consume<SequenceStart>().Start;
        List<YamlNode> items = [];
        while (!_parser.TryConsume<SequenceEnd>(out _))
        {
            items.Add(ReadNode());
        }

        return new YamlList(At(start), items);
    }

    private YamlMap ReadMap()
    {
        Mark start = _parser.Consume<MappingStart>().Start;
        List<YamlEntry> entries = [];
        Dictionary<string, Position> seen = [];
        while (!_parser.TryConsume<MappingEnd>(out _))
        {
            YamlNode key = ReadNode();
            YamlNode value = ReadNode();
            if (key is not YamlScalar name)
            {
                _problems.Add(key.Position, $"a key must be a single word; here stands {key.InWords}");
            }
            else if (seen.TryGetValue(name.Text, out Position first))
            {
                _problems.Add(name.Position, $"'{name.Text}' stands twice in this mapping; it stood first in line {first.Line}");
            }
            else
            {
                seen.Add(name.Text, name.Position);
                entries.Add(new YamlEntry(name, value));
            }
        }

        return new YamlMap(At(start), entries);
    }

    private void Count(int nodes, Position at)
    {
        _nodes += nodes;
        if (_nodes > _limits.Nodes)
        {
            throw new YamlLimitException(at, $"the file holds more than {_limits.Nodes} values, aliases followed");
        }
    }

    private Position At(Mark mark) => new(_file, (int)mark.Line, (int)mark.Column);
}
