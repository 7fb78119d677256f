using WireCheck.Text;

namespace WireCheck.Tests.Text;

public sealed class NearestNameTests
{
    [Theory]
    [InlineData("lenght", "length")]
    [InlineData("LENGTH", "length")]
    [InlineData("lengh", "length")]
    [InlineData("material ", "material")]
    public void A_slip_of_the_hand_finds_the_name(string written, string meant) =>
        NearestName.Find(written, ["size", "length", "material"]).ShouldBe(meant);

    [Fact]
    public void Something_else_finds_nothing() =>
        NearestName.Find("unicorn", ["size", "length", "material"]).ShouldBeNull();

    [Theory]
    [InlineData("", "", 0)]
    [InlineData("abc", "", 3)]
    [InlineData("abc", "acb", 1)]
    [InlineData("abc", "abd", 1)]
    [InlineData("kitten", "sitting", 3)]
    public void Distance_counts_single_letter_edits(string left, string right, int edits)
    {
        // kitten/sitting is the usual worked example of the Levenshtein distance.
        NearestName.Distance(left, right).ShouldBe(edits);
        NearestName.Distance(right, left).ShouldBe(edits);
    }
}
