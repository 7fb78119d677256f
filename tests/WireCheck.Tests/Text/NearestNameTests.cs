using WireCheck.Text;

namespace WireCheck.Tests.Text;

public sealed class NearestNameTests
{
    [Theory]
    [InlineData("insulaton", "insulation")]
    [InlineData("RATING", "rating")]
    [InlineData("lenght", "length")]
    [InlineData("zebra", null)]
    public void The_nearest_name_is_within_a_third_of_the_letters(string written, string? nearest) =>
        NearestName.Find(written, ["rating", "length", "insulation"]).ShouldBe(nearest);

    [Fact]
    public void Of_two_terminals_the_one_with_the_nearer_digit_is_meant() =>
        NearestName.Find("88", ["85", "86", "30", "87", "87a"]).ShouldBe("87");

    // Worked by hand: kitten to sitting takes three edits; two neighbours swapped are one.
    [Theory]
    [InlineData("kitten", "sitting", 3)]
    [InlineData("ab", "ba", 1)]
    [InlineData("", "abc", 3)]
    [InlineData("same", "same", 0)]
    public void Edits_are_counted_letter_by_letter(string left, string right, int edits)
    {
        NearestName.Distance(left, right).ShouldBe(edits);
        NearestName.Distance(right, left).ShouldBe(edits);
    }
}
