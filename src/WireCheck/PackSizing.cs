using WireCheck.Description;
using WireCheck.Edits;
using WireCheck.Facts;
using WireCheck.Facts.Catalogue;
using WireCheck.Facts.Gather;
using WireCheck.Findings;
using WireCheck.Rules;
using WireCheck.Sizing;
using WireCheck.Text;

namespace WireCheck;

/// <summary>What came of sizing: a result, or what is wrong with the input.</summary>
/// <param name="Pack">Title of the box; null when there are problems.</param>
/// <param name="Result">The result; null when there are problems.</param>
/// <param name="Edits">What the choice changes in the text; null when there are problems.</param>
/// <param name="Problems">Every problem of the description and of its rule sets, in the order of the files.</param>
public sealed record SizingOutcome(string? Pack, SizingResult? Result, EditPlan? Edits, IReadOnlyList<Problem> Problems);

/// <summary>The front door of sizing: text in, the smallest values that pass out.</summary>
public static class PackSizing
{
    /// <summary>Sizes one description. Wrong input gives problems, never an exception.</summary>
    /// <param name="file">Name of the file as messages print it.</param>
    /// <param name="text">Its text.</param>
    /// <param name="options">Folder and day.</param>
    /// <param name="keep">Ids of parts and conductors that stay as they are.</param>
    /// <param name="stop">Ends the run.</param>
    /// <exception cref="OperationCanceledException">The run was stopped.</exception>
    public static SizingOutcome Size(
        string file, string text, CheckOptions options, IReadOnlyCollection<string> keep, CancellationToken stop = default)
    {
        ReadResult description = PackReader.Read(file, text, LibraryClasses.Embedded);
        ProblemList problems = new();
        YamlMap? root = YamlReader.ReadMap(file, text, YamlLimits.Default, problems);
        if (description.Pack is not { } pack || root is null)
        {
            return new SizingOutcome(null, null, null, description.Problems);
        }

        NoteUnknown(keep, pack, problems);
        IReadOnlyList<RuleSet> sets = PackCheck.FindSets(pack, options.Folder, new RuleSetLibrary(new FactVocabulary(FactCatalogue.All)), problems);
        IReadOnlyDictionary<string, double> settings = SettingValues.Resolve(sets, pack.Settings, problems);
        if (!problems.IsEmpty)
        {
            return new SizingOutcome(null, null, null, problems.InOrder());
        }

        BoxJudge judge = new(file, root, sets, settings, options.Today, stop);
        (FindingList before, GatherContext box, FactTable facts) = judge.Written(pack);
        IReadOnlyList<SizedValue> values = SizedValues.Of(box, facts, root, new HashSet<string>(keep, StringComparer.Ordinal));
        Sizer sizer = new(values, judge);
        Sized sized = sizer.Choose();
        EditPlan edits = DescriptionEdits.Of(file, text).Plan(EditsOf(values, sized.Choice));
        CheckOutcome after = PackCheck.Standard.Check(file, edits.NewText(), options, stop);
        return after.Report is { } report
            ? new SizingOutcome(pack.Title.Value, ResultOf(values, sized, before, report.Findings, sizer.Checks), edits, [])
            : new SizingOutcome(null, null, null, after.Problems);
    }

    private static SizingResult ResultOf(
        IReadOnlyList<SizedValue> values, Sized sized, FindingList before, FindingList after, int checks)
    {
        List<SizedChoice> choices = [];
        for (int i = 0; i < values.Count; i++)
        {
            choices.Add(SizedChoice.Of(values[i], sized.Choice[i], sized.Forbids[i]));
        }

        return new SizingResult(choices, before, after, sized.Conflicts, checks);
    }

    private static List<ValueEdit> EditsOf(IReadOnlyList<SizedValue> values, int[] choice)
    {
        List<ValueEdit> edits = [];
        for (int i = 0; i < choice.Length; i++)
        {
            string text = values[i].Options[choice[i]].Text;
            if (text != values[i].Written)
            {
                edits.Add(new ValueEdit(values[i].Id, string.Join('.', values[i].Keys), text));
            }
        }

        return edits;
    }

    private static void NoteUnknown(IReadOnlyCollection<string> keep, Pack pack, ProblemList problems)
    {
        HashSet<string> known = [.. pack.Parts.Select(p => p.Id), .. pack.Conductors.Select(c => c.WrittenId)];
        foreach (string id in keep.Where(id => !known.Contains(id)))
        {
            string? near = NearestName.Find(id, known);
            problems.Add(
                new Position(pack.File, 1, 1),
                $"there is no part or conductor '{id}' to keep{(near is null ? "" : $"; did you mean '{near}'?")}");
        }
    }
}
