using WireCheck.Facts;
using WireCheck.Facts.Catalogue;
using WireCheck.Findings;
using WireCheck.Rules;
using WireCheck.Sizing;
using WireCheck.Text;

namespace WireCheck.Tests.Sizing;

/// <summary>
/// Loads at the ends of wires, without a circuit: each load's drop is the sum of its currents times the resistances of the wires,
/// and each wire must be good for an option of its own. Small enough to try every combination.
/// </summary>
internal sealed class FakeJudge(double[][] amps, double[] limits, int[] least) : IBoxJudge
{
    private static readonly Rule Drop = new RuleSetLibrary(new FactVocabulary(FactCatalogue.All))
        .Find("portable-box", default, new ProblemList())!.Rules.First(r => r.Id == "drop-over-percent" && r.Kind == "load");

    private static readonly Rule Own = new RuleSetLibrary(new FactVocabulary(FactCatalogue.All))
        .Find("portable-box", default, new ProblemList())!.Rules.First(r => r.Id == "conductor-over-ampacity");

    public Trial Judge(IReadOnlyList<SizedValue> values, IReadOnlyList<string> texts, bool whole)
    {
        int[] choice = [.. values.Select((v, i) => v.Options.ToList().FindIndex(o => o.Text == texts[i]))];
        List<Finding> findings = [];
        List<Judgement> found = [];
        List<Margin> margins = [];
        for (int load = 0; load < limits.Length; load++)
        {
            FactSubject subject = new("load", FormattableString.Invariant($"load{load}"), default);
            Margin margin = new(Drop, subject, DropOf(load, values, choice), limits[load], "V");
            if (margin.Used <= margin.Limit)
            {
                margins.Add(margin);
            }
            else
            {
                found.Add(new Judgement(Drop, subject, Severity.Advice, "", "", [], null) { Failed = margin });
                findings.Add(Of(Drop, subject));
            }
        }

        for (int wire = 0; wire < choice.Length; wire++)
        {
            if (choice[wire] < least[wire])
            {
                FactSubject subject = new("conductor", values[wire].Id, default);
                found.Add(new Judgement(Own, subject, Severity.Danger, "", "", [], null));
                findings.Add(Of(Own, subject));
            }
        }

        return new Trial(new FindingList(findings, [], [], new FindingCounts(0, 0, 0, 0, 0)), new Judgements(found, [], margins));
    }

    internal bool Passes(IReadOnlyList<SizedValue> values, int[] choice) =>
        Enumerable.Range(0, limits.Length).All(load => DropOf(load, values, choice) <= limits[load])
        && Enumerable.Range(0, choice.Length).All(wire => choice[wire] >= least[wire]);

    /// <summary>A wire of some options: of section s and length l it weighs s l and has l / s of resistance.</summary>
    internal static SizedValue Wire(int number, double length, IReadOnlyList<double> sections)
    {
        string id = FormattableString.Invariant($"w{number}");
        return new SizedValue
        {
            Section = "conductors",
            Id = id,
            Kind = "conductor",
            Keys = ["size"],
            PartIds = [id],
            Written = "",
            Options =
            [
                .. sections.Select(s => new SizeOption(FormattableString.Invariant($"{s:R}"), s * length) { Metal = s * length, Ohms = length / s }),
            ],
        };
    }

    private double DropOf(int load, IReadOnlyList<SizedValue> values, int[] choice) =>
        choice.Select((option, wire) => amps[load][wire] * values[wire].Options[option].Ohms).Sum();

    private static Finding Of(Rule rule, FactSubject subject) => new(
        rule.Id, rule.Title, rule.Severity, subject.Id, subject.Kind, "", "", [], null, default, rule.Why, rule.Source, [], null);
}
