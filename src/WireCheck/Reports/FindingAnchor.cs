using System.Globalization;
using System.Text;
using WireCheck.Findings;

namespace WireCheck.Reports;

/// <summary>The name under which a page keeps a finding, so that the drawing and the tables can lead to it.</summary>
internal static class FindingAnchor
{
    /// <summary>A name of letters, digits and dashes, the same for the same rule and part.</summary>
    internal static string Of(Finding finding) => $"finding-{Plain(finding.Rule)}-{Plain(finding.Part)}";

    private static string Plain(string words)
    {
        StringBuilder plain = new(words.Length);
        foreach (char letter in words)
        {
            if (char.IsAsciiLetterOrDigit(letter) || letter is '-' or '.')
            {
                plain.Append(letter);
            }
            else
            {
                plain.Append(CultureInfo.InvariantCulture, $"_{(int)letter:x}");
            }
        }

        return plain.ToString();
    }
}
