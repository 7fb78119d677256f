using WireCheck.Findings;
using WireCheck.Reports;

namespace WireCheck.Tests.Rules;

/// <summary>
/// Runs the good and the bad box of every rule. The first line of <c>expect.txt</c> names the part, the second a
/// fragment of what the bad box must say; lines <c>also: rule</c> name companions that cannot be avoided.
/// </summary>
public class RuleCaseTests
{
    private static readonly DateOnly Today = new(2027, 1, 1);

    public static TheoryData<string> Cases => [.. CaseFolderTests.Names];

    [Theory]
    [MemberData(nameof(Cases))]
    public void The_bad_box_is_found_out_by_its_rule_and_by_no_other(string rule)
    {
        string[] expected = File.ReadAllLines(Path.Combine(CaseFolderTests.Folder, rule, "expect.txt"));
        string[] also = [.. expected.Where(l => l.StartsWith("also: ", StringComparison.Ordinal)).Select(l => l["also: ".Length..].Trim())];

        IReadOnlyList<Finding> findings = Check(rule, "bad.yaml").Findings.Findings;

        string found = string.Join("\n", findings.Select(f => $"{f.Rule} {f.Part}: {f.Message}"));
        findings.Any(f => f.Rule == rule && f.Part == expected[0].Trim() && f.Message.Contains(expected[1].Trim(), StringComparison.Ordinal))
            .ShouldBeTrue($"'{expected[1]}' of {expected[0]} is not among:\n{found}");
        findings.Where(f => f.Rule != rule && !also.Contains(f.Rule)).ShouldBeEmpty(found);
    }

    [Theory]
    [MemberData(nameof(Cases))]
    public void The_good_box_is_let_pass_by_its_rule(string rule)
    {
        IReadOnlyList<Finding> findings = Check(rule, "good.yaml").Findings.Findings;

        findings.Where(f => f.Rule == rule).Select(f => $"{f.Part}: {f.Message}").ShouldBeEmpty();
    }

    private static Report Check(string rule, string file)
    {
        string folder = Path.Combine(CaseFolderTests.Folder, rule);
        CheckOutcome outcome = PackCheck.Standard.Check(file, File.ReadAllText(Path.Combine(folder, file)), new CheckOptions(folder, Today));
        outcome.Problems.Select(p => p.ToString()).ShouldBeEmpty();
        return outcome.Report.ShouldNotBeNull();
    }
}
