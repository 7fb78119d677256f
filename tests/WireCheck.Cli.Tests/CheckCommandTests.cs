using System.Text.Json;

namespace WireCheck.Cli.Tests;

public sealed class CheckCommandTests : IDisposable
{
    private const string Box = """
        pack: Small box
        language: 1
        surroundings: {ambient: {from: 0 °C, to: 35 °C}}
        cells:
          bank: {part: lfp-prismatic-100ah, series: 4, link_resistance: 0.1 mohm}

        """;

    private readonly string _folder = Directory.CreateTempSubdirectory("check-").FullName;

    public void Dispose() => Directory.Delete(_folder, recursive: true);

    [Fact]
    public void A_report_in_text_goes_to_standard_output_without_colour()
    {
        Write("box.yaml", Box);

        ProgramRun run = ProgramRun.In(_folder, "check", "box.yaml");

        run.Output.ShouldStartWith("Small box (box.yaml)\n");
        run.Output.ShouldNotContain("\u001b");
        run.Output.ShouldContain("A clean report is no certificate.");
        run.Errors.ShouldBeEmpty();
        run.Code.ShouldBeInRange(0, 1);
    }

    [Fact]
    public void Json_is_the_same_bytes_twice_and_in_a_file()
    {
        Write("box.yaml", Box);

        ProgramRun first = ProgramRun.In(_folder, "check", "box.yaml", "--format", "json");
        ProgramRun second = ProgramRun.In(_folder, "check", "box.yaml", "--format", "json");
        ProgramRun filed = ProgramRun.In(_folder, "check", "box.yaml", "--format", "json", "--out", "answer.json");

        second.Output.ShouldBe(first.Output);
        filed.Output.ShouldBeEmpty();
        File.ReadAllText(Path.Combine(_folder, "answer.json")).ShouldBe(first.Output);
        JsonDocument.Parse(first.Output).RootElement.GetProperty("pack").GetString().ShouldBe("Small box");
    }

    [Theory]
    [InlineData("advice", 1)]
    [InlineData("fault", 0)]
    [InlineData("danger", 0)]
    public void The_threshold_decides_the_exit_code(string threshold, int code)
    {
        Write("box.yaml", Box + "rules: [./mine.yaml]\n");
        Write("mine.yaml", """
            - id: box-is-small
              for: cells
              severity: advice
              title: A box is small
              require: it.id == "x"
              says: "{{ it.id }} is small."
              mend: Nothing.
              why: It is small.
              source: {work: Nobody, standing: from memory}
            """);

        ProgramRun run = ProgramRun.In(_folder, "check", "box.yaml", "--fail-on", threshold);

        run.Output.ShouldContain("PASSES, WITH ADVICE: 1 piece of advice.");
        run.Code.ShouldBe(code);
    }

    [Fact]
    public void Every_problem_of_every_file_is_told_on_standard_error_and_what_is_right_is_still_judged()
    {
        Write("box.yaml", Box);
        Write("bad.yaml", "pack: Box\nlanguage: 1\nrules: [portable-bax]\n" + Box[Box.IndexOf("surroundings", StringComparison.Ordinal)..]);

        ProgramRun run = ProgramRun.In(_folder, "check", "box.yaml", "bad.yaml", "none.yaml");

        run.Code.ShouldBe(2);
        run.Output.ShouldContain("(box.yaml)");
        run.Output.ShouldNotContain("bad.yaml");
        run.Errors.ShouldContain("bad.yaml:3:9: there is no rule set 'portable-bax'");
        run.Errors.ShouldContain("none.yaml:1:1: there is no such file");
        run.ShouldShowNoTrace();
    }

    [Fact]
    public void A_folder_stands_for_the_descriptions_in_it_and_ends_with_a_summary()
    {
        Write("boxes/b.yaml", Box);
        Write("boxes/deep/a.yml", Box);
        Write("boxes/rules.yaml", "title: No box\n");

        ProgramRun run = ProgramRun.In(_folder, "check", "boxes");

        run.Output.ShouldContain("(boxes/b.yaml)");
        run.Output.ShouldContain("(boxes/deep/a.yml)");
        run.Output[run.Output.IndexOf("Summary", StringComparison.Ordinal)..].ShouldContain("boxes/deep/a.yml: ");
        run.Errors.ShouldBeEmpty();
    }

    [Fact]
    public void A_folder_without_a_description_exits_2()
    {
        Directory.CreateDirectory(Path.Combine(_folder, "empty"));

        ProgramRun run = ProgramRun.In(_folder, "check", "empty");

        run.Code.ShouldBe(2);
        run.Errors.ShouldStartWith("empty:1:1: the folder holds no description");
    }

    [Fact]
    public void A_template_of_the_users_own_writes_the_answer()
    {
        Write("box.yaml", Box);
        Write("mine.md", "{{ for r in reports }}{{ r.title }} in {{ r.file }}{{ end }}");

        ProgramRun run = ProgramRun.In(_folder, "check", "box.yaml", "--format", "markdown", "--template", "mine.md");

        run.Output.ShouldEndWith(" in box.yaml");
    }

    [Theory]
    [InlineData("Required argument missing", "check")]
    [InlineData("'xml' not recognized", "check", "box.yaml", "--format", "xml")]
    [InlineData("'soon' is no day", "check", "box.yaml", "--today", "soon")]
    [InlineData("'--fail-at' is no option of check; did you mean '--fail-on'?", "check", "box.yaml", "--fail-at", "fault")]
    [InlineData("the file cannot be written", "check", "box.yaml", "--out", "no/such/folder/x.json")]
    public void A_wrong_use_exits_2(string expected, params string[] arguments)
    {
        Write("box.yaml", Box);

        ProgramRun run = ProgramRun.In(_folder, arguments);

        run.Code.ShouldBe(2);
        run.Output.ShouldBeEmpty();
        run.Errors.ShouldContain(expected);
        run.ShouldShowNoTrace();
    }

    [Fact]
    public void Mending_writes_the_file_in_place_tells_each_change_and_ends_as_the_second_check_does()
    {
        string text = "\uFEFF" + Box.Replace("\n", "\r\n", StringComparison.Ordinal) + "rules: [./mine.yaml]\r\n";
        Write("box.yaml", text);
        Write("mine.yaml", """
            - id: box-is-small
              for: cells
              severity: fault
              title: A box is small
              require: it.series == 8
              says: "{{ it.id }} is small."
              mend: Take more.
              edit: {key: series, value: 8}
              why: It is small.
              source: {work: Nobody, standing: from memory}
            """);

        ProgramRun run = ProgramRun.In(_folder, "check", "box.yaml", "--mend");

        run.Errors.ShouldBe("box.yaml:5:45: bank series: 4 becomes 8 (box-is-small)\nbox.yaml: 1 value written, 0 findings left\n");
        run.Output.ShouldContain("PASSES");
        run.Code.ShouldBe(0);
        File.ReadAllBytes(Path.Combine(_folder, "box.yaml"))
            .ShouldBe(System.Text.Encoding.UTF8.GetBytes(text.Replace("series: 4", "series: 8", StringComparison.Ordinal)));
    }

    [Fact]
    public void A_description_that_is_wrong_is_not_mended()
    {
        string text = Box + "fuse: {}\n";
        Write("box.yaml", text);

        ProgramRun run = ProgramRun.In(_folder, "check", "box.yaml", "--mend");

        run.Code.ShouldBe(2);
        File.ReadAllText(Path.Combine(_folder, "box.yaml")).ShouldBe(text);
    }

    private void Write(string name, string text)
    {
        string file = Path.Combine(_folder, name);
        Directory.CreateDirectory(Path.GetDirectoryName(file)!);
        File.WriteAllText(file, text);
    }
}
