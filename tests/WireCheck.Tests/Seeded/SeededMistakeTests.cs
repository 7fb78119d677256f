using System.Text;
using WireCheck.Findings;

namespace WireCheck.Tests.Seeded;

/// <summary>
/// Makes one mistake at a time in the clean examples: each must be found on its part, and nothing else may be found but
/// what the same mistake brings with it.
/// </summary>
public class SeededMistakeTests
{
    public static TheoryData<string, string> Mistakes
    {
        get
        {
            TheoryData<string, string> data = [];
            foreach (SeededMistake made in SeededMistake.All)
            {
                data.Add(made.Mistake, made.Box);
            }

            return data;
        }
    }

    [Theory]
    [MemberData(nameof(Mistakes))]
    public void A_mistake_is_found_on_its_part_and_raises_no_false_alarm(string mistake, string box)
    {
        SeededMistake seeded = SeededMistake.All.Single(m => m.Mistake == mistake && m.Box == box);

        IReadOnlyList<Finding> findings = seeded.Findings();

        string said = string.Join("\n", findings.Select(f => $"{f.Severity} {f.Rule} {f.Part}: {f.Message}"));
        findings.Any(seeded.IsFoundBy).ShouldBeTrue($"{seeded.Rule} of {seeded.Part} is not among:\n{said}");
        findings.Where(seeded.IsFalseAlarm).ShouldBeEmpty(said);
    }

    /// <summary>The table stands beside the mistakes; what it says of a mistake no description can express is written by hand.</summary>
    [Fact]
    public void The_table_of_mistakes_names_each_one_and_the_boxes_it_was_made_in()
    {
        StringBuilder table = new("| mistake | made in | found by |\n| --- | --- | --- |\n");
        foreach (IGrouping<string, SeededMistake> mistake in SeededMistake.All.GroupBy(m => m.Mistake))
        {
            string boxes = string.Join(", ", mistake.Select(m => m.Box).Order(StringComparer.Ordinal));
            table.Append($"| {mistake.Key} | {boxes} | {string.Join(", ", mistake.Select(m => m.Rule).Distinct())} |\n");
        }

        Golden.ShouldMatch(table.ToString(), Path.Combine("Seeded", "found.md"));
    }
}
