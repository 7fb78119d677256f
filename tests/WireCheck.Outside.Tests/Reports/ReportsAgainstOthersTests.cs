using System.Text.Json;

namespace WireCheck.Outside.Tests.Reports;

/// <summary>
/// The reports of every example before programs of others: a browser (Debian's chromium) with the accessibility rules of
/// axe-core, the JSON schema of SARIF 2.1.0 that OASIS publishes (as the package sarif-multitool carries it) under
/// python3-jsonschema, the validator of sarif-multitool, and the XML reader of Python for the drawings.
/// </summary>
public sealed class ReportsAgainstOthersTests(WrittenReports reports) : IClassFixture<WrittenReports>
{
    [Fact]
    public void Every_page_is_sound_in_a_browser_wide_and_light_as_well_as_narrow_and_dark()
    {
        (int code, string output, string errors) = Tool.Run("node", [Path.Combine(Tool.Browser, "pages.js"), .. reports.Pages]);
        code.ShouldBe(0, errors);
        JsonElement[] views = [.. JsonDocument.Parse(output).RootElement.EnumerateArray()];

        views.Length.ShouldBe(2 * reports.Pages.Count);
        foreach (JsonElement view in views)
        {
            string name = $"{view.GetProperty("file")} {view.GetProperty("scheme")} {view.GetProperty("width")}";
            foreach (string fault in (string[])["errors", "requests", "overlaps", "unreachable", "lost", "axe"])
            {
                view.GetProperty(fault).EnumerateArray().Select(e => e.GetString()).ShouldBeEmpty($"{fault} of {name}");
            }

            view.GetProperty("sideways").GetBoolean().ShouldBeFalse(name);
        }

        views.Select(v => $"{v.GetProperty("scheme")} {v.GetProperty("ground")}").Distinct().Count().ShouldBe(2);
    }

    [Fact]
    public void Every_sarif_file_fits_the_published_schema()
    {
        string schema = Tool.Package("@microsoft/sarif-multitool-linux/sarif-2.1.0.json");
        (int code, string output, string errors) = Tool.Run(
            "python3", [Path.Combine(Tool.Root, "tests/WireCheck.Outside.Tests/Schema/validate.py"), schema, .. reports.Sarifs]);

        code.ShouldBe(0, errors);
        output.ShouldBe("");
    }

    [Fact]
    public void Every_sarif_file_passes_a_second_validator()
    {
        string program = Tool.Package("@microsoft/sarif-multitool-linux/Sarif.Multitool");
        if (!OperatingSystem.IsWindows())
        {
            File.SetUnixFileMode(program, File.GetUnixFileMode(program) | UnixFileMode.UserExecute);
        }

        string answer = Path.GetTempFileName();
        try
        {
            (int code, string output, string errors) = Tool.Run(
                program, ["validate", .. reports.Sarifs, "--output", answer, "--log", "ForceOverwrite", "--level", "Error;Warning"]);
            JsonElement run = JsonDocument.Parse(File.ReadAllText(answer)).RootElement.GetProperty("runs")[0];

            code.ShouldBe(0, output + errors);
            output.ShouldContain($"{reports.Sarifs.Count} files scanned");

            // SARIF2005 asks for the address of a page about the program, and there is none.
            run.GetProperty("results").EnumerateArray().Where(r => r.GetProperty("ruleId").GetString() != "SARIF2005").Select(r => r.GetRawText()).ShouldBeEmpty();
        }
        finally
        {
            File.Delete(answer);
        }
    }

    [Fact]
    public void Every_fix_of_a_sarif_file_stands_where_the_description_has_it()
    {
        (int code, string output, string errors) = Tool.Run(
            "python3", [Path.Combine(Tool.Root, "tests/WireCheck.Outside.Tests/Reports/fixes.py"), Tool.Root, .. reports.Sarifs]);

        code.ShouldBe(0, errors);
        output.ShouldContain("w9 size 4 AWG: '12 AWG' -> '4 AWG'");
        output.ShouldContain("f-usb rating 4 A: '7.5 A' -> '4 A'");
    }

    [Fact]
    public void Every_drawing_and_plot_is_read_by_another_reader_of_xml()
    {
        (int code, string output, string errors) = Tool.Run(
            "python3", [Path.Combine(Tool.Root, "tests/WireCheck.Outside.Tests/Reports/drawings.py"), .. reports.Pages]);

        code.ShouldBe(0, errors);
        string[] lines = output.Split('\n', StringSplitOptions.RemoveEmptyEntries);
        lines.Length.ShouldBe(reports.Pages.Count);
        lines.ShouldAllBe(line => int.Parse(line.Split(' ')[1], System.Globalization.CultureInfo.InvariantCulture) > 3);
    }
}
