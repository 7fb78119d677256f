using WireCheck.Text;

namespace WireCheck.Tests.Text;

public sealed class ProblemTests
{
    [Fact]
    public void Problems_stand_in_the_order_of_the_file_and_once_each()
    {
        ProblemList problems = new();
        problems.Add(new Position("a.yaml", 2, 1), "second");
        problems.Add(new Position("a.yaml", 1, 9), "first");
        problems.Add(new Position("a.yaml", 2, 1), "second");
        problems.Add(new Position("a.yaml", 10, 1), "third");

        problems.InOrder().Select(p => p.ToString()).ShouldBe(["a.yaml:1:9: first", "a.yaml:2:1: second", "a.yaml:10:1: third"]);
    }

    [Fact]
    public void Places_are_ordered_by_file_then_line_then_column()
    {
        (new Position("a", 9, 9) < new Position("b", 1, 1)).ShouldBeTrue();
        (new Position("a", 2, 1) > new Position("a", 1, 9)).ShouldBeTrue();
        (new Position("a", 1, 2) >= new Position("a", 1, 2)).ShouldBeTrue();
        (new Position("a", 1, 1) <= new Position("a", 1, 2)).ShouldBeTrue();
    }
}
