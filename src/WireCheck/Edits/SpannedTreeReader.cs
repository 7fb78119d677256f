using YamlDotNet.Core;
using YamlDotNet.Core.Events;

namespace WireCheck.Edits;

/// <summary>
/// Reads a text that is known to be good YAML once more, this time with the end of every piece, its style and its anchor. Aliases
/// are not followed. Apart from the tree of <c>Text</c>, which is all that a check needs and stays small for it.
/// </summary>
internal sealed class SpannedTreeReader
{
    private readonly Parser _parser;
    private readonly Dictionary<string, SpannedNode> _anchors = new(StringComparer.Ordinal);

    private SpannedTreeReader(string text)
    {
        _parser = new Parser(new StringReader(text));
    }

    /// <exception cref="YamlException">The text is no YAML.</exception>
    internal static SpannedNode Read(string text)
    {
        SpannedTreeReader reader = new(text);
        reader._parser.Consume<StreamStart>();
        reader._parser.Consume<DocumentStart>();
        return reader.ReadNode();
    }

    private SpannedNode ReadNode()
    {
        ParsingEvent first = _parser.Consume<ParsingEvent>();
        if (first is AnchorAlias alias)
        {
            string name = alias.Value.Value;
            if (_anchors.TryGetValue(name, out SpannedNode? target))
            {
                target.SharedAs = name;
            }

            return new SpannedAlias(Offset(alias.Start), Offset(alias.End), name);
        }

        SpannedNode node = first switch
        {
            Scalar scalar => ScalarOf(scalar),
            SequenceStart list => ReadList(list),
            MappingStart map => ReadMap(map),
            _ => throw new YamlException(first.Start, first.End, "this cannot stand here"),
        };
        if (first is NodeEvent { Anchor: { IsEmpty: false } anchor })
        {
            _anchors[anchor.Value] = node;
        }

        return node;
    }

    private static SpannedScalar ScalarOf(Scalar scalar) =>
        new(Offset(scalar.Start), Offset(scalar.End), scalar.Value)
        {
            Plain = scalar.Style == ScalarStyle.Plain,
            Block = scalar.Style is ScalarStyle.Literal or ScalarStyle.Folded,
            Marked = !scalar.Anchor.IsEmpty || !scalar.Tag.IsEmpty,
        };

    /// <summary>The parser ends a list or a mapping before its bracket.</summary>
    private SpannedList ReadList(SequenceStart start)
    {
        List<SpannedNode> items = [];
        while (!_parser.Accept<SequenceEnd>(out _))
        {
            items.Add(ReadNode());
        }

        int end = Offset(_parser.Consume<SequenceEnd>().Start);
        return new SpannedList(Offset(start.Start), start.Style == SequenceStyle.Flow ? end + 1 : end, start.Style == SequenceStyle.Flow, items);
    }

    private SpannedMap ReadMap(MappingStart start)
    {
        List<SpannedEntry> entries = [];
        while (!_parser.Accept<MappingEnd>(out _))
        {
            SpannedNode key = ReadNode();
            entries.Add(new SpannedEntry(key, ReadNode()));
        }

        int end = Offset(_parser.Consume<MappingEnd>().Start);
        return new SpannedMap(Offset(start.Start), start.Style == MappingStyle.Flow ? end + 1 : end, start.Style == MappingStyle.Flow, entries);
    }

    private static int Offset(Mark mark) => (int)mark.Index;
}
