using System.Text;

namespace WireCheck.Edits;

/// <summary>What a set of edits does to a text.</summary>
/// <param name="Text">The text as it was.</param>
/// <param name="Changes">The stretches that change, in the order of the text, none inside another.</param>
/// <param name="Refused">The edits that are not made, in the order they were asked for.</param>
public sealed record EditPlan(string Text, IReadOnlyList<TextChange> Changes, IReadOnlyList<EditRefusal> Refused)
{
    /// <summary>The text with all changes made; the same characters everywhere else.</summary>
    public string NewText()
    {
        StringBuilder text = new(Text.Length + 64);
        int done = 0;
        foreach (TextChange change in Changes)
        {
            text.Append(Text, done, change.Offset - done).Append(change.NewText);
            done = change.Offset + change.Length;
        }

        return text.Append(Text, done, Text.Length - done).ToString();
    }
}
