using WireCheck.Reports;
using WireCheck.Reports.Svg;
using WireCheck.Tests.House;

namespace WireCheck.Tests.Documentation;

/// <summary>The picture of the README is the drawing of its example, as the report shows it.</summary>
public sealed class PictureTests
{
    private const string Box = "examples/first-draft-12v.yaml";
    private const string Picture = "examples/first-draft-12v.svg";

    [Fact]
    public void The_picture_of_the_readme_is_what_is_drawn_today()
    {
        Report report = PackCheck.Standard.Check(Box, SourceTree.Read(Box), new CheckOptions(null, new DateOnly(2027, 1, 1))).Report!;

        string svg = DrawingSvg.Write(report.Drawing!.Value, report.PackTitle, report.Findings.Findings, "", ownStyle: true);

        if (Environment.GetEnvironmentVariable("WIRECHECK_REGENERATE") == "1")
        {
            File.WriteAllText(Path.Combine(Golden.Root, Picture), svg);
        }

        SourceTree.Read(Picture).ShouldBe(svg, $"{Picture} is not current");
        SourceTree.Read("README.md").ShouldContain($"]({Picture})");
    }
}
