using WireCheck.Tests.Rules;

namespace WireCheck.Tests.Mending;

/// <summary>Values that findings offer are written, checked again and told.</summary>
public sealed class PackMendingTests : IDisposable
{
    private const string Box = """
        # A box of one loop.
        pack: Small box
        language: 1
        rules: [./mine.yaml]
        surroundings: {ambient: {from: 0 °C, to: 35 °C}}
        defaults: {conductor: {insulation: pvc-105, ends: crimped-ring}}
        cells:
          bank: {part: lfp-prismatic-100ah, series: 4, link_resistance: 0.1 mohm}
        fuses:
          main: {part: blade, rating: 20 A}   # near the bank
        busbars:
          plus: {section: 15 x 3 mm, length: 60 mm}
        conductors:
          w1: {from: bank.+, to: main.1, size: 12 AWG, length: 90 mm}
          w2: {from: main.2, to: plus, size: 12 AWG, length: 90 mm}

        """;

    private readonly string _folder = Directory.CreateTempSubdirectory("mend-").FullName;

    public static TheoryData<string> RulesWithEdits =>
        [.. Directory.GetFiles(Path.Combine(Golden.Root, "rules/sets/portable-box"), "*.yaml").SelectMany(IdsWithEdits).Order(StringComparer.Ordinal)];

    public void Dispose() => Directory.Delete(_folder, recursive: true);

    [Theory]
    [MemberData(nameof(RulesWithEdits))]
    public void The_bad_box_of_a_rule_with_an_edit_is_mended_by_it(string rule)
    {
        string text = File.ReadAllText(Path.Combine(CaseFolderTests.Folder, rule, "bad.yaml"));
        MendOutcome outcome = Mend(text);

        outcome.Told.ShouldContain(line => line.Contains($"({rule}", StringComparison.Ordinal), string.Join('\n', outcome.Told));
        outcome.Check.Report!.Findings.Findings.Where(f => f.Rule == rule && f.Edits.Count > 0).Select(f => $"{f.Part}: {f.Message}").ShouldBeEmpty();
        Mend(outcome.Text).Text.ShouldBe(outcome.Text);
    }

    [Fact]
    public void The_first_draft_keeps_every_line_but_those_that_are_told()
    {
        string[] before = File.ReadAllLines(Path.Combine(Golden.Root, "examples/first-draft-12v.yaml"));
        MendOutcome outcome = Mend(string.Join('\n', before) + "\n");
        string[] after = outcome.Text.TrimEnd('\n').Split('\n');

        after.Length.ShouldBe(before.Length);
        int[] changed = [.. Enumerable.Range(0, before.Length).Where(i => before[i] != after[i]).Select(i => i + 1)];
        changed.Length.ShouldBeGreaterThan(5);
        changed.ShouldAllBe(line => outcome.Told.Any(t => t.StartsWith($"box.yaml:{line}:", StringComparison.Ordinal)));
        outcome.Told.ShouldContain("box.yaml:119:45: w9 size: 12 AWG becomes 4 AWG (conductor-over-ampacity)");
    }

    [Fact]
    public void Of_two_values_for_one_key_the_safer_one_is_written_and_the_other_is_told()
    {
        WriteRules(Rule("wants-eight", "size", "8 AWG", "safer: larger", "conductor"), Rule("wants-six", "size", "6 AWG", "safer: larger", "conductor"),
            Rule("wants-ten", "rating", "10 A", "safer: smaller", "fuse"), Rule("wants-fifteen", "rating", "15 A", "safer: smaller", "fuse"));
        MendOutcome outcome = Mend(Box);

        outcome.Text.ShouldBe(Box.Replace("12 AWG", "6 AWG", StringComparison.Ordinal).Replace("20 A}", "10 A}", StringComparison.Ordinal));
        outcome.Told.ShouldContain("box.yaml:14:40: w1 size: 12 AWG becomes 6 AWG (wants-six; wants-eight on w1 wanted 8 AWG)");
        outcome.Told.ShouldContain("box.yaml:10:31: main rating: 20 A becomes 10 A (wants-ten; wants-fifteen on main wanted 15 A)");
    }

    [Fact]
    public void Values_that_go_back_and_forth_come_to_an_end()
    {
        WriteRules(
            Rule("not-twelve", "size", "{{ if it.size == \"12 AWG\" }}10 AWG{{ else }}12 AWG{{ end }}", "safer: larger", "conductor"));
        MendOutcome outcome = Mend(Box);

        outcome.Changes.ShouldBe(4);
        outcome.Text.ShouldBe(Box);
    }

    [Fact]
    public void A_value_that_would_make_the_description_wrong_is_not_written()
    {
        WriteRules(Rule("wants-nonsense", "size", "very thick", "safer: larger", "conductor"));
        MendOutcome outcome = Mend(Box);

        outcome.Text.ShouldBe(Box);
        outcome.Changes.ShouldBe(0);
        outcome.Told.ShouldHaveSingleItem().ShouldContain("would make the description wrong");
        outcome.Check.Report.ShouldNotBeNull();
    }

    [Fact]
    public void A_value_that_an_alias_shares_stays_and_that_is_told()
    {
        WriteRules(Rule("wants-six", "size", "6 AWG", "safer: larger", "conductor"));
        string text = Box
            .Replace("w1: {from: bank.+, to: main.1, size: 12 AWG, length: 90 mm}", "w1:\n    from: bank.+\n    to: main.1\n    size: &thick 12 AWG\n    length: 90 mm", StringComparison.Ordinal)
            .Replace("to: plus, size: 12 AWG", "to: plus, size: *thick", StringComparison.Ordinal);
        MendOutcome outcome = Mend(text);

        outcome.Text.ShouldBe(text);
        outcome.Told.ShouldContain("box.yaml:17:11: w1 size is left as it is: it is shared by the alias *thick; write it out at this part first");
    }

    [Fact]
    public void A_waived_finding_is_not_mended_and_a_wrong_description_is_left_alone()
    {
        WriteRules(Rule("wants-ten", "rating", "10 A", "safer: smaller", "fuse"));
        string waived = Box + "waivers:\n  - {rule: wants-ten, part: main, because: tried}\n";
        Mend(waived).Text.ShouldBe(waived);
        string wrong = Box.Replace("language: 1", "langage: 1", StringComparison.Ordinal);
        MendOutcome outcome = Mend(wrong);
        outcome.Text.ShouldBe(wrong);
        outcome.Check.Problems.ShouldNotBeEmpty();
    }

    private static IEnumerable<string> IdsWithEdits(string file)
    {
        string id = "";
        foreach (string line in File.ReadLines(file))
        {
            id = line.StartsWith("- id: ", StringComparison.Ordinal) ? line["- id: ".Length..] : id;
            if (line.StartsWith("  edit:", StringComparison.Ordinal))
            {
                yield return id;
            }
        }
    }

    private static string Rule(string id, string key, string value, string safer, string kind) => $$"""
        - id: {{id}}
          for: {{kind}}
          severity: fault
          title: A value is another one
          require: it.{{key}} {{(kind == "fuse" ? "<= 9" : "== \"5 AWG\"")}}
          says: It is not.
          mend: Write it.
          edit: {key: {{key}}, value: '{{value}}', {{safer}} }
          why: It is a test.
          source: {work: Nobody, standing: from memory}

        """;

    private void WriteRules(params string[] rules) => File.WriteAllText(Path.Combine(_folder, "mine.yaml"), string.Concat(rules));

    private MendOutcome Mend(string text) =>
        new PackMending(PackCheck.Standard).Mend("box.yaml", text, new CheckOptions(_folder, new DateOnly(2027, 1, 1)));
}
