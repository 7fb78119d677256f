using WireCheck.Findings;
using WireCheck.Reports;
using YamlDotNet.RepresentationModel;

namespace WireCheck.Tests.Seeded;

/// <summary>One mistake made in one clean example, with what must be found of it.</summary>
/// <param name="Mistake">Name of the mistake in the trade.</param>
/// <param name="Box">The example it is made in.</param>
/// <param name="Change">What is laid over the example.</param>
/// <param name="Rule">Rule that must answer.</param>
/// <param name="Part">Part it must name.</param>
/// <param name="Also">Rules whose findings the same mistake truly brings with it.</param>
public sealed record SeededMistake(string Mistake, string Box, YamlMappingNode Change, string Rule, string Part, IReadOnlyList<string> Also)
{
    private static readonly DateOnly Today = new(2027, 1, 1);

    /// <summary>Every mistake in every example that can have it.</summary>
    public static IReadOnlyList<SeededMistake> All { get; } = Read();

    /// <summary>The findings of the box with the mistake.</summary>
    public IReadOnlyList<Finding> Findings()
    {
        string examples = Path.Combine(Golden.Root, "examples");
        string file = Path.Combine(examples, Box + ".yaml");
        YamlMappingNode pack = Load(File.ReadAllText(file));
        YamlOverlay.Lay(pack, Change);
        using StringWriter text = new();
        new YamlStream(new YamlDocument(pack)).Save(text, assignAnchors: false);
        CheckOutcome outcome = PackCheck.Standard.Check(Box + ".yaml", text.ToString(), new CheckOptions(examples, Today));
        outcome.Problems.Select(p => p.ToString()).ShouldBeEmpty();
        return outcome.Report.ShouldNotBeNull().Findings.Findings;
    }

    /// <summary>True for the finding that the mistake must raise.</summary>
    public bool IsFoundBy(Finding finding) => finding.Rule == Rule && finding.Part == Part;

    /// <summary>True for a finding that the mistake does not explain.</summary>
    public bool IsFalseAlarm(Finding finding) => finding.Rule != Rule && !Also.Contains(finding.Rule);

    private static List<SeededMistake> Read()
    {
        YamlStream stream = [];
        stream.Load(new StringReader(File.ReadAllText(Path.Combine(Golden.Root, "tests", "WireCheck.Tests", "Seeded", "mistakes.yaml"))));
        List<SeededMistake> mistakes = [];
        foreach (YamlNode entry in (YamlSequenceNode)stream.Documents[0].RootNode)
        {
            foreach ((YamlNode box, YamlNode made) in (YamlMappingNode)entry["boxes"])
            {
                YamlNode found = made["found"];
                IReadOnlyList<string> also = ((YamlMappingNode)made).Children.TryGetValue("also", out YamlNode? rules)
                    ? [.. ((YamlSequenceNode)rules).Select(r => r.ToString())]
                    : [];
                mistakes.Add(new SeededMistake(
                    entry["mistake"].ToString(), box.ToString(), (YamlMappingNode)made["change"],
                    found["rule"].ToString(), found["part"].ToString(), also));
            }
        }

        return mistakes;
    }

    private static YamlMappingNode Load(string text)
    {
        YamlStream stream = [];
        stream.Load(new StringReader(text));
        return (YamlMappingNode)stream.Documents[0].RootNode;
    }
}
