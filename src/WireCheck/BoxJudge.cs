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

    /// <summary>Everything that is found with these values, worked out anew.</summary>
    internal FindingList Whole(IReadOnlyList<SizedValue> values, IReadOnlyList<string> texts)
    {
        Pack pack = Read(values, texts);
        return Judge(pack, BoxFacts.Gather(new GatherContext(SolvedBox.Solve(pack, Data)))).Findings;
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
        ProblemList problems = new();
        return PackReader.ReadTree(file, PackTree.With(root, values, texts), LibraryClasses.Embedded, problems)
            ?? throw new InvalidOperationException(problems.InOrder()[0].ToString());
    }

    private (FindingList Findings, Judgements Judgements) Judge(Pack pack, FactTable facts)
    {
        ProblemList problems = new();
        Judgements judgements = RuleEngine.Judge(facts, sets, settings, problems, stop);
        return (FindingList.Make(judgements, pack.Waivers, facts.Pack, sets, settings, today, problems), judgements);
    }
}
