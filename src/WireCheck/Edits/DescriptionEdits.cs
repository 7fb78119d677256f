using WireCheck.Text;

namespace WireCheck.Edits;

/// <summary>
/// Changes values in the text of a description and nothing else: every other character stays, with comments, order, quotes and
/// line breaks. A plan is made first, so that it can be told; <see cref="EditPlan.NewText"/> carries it out. The new text is read
/// again and held against the old tree with the new values; what does not come out so is refused.
/// </summary>
public sealed class DescriptionEdits
{
    private const string CannotRead = "the description cannot be read";
    private const string Unsafe = "it is written in a way that cannot be changed without changing more";

    private readonly string _text;
    private readonly string _file;
    private readonly YamlMap? _tree;
    private readonly PlaceFinder? _places;
    private readonly LineIndex _lines;

    private DescriptionEdits(string file, string text)
    {
        _file = file;
        _text = text;
        _lines = new LineIndex(file, text);
        _tree = ReadTree(text);
        _places = _tree is not null && SpannedTreeReader.Read(text) is SpannedMap root ? new PlaceFinder(root) : null;
    }

    /// <summary>Reads a text for editing. What cannot be read refuses every edit.</summary>
    /// <param name="file">Name of the file, as places print it.</param>
    /// <param name="text">The whole text, without a byte order mark.</param>
    public static DescriptionEdits Of(string file, string text) => new(file, text);

    /// <summary>The edit as it applies to what is written: a conductor's leg names the conductor where all legs share the value.</summary>
    /// <param name="edit">An edit.</param>
    public ValueEdit Canonical(ValueEdit edit) =>
        Keys(_places?.Find(edit)) is { } keys && edit.PartId.Length > 0
            ? edit with { PartId = keys[1], Key = string.Join('.', keys.Skip(2)) }
            : edit;

    /// <summary>Plans edits. Two that want the same value to be different are told: the first stands.</summary>
    /// <param name="edits">What is to change; a value that stands there already makes no change.</param>
    public EditPlan Plan(IReadOnlyList<ValueEdit> edits)
    {
        if (_tree is null || _places is null)
        {
            return new EditPlan(_text, [], [.. edits.Select(edit => new EditRefusal(edit, null, CannotRead))]);
        }

        Draft whole = Make(edits);
        if (ComesOut(whole))
        {
            return PlanOf(whole, []);
        }

        ValueEdit[] safe = [.. edits.Where(edit => ComesOut(Make([edit])))];
        Draft rest = Make(safe);
        if (!ComesOut(rest))
        {
            rest = Make(safe = []);
        }

        return PlanOf(rest, [.. edits.Except(safe).Select(edit => new EditRefusal(edit, null, Unsafe))]);
    }

    private static YamlMap? ReadTree(string text)
    {
        ProblemList problems = new();
        YamlMap? tree = YamlReader.ReadMap("", text, YamlLimits.Default, problems);
        return problems.IsEmpty ? tree : null;
    }

    private static IReadOnlyList<string>? Keys(EditPlace? place) => place switch
    {
        ValueThere there => there.Keys,
        NothingAfterKey empty => empty.Keys,
        KeyMissing missing => missing.Keys,
        _ => null,
    };

    private EditPlan PlanOf(Draft draft, IReadOnlyList<EditRefusal> more) =>
        new(_text, draft.Changes(_text, _lines), [.. draft.Refused, .. more]);

    private bool ComesOut(Draft draft)
    {
        YamlNode expected = _tree!;
        foreach ((IReadOnlyList<string> keys, ValueEdit edit) in draft.Set)
        {
            expected = EditedTree.Set(expected, [.. keys], edit.NewText);
        }

        string edited = new EditPlan(_text, draft.Changes(_text, _lines), []).NewText();
        return EditedTree.Same(expected, ReadTree(edited));
    }

    private Draft Make(IReadOnlyList<ValueEdit> edits)
    {
        Draft draft = new();
        Dictionary<string, ValueEdit> seen = new(StringComparer.Ordinal);
        foreach (ValueEdit edit in edits)
        {
            EditPlace place = _places!.Find(edit);
            if (place is NoPlace none)
            {
                draft.Refuse(edit, none.Node is { } node ? _lines.At(node.Start) : null, none.Reason);
            }
            else if (Keys(place) is { } keys && !seen.TryAdd(string.Join('\n', keys), edit))
            {
                ValueEdit first = seen[string.Join('\n', keys)];
                if (first.NewText != edit.NewText)
                {
                    draft.Refuse(edit, null, $"another edit makes it {first.NewText}");
                }
            }
            else if (!draft.Take(_text, place, edit))
            {
                draft.Refuse(edit, null, "another edit puts something else there");
            }
        }

        return draft;
    }
}
