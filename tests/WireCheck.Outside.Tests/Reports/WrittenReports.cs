using System.Text;
using WireCheck.Reports;
using WireCheck.Reports.Sarif;
using WireCheck.Reports.Templates;
using WireCheck.Reports.Text;
using WireCheck.Text;

namespace WireCheck.Outside.Tests.Reports;

/// <summary>The page and the SARIF of every example, and of a box whose names try to break out, written once for all tests.</summary>
public sealed class WrittenReports : IDisposable
{
    private const string Hostile = "</script><img src=x onerror=alert(1)> {0} [a](b) `c` \u202Egnp.exe \u2066 \u0007 & \"q\" 'p' | #";

    private readonly string _folder = Directory.CreateTempSubdirectory("reports-").FullName;

    public WrittenReports()
    {
        foreach (string example in Directory.GetFiles(Path.Combine(Tool.Root, "examples"), "*.yaml").Order(StringComparer.Ordinal))
        {
            Write(Path.GetFileNameWithoutExtension(example), "examples/" + Path.GetFileName(example), File.ReadAllText(example));
        }

        string draft = File.ReadAllText(Path.Combine(Tool.Root, "examples", "first-draft-12v.yaml"));
        string title = "pack: \"" + Hostile.Replace("\"", "\\\"", StringComparison.Ordinal).Replace("\u0007", "\\a", StringComparison.Ordinal) + "\"\n";
        Write("hostile", "a <b> & %20 \"c\".yaml", string.Concat(draft.Split('\n').Select(l => l.StartsWith("pack:", StringComparison.Ordinal) ? title : l + "\n")));
    }

    /// <summary>Every page.</summary>
    public IReadOnlyList<string> Pages => [.. Directory.GetFiles(_folder, "*.html").Order(StringComparer.Ordinal)];

    /// <summary>Every SARIF file.</summary>
    public IReadOnlyList<string> Sarifs => [.. Directory.GetFiles(_folder, "*.sarif").Order(StringComparer.Ordinal)];

    public void Dispose() => Directory.Delete(_folder, recursive: true);

    private void Write(string name, string file, string text)
    {
        Report report = PackCheck.Standard.Check(file, text, new CheckOptions(null, new DateOnly(2027, 1, 1))).Report.ShouldNotBeNull();
        string page = ReportTemplate.Own(TemplateTarget.Html).Write([report], TextStyle.Piped, new ProblemList()).ShouldNotBeNull();
        File.WriteAllText(Path.Combine(_folder, name + ".html"), page, new UTF8Encoding(false));
        using FileStream sarif = File.Create(Path.Combine(_folder, name + ".sarif"));
        SarifReport.Write(sarif, [report]);
    }
}
