using WireCheck.Circuit.Wiring;
using WireCheck.Description;
using WireCheck.Facts;
using WireCheck.Facts.Gather;
using WireCheck.Findings;
using WireCheck.Knowledge;
using WireCheck.Rules;
using WireCheck.Sizing;
using WireCheck.States;
using WireCheck.Text;

namespace WireCheck;

/// <summary>The check as sizing asks for it: the same tree with other values in it.</summary>
internal sealed class BoxJudge(
    string file, YamlMap root, IReadOnlyList<RuleSet> sets, IReadOnlyDictionary<string, double> settings, DateOnly today, CancellationToken stop)
    : IBoxJudge
{
    private static readonly WiringData Data = new(Library.Embedded);

    private GatherContext? _written;

    /// <summary>Judges the box as it is written.</summary>
    internal (FindingList Findings, GatherContext Box, FactTable Facts) Written(Pack pack)
    {
        GatherContext box = new(SolvedBox.Solve(pack, Data));
        FactTable facts = BoxFacts.Gather(box);
        _written = box;
        return (Judge(pack, facts).Findings, box, facts);
    }

    public Trial Judge(IReadOnlyList<SizedValue> values, IReadOnlyList<string> texts, bool whole)
    {
        stop.ThrowIfCancellationRequested();
        Pack pack = Read(values, texts);
        GatherContext box = new(SolvedBox.Solve(pack, Data), whole ? null : _written);
        (FindingList findings, Judgements judgements) = Judge(pack, BoxFacts.Gather(box));
        return new Trial(findings, judgements);
    }

    private Pack Read(IReadOnlyList<SizedValue> values, IReadOnlyList<string> texts)
    {
        TreeEdit[] edits = new TreeEdit[texts.Count];
        for (int i = 0; i < edits.Length; i++)
        {
            edits[i] = new TreeEdit(values[i].Section, values[i].Id, string.Join('.', values[i].Keys), texts[i]);
        }

        ProblemList problems = new();
        return PackReader.ReadTree(file, TreeEdit.Apply(root, edits), problems)
            ?? throw new InvalidOperationException(problems.InOrder()[0].ToString());
    }

    private (FindingList Findings, Judgements Judgements) Judge(Pack pack, FactTable facts)
    {
        ProblemList problems = new();
        Judgements judgements = RuleEngine.Judge(facts, sets, settings, problems, stop);
        return (FindingList.Make(judgements, pack.Waivers, facts.Pack, sets, settings, today, problems), judgements);
    }
}
