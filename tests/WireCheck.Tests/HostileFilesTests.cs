using System.Diagnostics;

namespace WireCheck.Tests;

/// <summary>
/// A description or rule set from a stranger: whatever stands in it, the check ends soon, with problems or a report, and reads
/// nothing outside its folder. Templates are in <c>Reports/ReportTemplateTests</c>, what names can do to each output beside its writer.
/// </summary>
public sealed class HostileFilesTests : IDisposable
{
    private const string Head = "pack: Box\nlanguage: 1\nsurroundings: {ambient: {from: 5 °C, to: 35 °C}}\n";

    private static readonly TimeSpan Longest = TimeSpan.FromSeconds(30);

    private readonly string _folder = Directory.CreateTempSubdirectory("hostile-").FullName;

    public void Dispose() => Directory.Delete(_folder, recursive: true);

    [Fact]
    public void Aliases_of_aliases_end_in_one_problem_in_a_description_and_in_a_rule_set()
    {
        File.WriteAllText(Path.Combine(_folder, "mine.yaml"), Bomb());

        Problems(Head + Bomb()).ShouldHaveSingleItem().ShouldContain("values, aliases followed");
        Problems(Head + Cells + "rules: [./mine.yaml]\n").ShouldContain(p => p.StartsWith("mine.yaml:") && p.Contains("aliases followed", StringComparison.Ordinal));
    }

    [Theory]
    [InlineData('[')]
    [InlineData('{')]
    public void Nesting_without_end_ends_in_a_problem_in_a_description_and_in_a_rule_set(char open)
    {
        string deep = new(open, 50_000);
        File.WriteAllText(Path.Combine(_folder, "mine.yaml"), $"title: {deep}\n");

        Problems(Head + $"notes: {deep}\n").ShouldNotBeEmpty();
        Problems(Head + Cells + "rules: [./mine.yaml]\n").ShouldContain(p => p.StartsWith("mine.yaml:"));
    }

    [Theory]
    [InlineData("../../../etc/passwd")]
    [InlineData("/etc/passwd")]
    [InlineData("..\\..\\secret")]
    [InlineData("rules/parts/cells.yaml")]
    [InlineData("%2e%2e/secret")]
    public void A_part_class_is_a_name_and_never_a_path(string path)
    {
        string cells = $"cells:\n  bank: {{part: '{path}', series: 4}}\n";

        Problems(Head + cells).ShouldContain(p => p.StartsWith("box.yaml:5:") && p.Contains("part", StringComparison.Ordinal));
    }

    [Theory]
    [InlineData("../box.yaml")]
    [InlineData("/etc/passwd.yaml")]
    [InlineData("./a/../../b.yaml")]
    [InlineData("..\\b.yaml")]
    public void A_rule_set_outside_the_folder_is_not_read(string path) =>
        Problems(Head + Cells + $"rules: ['{path}']\n").ShouldHaveSingleItem().ShouldMatch("lies outside|no file or folder");

    [Theory]
    [InlineData("<script>alert(1)</script>")]
    [InlineData("a b")]
    [InlineData("{{ 1 + 1 }}")]
    [InlineData("\\u001b[31m")]
    [InlineData("\\u202egnp")]
    [InlineData("](https://example.org)")]
    public void An_id_that_could_mean_something_to_a_reader_is_refused(string id) =>
        Problems(Head + Cells + $"fuses:\n  \"{id}\": {{part: blade, rating: 5 A}}\n").ShouldNotBeEmpty();

    [Theory]
    [InlineData("{{ for i in 1..1000000000 }}x{{ end }}")]
    [InlineData("{{ while true }}x{{ end }}")]
    [InlineData("{{ include '/etc/passwd' }}")]
    [InlineData("{{ import it }}")]
    [InlineData("{{ date.now }}")]
    public void Words_of_a_rule_that_loop_or_read_are_refused_before_they_run(string words)
    {
        File.WriteAllText(Path.Combine(_folder, "mine.yaml"), $"""
            - id: mine
              for: cells
              severity: advice
              title: Mine
              require: it.id == "x"
              says: "{words}"
              mend: Nothing.
              why: Nothing.
              source: {"{work: Nobody, standing: from memory}"}
            """);

        Problems(Head + Cells + "rules: [./mine.yaml]\n").ShouldContain(p => p.StartsWith("mine.yaml:"));
    }

    private const string Cells = "cells:\n  bank: {part: lfp-prismatic-100ah, series: 4, link_resistance: 0.1 mohm}\n";

    private static string Bomb()
    {
        string bomb = "a: &a [x, x, x, x, x, x, x, x, x, x]\n";
        for (char c = 'b'; c <= 'j'; c++)
        {
            bomb += $"{c}: &{c} [{string.Join(", ", Enumerable.Repeat($"*{(char)(c - 1)}", 10))}]\n";
        }

        return bomb;
    }

    private IReadOnlyList<string> Problems(string text)
    {
        Stopwatch clock = Stopwatch.StartNew();
        CheckOutcome outcome = PackCheck.Standard.Check("box.yaml", text, new CheckOptions(_folder, new DateOnly(2027, 1, 1)));
        clock.Elapsed.ShouldBeLessThan(Longest);
        outcome.Report.ShouldBeNull();
        return [.. outcome.Problems.Select(p => p.ToString())];
    }
}
