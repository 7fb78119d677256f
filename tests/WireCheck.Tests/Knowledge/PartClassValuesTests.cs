using System.Text;
using WireCheck.Description;
using WireCheck.Knowledge;
using WireCheck.Text;

namespace WireCheck.Tests.Knowledge;

/// <summary>The reader of descriptions understands every value of every part class.</summary>
public sealed class PartClassValuesTests
{
    /// <summary>What the builder says beside <c>part:</c> for a section.</summary>
    private static readonly Dictionary<string, string> Beside = new()
    {
        ["cells"] = ", series: 4, parallel: 1, links: {section: 20 x 2 mm, length: 70 mm}",
        ["fuses"] = ", rating: 10 A",
        ["breakers"] = ", rating: 10 A",
    };

    public static TheoryData<string> Sections() => [.. Library.Embedded.Parts.Sections];

    [Theory]
    [MemberData(nameof(Sections))]
    public void Every_value_of_a_section_is_read(string section)
    {
        StringBuilder text = new("pack: All classes\nlanguage: 1\n");
        text.Append(section).AppendLine(":");
        foreach (PartClass part in Library.Embedded.Parts.Classes(section))
        {
            text.AppendLine(FormattableString.Invariant($"  x-{part.Name}: {{part: {part.Name}{Beside.GetValueOrDefault(section)}}}"));
        }

        ProblemList problems = new();
        PackReader.Read("classes.yaml", text.ToString(), problems);

        problems.InOrder().Where(IsAboutAClass).Select(p => p.ToString()).ShouldBeEmpty();
    }

    /// <summary>The check above would see a fault: a section is read to its end whatever else the text lacks.</summary>
    [Fact]
    public void A_fault_in_a_section_is_seen()
    {
        ProblemList problems = new();
        PackReader.Read("classes.yaml", "pack: One\nlanguage: 1\nshunts:\n  x-bad: {part: shunt-100a-75mv, drop: 3 kg}\n", problems);

        problems.InOrder().ShouldContain(p => p.Position.Line == 4);
    }

    private static bool IsAboutAClass(Problem problem) =>
        problem.Position.File != "classes.yaml" || problem.Position.Line > 3;
}
