using WireCheck.Description;
using WireCheck.Facts;
using WireCheck.Findings;
using WireCheck.Reports;
using WireCheck.Rules;
using WireCheck.Tests.Rules;
using WireCheck.Text;

namespace WireCheck.Tests.Reports;

/// <summary>A fixed set of findings made by hand, over which every format has its golden file.</summary>
internal static class SampleReport
{
    private const string RuleSetText = """
        title: Sample
        settings:
          drop_limit: {value: 3 %, means: Largest drop to a load., source: {work: Careful practice, standing: common practice}}
        rules:
        - id: conductor-over-ampacity
          for: conductor
          severity: danger
          title: A conductor carries more than its ampacity
          require: it.current <= it.ampacity
          says: "{{ it.id }} ({{ it.size }}) carries {{ it.current | amps }} in {{ it.current_mode }}; good for {{ it.ampacity | amps }}."
          mend: A larger size, or two in parallel on lugs that are made for it, run together in the same loom and of the same length.
          edit: {key: size, value: 6 AWG, safer: larger}
          why: Insulation ages faster above its rating.
          source: {work: 33 CFR 183.425, clause: Table 5, standing: published}
        - id: conductor-drop
          for: conductor
          severity: advice
          severity_when: [{when: it.share > 0.05, severity: fault}]
          title: A conductor drops too much
          require: it.share <= settings.drop_limit
          says: "{{ it.id }} drops {{ it.share | percent }}; allowed are {{ settings.drop_limit | percent }}."
          mend: A larger size or a shorter run.
          why: The load sees less than it needs.
          source: {work: Careful practice, standing: common practice}
        - id: conductor-bare
          for: conductor
          severity: fault
          title: A conductor is not covered
          require: it.covered
          says: "{{ it.id }} is not covered."
          mend: Sleeve it.
          why: It can be touched.
          source: {work: Recalled, standing: from memory}
        - id: waiver-expired
          for: waiver
          severity: advice
          title: A waiver has expired
          require: "!it.expired"
          says: "The waiver for {{ it.id }} held until {{ it.until }}."
          mend: Renew it.
          why: It was meant to be looked at again.
          source: {work: Careful practice, standing: common practice}
        """;

    private static readonly Fact ShelfTime = WireCheck.Facts.Catalogue.PackFacts.TimeToCutOff;

    internal static FactVocabulary Vocabulary { get; } = new(
        [Bench.Current, Bench.Ampacity, Bench.Share, Bench.Size, Bench.Covered, Bench.Chain, ShelfTime, .. WaiverFacts.All]);

    internal static Report Make(string title = "Market-stall power box", bool clean = false)
    {
        ProblemList problems = new();
        RuleSet set = new RuleSetReader(Vocabulary, _ => null, problems).Read("sample", [new RuleFile("sample.yaml", RuleSetText)])!;
        RuleSetReader.CheckAll(set, problems);
        FactTable table = clean ? new FactTable(Pack(), []) : Table();
        IReadOnlyDictionary<string, double> settings = SettingValues.Resolve([set], new Dictionary<string, YamlScalar>(), problems);
        Judgements judgements = RuleEngine.Judge(table, [set], settings, problems);
        FindingList findings = FindingList.Make(
            judgements, clean ? [] : Waivers(), table.Pack, [set], settings, new DateOnly(2027, 1, 15), problems);
        problems.InOrder().ShouldBeEmpty();
        return new Report("box.yaml", title, findings, table, Cautions.Read());
    }

    private static FactSubject Pack()
    {
        FactSubject pack = new("pack", "pack", At(1));
        pack.Set(ShelfTime, 84.7 * 86400);
        return pack;
    }

    private static FactTable Table() => new(
        Pack(),
        [
            Conductor("w1", 12, 78.24, 55, 0.062, covered: true),
            Conductor("w2", 13, 49.8, 50, 0.012, covered: false),
            Conductor("w3", 14, 12, null, 0.041, covered: false),
            Conductor("w4", 15, 3, 20, 0.03, covered: null),
        ]);

    private static FactSubject Conductor(string id, int line, double current, double? ampacity, double share, bool? covered)
    {
        FactSubject subject = new("conductor", id, At(line));
        subject.KeepLargest(Bench.Current, current, new FactPlace("boiling", "empty, hot"));
        subject.Set(Bench.Share, share);
        subject.Set(Bench.Size, "8 AWG");
        if (ampacity is double limit)
        {
            subject.Set(Bench.Ampacity, limit);
        }

        if (covered is bool yes)
        {
            subject.Set(Bench.Covered, yes);
        }

        if (id == "w1")
        {
            subject.Assume("insulation of 105 °C, from the defaults", "ampacity");
            subject.Set(Bench.Chain, (List<string>)["main", "k-inv"]);
        }

        return subject;
    }

    private static IReadOnlyList<Waiver> Waivers() =>
    [
        Waiver(20, "conductor-bare", "w2", "sleeved and clamped on the bench", new DateOnly(2027, 6, 1)),
        Waiver(21, "conductor-bare", "w3", "sleeve is on order", new DateOnly(2027, 1, 14)),
    ];

    private static Waiver Waiver(int line, string rule, string part, string because, DateOnly until) => new()
    {
        Position = At(line),
        Rule = new Given<string>(rule, At(line), Origin.Written),
        Part = new Given<string>(part, At(line), Origin.Written),
        Because = new Given<string>(because, At(line), Origin.Written),
        Until = new Given<DateOnly>(until, At(line), Origin.Written),
    };

    private static Position At(int line) => new("box.yaml", line, 3);
}
