namespace WireCheck.Reports.Text;

/// <summary>Writes wrapped lines with a hanging indent; lines end in a line feed on every system.</summary>
internal sealed class TextLayout(TextWriter output, TextStyle style)
{
    private const string Bold = "\e[1m";
    private const string Plain = "\e[0m";

    internal void Blank() => output.Write('\n');

    /// <summary>A heading of its own line.</summary>
    internal void Heading(string words)
    {
        Blank();
        output.Write(Paint(PlainText.Escape(words), Bold));
        output.Write('\n');
    }

    /// <summary>
    /// A paragraph. The label stands at the left in its colour; further lines begin under the text's first word.
    /// </summary>
    internal void Paragraph(int indent, string label, string words, string colour = "")
    {
        string safeLabel = PlainText.Escape(label);
        int hang = indent + (safeLabel.Length == 0 ? 0 : safeLabel.Length + 1);
        output.Write(new string(' ', indent));
        if (safeLabel.Length > 0)
        {
            output.Write(Paint(safeLabel, colour));
            output.Write(' ');
        }

        int column = hang;
        bool first = true;
        foreach (string word in PlainText.Escape(words).Split(' ', StringSplitOptions.RemoveEmptyEntries))
        {
            if (!first && column + 1 + word.Length > style.Width)
            {
                output.Write('\n');
                output.Write(new string(' ', hang));
                column = hang;
                first = true;
            }

            if (!first)
            {
                output.Write(' ');
                column++;
            }

            output.Write(word);
            column += word.Length;
            first = false;
        }

        output.Write('\n');
    }

    private string Paint(string words, string colour) => style.Colour && colour.Length > 0 ? colour + words + Plain : words;
}
