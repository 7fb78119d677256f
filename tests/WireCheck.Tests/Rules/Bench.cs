using WireCheck.Facts;
using WireCheck.Rules;
using WireCheck.Text;

namespace WireCheck.Tests.Rules;

/// <summary>Hand-made facts and rule sets of one file, for tests of the engine.</summary>
internal static class Bench
{
    internal static readonly Fact Current = Fact.Worst("conductor", "current", "A", "Largest current.");
    internal static readonly Fact Ampacity = Fact.Number("conductor", "ampacity", "A", "Ampacity.");
    internal static readonly Fact Drop = Fact.Number("conductor", "drop", "V", "Voltage drop.");
    internal static readonly Fact Share = Fact.Number("conductor", "share", "", "Drop as a share.");
    internal static readonly Fact Size = Fact.Word("conductor", "size", "Size.");
    internal static readonly Fact Covered = Fact.YesNo("conductor", "covered", "Whether it is covered.");
    internal static readonly Fact Chain = Fact.Names("conductor", "chain", "Parts it feeds.");
    internal static readonly Fact Highest = Fact.Number("pack", "highest_voltage", "V", "Highest voltage.");

    internal static FactVocabulary Vocabulary { get; } =
        new([Current, Ampacity, Drop, Share, Size, Covered, Chain, Highest, Fact.Number("fuse", "rating", "A", "Rating.")]);

    internal static FactSubject Pack { get; } = MakePack();

    internal static FactSubject Conductor(string id, double? current = null, double? ampacity = null)
    {
        FactSubject subject = new("conductor", id, new Position("box.yaml", 10, 3));
        if (current is double amps)
        {
            subject.KeepLargest(Current, amps, new FactPlace("boiling", "full, hot"));
        }

        if (ampacity is double limit)
        {
            subject.Set(Ampacity, limit);
        }

        return subject;
    }

    /// <summary>A rule file with one rule; the given lines replace those of the same key.</summary>
    internal static string RuleText(params string[] lines)
    {
        Dictionary<string, string> fields = new()
        {
            ["id"] = "over-ampacity",
            ["for"] = "conductor",
            ["severity"] = "danger",
            ["title"] = "A conductor carries too much",
            ["require"] = "it.current <= it.ampacity",
            ["says"] = "\"{{ it.id }} carries {{ it.current | amps }} in {{ it.current_mode }}\"",
            ["mend"] = "Use a larger one.",
            ["why"] = "It burns.",
            ["source"] = "{work: A book, clause: page 3, standing: published}",
        };
        foreach (string line in lines)
        {
            int colon = line.IndexOf(':', StringComparison.Ordinal);
            string value = line[(colon + 1)..].Trim();
            if (value.Length == 0)
            {
                fields.Remove(line[..colon]);
            }
            else
            {
                fields[line[..colon]] = value;
            }
        }

        return "- " + string.Join("\n  ", fields.Select(f => $"{f.Key}: {f.Value}")) + "\n";
    }

    /// <summary>Reads and checks one file as a whole rule set.</summary>
    internal static (RuleSet? Set, IReadOnlyList<string> Problems) Read(string text)
    {
        ProblemList problems = new();
        RuleSet? set = new RuleSetReader(Vocabulary, _ => null, problems).Read("bench", [new RuleFile("bench.yaml", text)]);
        if (set is not null)
        {
            RuleSetReader.CheckAll(set, problems);
        }

        return (set, [.. problems.InOrder().Select(p => p.ToString())]);
    }

    internal static Judgements Judge(string text, params FactSubject[] subjects)
    {
        (RuleSet? set, IReadOnlyList<string> wrong) = Read(text);
        wrong.ShouldBeEmpty();
        ProblemList problems = new();
        IReadOnlyDictionary<string, double> settings = SettingValues.Resolve([set!], new Dictionary<string, YamlScalar>(), problems);
        Judgements judgements = RuleEngine.Judge(new FactTable(Pack, subjects), [set!], settings, problems);
        problems.InOrder().ShouldBeEmpty();
        return judgements;
    }

    private static FactSubject MakePack()
    {
        FactSubject pack = new("pack", "pack", new Position("box.yaml", 1, 1));
        pack.Set(Highest, 14.6);
        return pack;
    }
}
