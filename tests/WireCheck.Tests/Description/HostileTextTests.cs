using System.Text;
using WireCheck.Description;
using WireCheck.Text;

namespace WireCheck.Tests.Description;

/// <summary>Whatever stands in a description, reading ends with a box or with problems that have places.</summary>
public sealed class HostileTextTests
{
    private static readonly string Stall =
        File.ReadAllText(Path.Combine(Golden.Root, "tests/WireCheck.Tests/Description/stall.yaml"));

    private static readonly string[] Pieces =
    [
        "", "~", "-1", "0", "{}", "[]", "[[]]", "{a: {b: c}}", "99999999999999999999", "1e15 A", "-5 °C", "NaN", "yes", "x.y.z", ".", "..",
        "bank", "bank.+", "'", "\"", "&a b", "*a", "!!str x", "<script>", "\u001b[31m", "null", "w9", "w9/1", "1 .. 2 V", "part", "§",
    ];

    [Fact]
    public void No_value_put_in_the_place_of_another_makes_the_reader_throw()
    {
        string[] words = Stall.Split(' ');
        Random random = new(20260102);
        for (int round = 0; round < 600; round++)
        {
            string[] changed = [.. words];
            for (int change = 0; change <= round % 3; change++)
            {
                changed[random.Next(changed.Length)] = Pieces[random.Next(Pieces.Length)];
            }

            ShouldEndWell(string.Join(' ', changed));
        }
    }

    [Fact]
    public void No_line_left_out_doubled_or_moved_makes_the_reader_throw()
    {
        string[] lines = Stall.Split('\n');
        for (int line = 0; line < lines.Length; line++)
        {
            ShouldEndWell(string.Join('\n', lines.Where((_, i) => i != line)));
            ShouldEndWell(string.Join('\n', lines.Select((l, i) => i == line ? l + "\n" + l : l)));
            ShouldEndWell(string.Join('\n', lines.Select((l, i) => i == line ? "  " + l : l)));
        }
    }

    [Fact]
    public void A_box_of_ten_thousand_conductors_is_read()
    {
        StringBuilder text = new(Stall[..Stall.IndexOf("modes:", StringComparison.Ordinal)]);
        for (int i = 0; i < 10_000; i++)
        {
            text.Append("  many-").Append(i).Append(": {from: plus.").Append(1 + (i % 50)).Append(", to: minus.2, size: 6 AWG, length: 90 mm}\n");
        }

        ReadResult result = PackReader.Read("many.yaml", text.ToString(), LibraryClasses.Embedded);

        result.Problems.ShouldBeEmpty();
        result.Pack!.Conductors.Count.ShouldBe(10_005);
    }

    private static void ShouldEndWell(string text)
    {
        ReadResult result = PackReader.Read("f.yaml", text, LibraryClasses.Embedded);

        (result.Pack is null).ShouldBe(result.Problems.Count > 0, text);
        result.Problems.ShouldAllBe(p => p.Position.File.Length > 0 && p.Position.Line > 0 && p.Position.Column > 0 && p.Message.Length > 0);
    }
}
