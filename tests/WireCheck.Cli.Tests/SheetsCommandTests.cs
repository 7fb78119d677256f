namespace WireCheck.Cli.Tests;

public sealed class SheetsCommandTests : IDisposable
{
    private const string Box = """
        pack: Small box
        language: 1
        surroundings: {ambient: {from: 0 °C, to: 35 °C}}
        cells:
          bank: {part: lfp-prismatic-100ah, series: 4, link_resistance: 0.1 mohm}
        fuses:
          main: {part: class-t, rating: 110 A}
        defaults:
          conductor: {insulation: pvc-105, ends: crimped-ring}
        conductors:
          w1: {from: bank.+, to: main.1, size: 8 AWG, length: 100 mm, colour: "=red"}

        """;

    private readonly string _folder = Directory.CreateTempSubdirectory("sheets-").FullName;

    public SheetsCommandTests() => File.WriteAllText(Path.Combine(_folder, "box.yaml"), Box);

    public void Dispose() => Directory.Delete(_folder, recursive: true);

    [Fact]
    public void Markdown_goes_to_standard_output_the_same_twice()
    {
        ProgramRun run = ProgramRun.In(_folder, "sheets", "box.yaml");

        run.Code.ShouldBe(0);
        run.Output.ShouldStartWith("# Small box: sheets\n");
        run.Output.ShouldContain("## Order of first connection");
        run.Errors.ShouldStartWith("box.yaml: DANGEROUS: ");
        run.Errors.ShouldContain("Do not build from these sheets");
        ProgramRun.In(_folder, "sheets", "box.yaml").ShouldBe(run);
    }

    [Fact]
    public void One_sheet_as_csv_goes_to_standard_output_without_a_formula_in_it()
    {
        ProgramRun run = ProgramRun.In(_folder, "sheets", "box.yaml", "--format", "csv", "--sheet", "cut-list");

        run.Code.ShouldBe(0);
        run.Output.ShouldBe("wire,\"length, mm\",size,colour,insulation,end at from,end at to,label from,label to,\"sleeve, bundle, wall\"\r\n"
            + "w1,100,8 AWG,'=red,pvc-105,crimped-ring at bank.+,crimped-ring at main.1,w1 bank.+,w1 main.1,\r\n");
    }

    [Fact]
    public void All_sheets_as_csv_go_into_a_folder_one_file_each()
    {
        ProgramRun run = ProgramRun.In(_folder, "sheets", "box.yaml", "--format", "csv", "--out", "papers");

        run.Code.ShouldBe(0);
        run.Output.ShouldBeEmpty();
        Directory.EnumerateFiles(Path.Combine(_folder, "papers")).Count().ShouldBeGreaterThan(10);
        File.ReadAllText(Path.Combine(_folder, "papers", "fuse-schedule.csv")).ShouldContain("main,110 A,class-t");
    }

    [Fact]
    public void A_page_goes_into_a_file()
    {
        ProgramRun.In(_folder, "sheets", "box.yaml", "--format", "html", "--out", "papers.html").Code.ShouldBe(0);

        File.ReadAllText(Path.Combine(_folder, "papers.html")).ShouldStartWith("<!DOCTYPE html>");
    }

    [Theory]
    [InlineData("csv holds one table", "sheets", "box.yaml", "--format", "csv")]
    [InlineData("'cut-lst' is no sheet; did you mean 'cut-list'? Sheets: verdict, cut-list,", "sheets", "box.yaml", "--sheet", "cut-lst")]
    [InlineData("none.yaml:1:1: there is no such file", "sheets", "none.yaml")]
    [InlineData("'text' not recognized", "sheets", "box.yaml", "--format", "text")]
    public void A_wrong_use_exits_2(string expected, params string[] arguments)
    {
        ProgramRun run = ProgramRun.In(_folder, arguments);

        run.Code.ShouldBe(2);
        run.Output.ShouldBeEmpty();
        run.Errors.ShouldContain(expected);
        run.ShouldShowNoTrace();
    }
}
