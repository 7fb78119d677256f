using WireCheck.Text;

namespace WireCheck.Tests.Text;

public sealed class YamlReaderTests
{
    private const string Sample = "a: {b: [1, 2 mm], c: 'text'}\nd: |\n  block\n# note\ne: &x {f: .5}\ng: *x\n";

    [Fact]
    public void Every_piece_keeps_its_line_and_column()
    {
        ProblemList problems = new();
        YamlMap root = YamlReader.ReadMap("f", "a:\n  b: [1, two]\n", YamlLimits.Default, problems)!;

        YamlMap a = (YamlMap)root.Find("a")!;
        YamlList b = (YamlList)a.Find("b")!;
        a.Entries[0].Key.Position.ShouldBe(new Position("f", 2, 3));
        b.Position.ShouldBe(new Position("f", 2, 6));
        b.Items[1].Position.ShouldBe(new Position("f", 2, 10));
        problems.IsEmpty.ShouldBeTrue();
    }

    [Fact]
    public void Nothing_that_stands_in_a_file_makes_the_reader_throw()
    {
        // A fixed seed: the same texts in every run.
        Random random = new(20260101);
        const string Alphabet = "{}[]:,&*!|>'\"%@`#-? \n\tab1~.\0é";
        for (int round = 0; round < 5000; round++)
        {
            char[] text = Sample.ToCharArray();
            for (int change = 0; change < 1 + (round % 6); change++)
            {
                text[random.Next(text.Length)] = Alphabet[random.Next(Alphabet.Length)];
            }

            ProblemList problems = new();
            YamlNode? node = YamlReader.Read("f", new string(text), YamlLimits.Default, problems);
            (node is not null || !problems.IsEmpty).ShouldBeTrue(new string(text));
        }
    }

    [Theory]
    [InlineData("[")]
    [InlineData("{a: ")]
    [InlineData("- ")]
    [InlineData("? ")]
    [InlineData("&a [")]
    public void Deep_nesting_is_refused_without_harm(string opening)
    {
        ProblemList problems = new();

        YamlReader.Read("f", string.Concat(Enumerable.Repeat(opening, 100_000)), YamlLimits.Default, problems).ShouldBeNull();
        problems.IsEmpty.ShouldBeFalse();
    }
}
