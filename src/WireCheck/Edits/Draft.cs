using WireCheck.Text;

namespace WireCheck.Edits;

/// <summary>Edits that are being gathered into changes of the text.</summary>
internal sealed class Draft
{
    private readonly List<ValueThere> _replaced = [];
    private readonly List<ValueEdit> _replacing = [];
    private readonly List<Opening> _openings = [];
    private readonly List<EditRefusal> _refused = [];
    private readonly List<(IReadOnlyList<string> Keys, ValueEdit Edit)> _set = [];

    internal IReadOnlyList<EditRefusal> Refused => _refused;

    /// <summary>What is set where, from the root.</summary>
    internal IReadOnlyList<(IReadOnlyList<string> Keys, ValueEdit Edit)> Set => _set;

    internal void Refuse(ValueEdit edit, Position? place, string reason) => _refused.Add(new EditRefusal(edit, place, reason));

    /// <summary>Takes an edit up. False when another one stands in its way.</summary>
    internal bool Take(string text, EditPlace place, ValueEdit edit)
    {
        switch (place)
        {
            case ValueThere there:
                _replaced.Add(there);
                _replacing.Add(edit);
                _set.Add((there.Keys, edit));
                return true;
            case NothingAfterKey { Missing.Count: 0 } empty when KeyInsertion.AfterColon(text, empty.Key) is int at:
                _openings.Add(new Opening(empty.Key, new KeyInsertion(at, " ", "", "")) { Value = edit });
                _set.Add((empty.Keys, edit));
                return true;
            case NothingAfterKey empty when KeyInsertion.AfterColon(text, empty.Key) is int at:
                return TakeMissing(empty.Key, () => new KeyInsertion(at, " {", ", ", "}"), empty.Missing, empty.Keys, edit);
            case KeyMissing missing:
                return TakeMissing(missing.Map, () => KeyInsertion.Into(text, missing.Map), missing.Missing, missing.Keys, edit);
            default:
                return false;
        }
    }

    /// <summary>The changes in the order of the text.</summary>
    internal IReadOnlyList<TextChange> Changes(string text, LineIndex lines)
    {
        List<TextChange> changes = [];
        for (int index = 0; index < _replaced.Count; index++)
        {
            SpannedScalar old = _replaced[index].Value;
            string written = text[old.Start..old.End];
            string next = ScalarText.Write(_replacing[index].NewText, written);
            if (old.Text != _replacing[index].NewText)
            {
                changes.Add(new TextChange(
                    old.Start, written.Length, lines.At(old.Start), lines.At(old.End), next, old.Text, [_replacing[index]]));
            }
        }

        foreach (Opening opening in _openings)
        {
            Position place = lines.At(opening.Insertion.Offset);
            changes.Add(new TextChange(opening.Insertion.Offset, 0, place, place, opening.Write(), null, opening.Edits));
        }

        return [.. changes.OrderBy(change => change.Offset)];
    }

    private bool TakeMissing(
        SpannedNode owner, Func<KeyInsertion> insertion, IReadOnlyList<string> missing, IReadOnlyList<string> keys, ValueEdit edit)
    {
        Opening? opening = _openings.Find(o => o.Owner == owner);
        if (opening is null)
        {
            _openings.Add(opening = new Opening(owner, insertion()));
        }

        if (opening.Value is not null || !opening.Keys.Add([.. missing], edit.NewText))
        {
            return false;
        }

        opening.Edits.Add(edit);
        _set.Add((keys, edit));
        return true;
    }

    /// <summary>A place where keys are put in.</summary>
    private sealed class Opening(SpannedNode owner, KeyInsertion insertion)
    {
        private readonly List<ValueEdit> _edits = [];

        internal SpannedNode Owner { get; } = owner;

        internal KeyInsertion Insertion { get; } = insertion;

        internal MissingKeys Keys { get; } = new();

        /// <summary>The one value that is put in without a key; null where keys are.</summary>
        internal ValueEdit? Value { get; init; }

        internal List<ValueEdit> Edits => Value is null ? _edits : [Value];

        internal string Write() => Insertion.Before + (Value is { } value ? ScalarText.Write(value.NewText) : Keys.Write(Insertion.Between)) + Insertion.After;
    }
}
