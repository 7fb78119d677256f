using WireCheck.Circuit.Wiring;
using WireCheck.Description;
using WireCheck.Drawing;
using WireCheck.Edits;
using WireCheck.Facts;
using WireCheck.Facts.Catalogue;
using WireCheck.Facts.Gather;
using WireCheck.Findings;
using WireCheck.Knowledge;
using WireCheck.Reports;
using WireCheck.Reports.Pages;
using WireCheck.Reports.Svg;
using WireCheck.Rules;
using WireCheck.Text;
using WireCheck.Tolerances;

namespace WireCheck;

/// <summary>What a check needs besides the text.</summary>
/// <param name="Folder">Folder of the description, in which its own rule sets may lie; null when it has none.</param>
/// <param name="Today">The day on which waivers are judged.</param>
public sealed record CheckOptions(string? Folder, DateOnly Today);

/// <summary>What came of a check: a report, or what is wrong with the input.</summary>
/// <param name="Report">The report; null when there are problems.</param>
/// <param name="Problems">Every problem of the description and of its rule sets, in the order of the files.</param>
public sealed record CheckOutcome(Report? Report, IReadOnlyList<Problem> Problems)
{
    /// <summary>The box and all that the rules said; null when there are problems.</summary>
    public JudgedBox? Judged { get; init; }
}

/// <summary>
/// The front door: text in, verdict out. Text becomes a description, its circuit is solved and gives facts, rules
/// judge them, and judgements become findings.
/// </summary>
/// <param name="solve">Description to its solved circuit.</param>
public sealed class PackCheck(Func<Pack, GatherContext> solve)
{
    /// <summary>The check as the tool makes it.</summary>
    public static PackCheck Standard { get; } = new(BoxFacts.Solve);

    /// <summary>Judges one description. Wrong input gives problems, never an exception.</summary>
    /// <param name="file">Name of the file as messages print it.</param>
    /// <param name="text">Its text.</param>
    /// <param name="options">Folder and day.</param>
    /// <param name="stop">Ends the run.</param>
    /// <exception cref="OperationCanceledException">The run was stopped.</exception>
    public CheckOutcome Check(string file, string text, CheckOptions options, CancellationToken stop = default)
    {
        Task<RuleSetLibrary> rules = Task.Run(PrepareRules, stop);
        EarlyReadResult description = PackReader.ReadEarly(file, text, LibraryClasses.Embedded);
        CheckOutcome? outcome = description.Pack is { } pack ? Judge(file, text, pack, options, rules, stop) : null;
        IReadOnlyList<Problem> wrong = description.AllProblems();
        return outcome is null || wrong.Count > 0 ? new CheckOutcome(null, wrong) : outcome;
    }

    /// <summary>Judges a description with some of its values set to others, without waiting for the schema.</summary>
    /// <param name="description">The description, which has been checked before.</param>
    /// <param name="edits">What to set.</param>
    /// <param name="today">The day on which waivers are judged.</param>
    internal CheckOutcome CheckEdited(DescriptionText description, IReadOnlyList<TreeEdit> edits, DateOnly today)
    {
        Task<RuleSetLibrary> rules = Task.Run(PrepareRules);
        ProblemList problems = new();
        Pack? pack = YamlReader.ReadMap(description.File, description.Text, YamlLimits.Default, problems) is { } root
            ? PackReader.ReadTree(description.File, TreeEdit.Apply(root, edits), problems)
            : null;
        return pack is null ? Wrong(problems) : Judge(description.File, description.Text, pack, new CheckOptions(description.Folder, today), rules, default);
    }

    /// <summary>
    /// The outcome of a check with what becomes of the box at every end of its tolerances; the outcome itself when there are
    /// problems.
    /// </summary>
    /// <param name="outcome">The outcome.</param>
    /// <param name="options">Folder and day of that check.</param>
    public static CheckOutcome WithTolerances(CheckOutcome outcome, CheckOptions options)
    {
        if (outcome is not { Judged: { } described, Report: { } report })
        {
            return outcome;
        }

        Library library = Library.Embedded;
        ToleranceSet tolerances = ToleranceSet.Of(described.Pack, library);
        Task<RuleSetLibrary> rules = Task.FromResult(PrepareRules());
        List<(ToleranceCorner, JudgedBox)> corners = [];
        foreach (ToleranceCorner corner in ToleranceCorner.All(tolerances))
        {
            (Pack built, WiringData data) = corner.Build(described.Pack, library);
            PackCheck atCorner = new(pack => BoxFacts.Solve(pack, data));
            CheckOutcome found = atCorner.Judge(report.File, "", built, options, rules, default);
            if (found.Judged is not { } judged)
            {
                return found;
            }

            corners.Add((corner, judged));
        }

        return outcome with { Report = report with { Tolerance = ToleranceResult.Of(tolerances, described, corners) } };
    }

    private static CheckOutcome Wrong(ProblemList problems) => new(null, problems.InOrder());

    private CheckOutcome Judge(string file, string text, Pack pack, CheckOptions options, Task<RuleSetLibrary> rules, CancellationToken stop)
    {
        ProblemList problems = new();
        IReadOnlyList<RuleSet> sets = FindSets(pack, options.Folder, rules.GetAwaiter().GetResult(), problems);
        IReadOnlyDictionary<string, double> settings = SettingValues.Resolve(sets, pack.Settings, problems);
        if (!problems.IsEmpty)
        {
            return Wrong(problems);
        }

        GatherContext box = solve(pack);
        FactTable facts = BoxFacts.Gather(box);
        Judgements judgements = RuleEngine.Judge(facts, sets, settings, problems, stop);
        FindingList findings = FindingList.Make(judgements, pack.Waivers, facts.Pack, sets, settings, options.Today, problems);
        return problems.IsEmpty
            ? new CheckOutcome(new Report(file, pack.Title.Value, findings, facts, Cautions.Read())
            {
                Source = text,
                Text = new Lazy<DescriptionEdits>(() => DescriptionEdits.Of(file, text)),
                Overrides = SettingOverride.Of(sets, pack.Settings, pack.SettingReasons),
                Drawing = new Lazy<PlacedDrawing>(() => WiringDrawing.Of(pack, facts)),
                MakePages = new Lazy<IReadOnlyList<NumbersPage>>(() => BoxPages.Of(box)),
                MakePlots = new Lazy<IReadOnlyList<ReportPlot>>(() => BoxPages.PlotsOf(box, facts)),
            }, [])
            {
                Judged = new JudgedBox(pack, sets, facts, judgements, findings),
            }
            : Wrong(problems);
    }

    /// <summary>
    /// The rules, of which the usual set is read already: that takes as long as reading a description, beside which it is done.
    /// </summary>
    private static RuleSetLibrary PrepareRules()
    {
        RuleSetLibrary library = new(new FactVocabulary(FactCatalogue.All));
        library.Prepare(RuleSetLibrary.DefaultSet);
        return library;
    }

    /// <summary>The rule sets that judge a description.</summary>
    internal static List<RuleSet> FindSets(Pack pack, string? folder, RuleSetLibrary library, ProblemList problems)
    {
        List<RuleSet> sets = [];
        if (pack.RuleSets.Count == 0)
        {
            AddWhenFound(sets, library.Find(RuleSetLibrary.DefaultSet, new Position(pack.File, 1, 1), problems));
        }

        foreach (Given<string> named in pack.RuleSets)
        {
            AddWhenFound(sets, folder is not null && RuleSetLibrary.IsPath(named.Value)
                ? library.FindBeside(named.Value, folder, named.Position, problems)
                : library.Find(named.Value, named.Position, problems));
        }

        return sets;
    }

    private static void AddWhenFound(List<RuleSet> sets, RuleSet? set)
    {
        if (set is not null)
        {
            sets.Add(set);
        }
    }
}
