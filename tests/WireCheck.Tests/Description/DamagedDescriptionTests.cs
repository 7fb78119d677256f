using System.Text;
using WireCheck.Description;

namespace WireCheck.Tests.Description;

/// <summary>Property: whatever is done to a description, the reader gives a box or problems, and never throws.</summary>
public sealed class DamagedDescriptionTests
{
    private static readonly string[] Pieces =
    [
        "[", "]", "{", "}", ":", ",", "\n", "  ", "- ", "&a ", "*a", "0", "-1", "null", "~", "'", "\"", "#", "1e999", "x",
        " .. ", "{}", "[]", "[[]]", "{a: b}", "|\n", "? ", "!!int ", "\t", "part: ", "to: ", "9999999999999", "case", ".", "\u2028",
    ];

    [Fact]
    public void A_damaged_description_is_read_or_refused_and_never_throws()
    {
        string text = File.ReadAllText(Path.Combine(Golden.Root, "tests", "WireCheck.Tests", "Description", "stall.yaml"));

        // A fixed seed: the same texts in every run.
        Random random = new(14);
        for (int round = 0; round < 1500; round++)
        {
            string damaged = Damage(text, random);
            ReadResult result = Should.NotThrow(() => PackReader.Read("damaged.yaml", damaged, LibraryClasses.Embedded), damaged);
            (result.Pack is null).ShouldBe(result.Problems.Count > 0, damaged);
        }
    }

    private static string Damage(string text, Random random)
    {
        StringBuilder damaged = new(text);
        for (int change = random.Next(1, 5); change > 0; change--)
        {
            int at = random.Next(damaged.Length);
            switch (random.Next(3))
            {
                case 0:
                    damaged.Remove(at, Math.Min(random.Next(1, 20), damaged.Length - at));
                    break;
                case 1:
                    damaged.Insert(at, Pieces[random.Next(Pieces.Length)]);
                    break;
                default:
                    ReplaceNextValue(damaged, at, Pieces[random.Next(Pieces.Length)]);
                    break;
            }
        }

        return damaged.ToString();
    }

    private static void ReplaceNextValue(StringBuilder text, int from, string piece)
    {
        string whole = text.ToString();
        int start = whole.IndexOf(": ", from, StringComparison.Ordinal);
        int end = start < 0 ? -1 : whole.IndexOfAny([',', '}', '\n'], start);
        if (end > 0)
        {
            text.Remove(start + 2, Math.Max(0, end - start - 2)).Insert(start + 2, piece);
        }
    }
}
