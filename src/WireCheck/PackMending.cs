using WireCheck.Edits;
using WireCheck.Mending;
using WireCheck.Reports;

namespace WireCheck;

/// <summary>What came of mending a description.</summary>
/// <param name="Text">The text afterwards; the same as before when nothing was changed.</param>
/// <param name="Told">What was changed, and what was not and why, a line each, in order.</param>
/// <param name="Changes">How many values were changed.</param>
/// <param name="Check">The check of the text as it is now.</param>
public sealed record MendOutcome(string Text, IReadOnlyList<string> Told, int Changes, CheckOutcome Check);

/// <summary>
/// Writes the values that findings offer into a description, checks it again, and goes on until no finding offers another one.
/// A description that is wrong is left as it is, and no round is kept that would make it wrong.
/// </summary>
/// <param name="check">The check.</param>
public sealed class PackMending(PackCheck check)
{
    /// <summary>A fuse may climb one rating in a round; more rounds than this do not converge.</summary>
    private const int MostRounds = 10;

    /// <summary>Mends one description. Nothing is written to the disk.</summary>
    /// <param name="file">Name of the file as messages print it.</param>
    /// <param name="text">Its text.</param>
    /// <param name="options">Folder and day.</param>
    /// <param name="stop">Ends the run.</param>
    /// <exception cref="OperationCanceledException">The run was stopped.</exception>
    public MendOutcome Mend(string file, string text, CheckOptions options, CancellationToken stop = default)
    {
        List<string> told = [];
        HashSet<string> written = new(StringComparer.Ordinal);
        CheckOutcome outcome = check.Check(file, text, options, stop);
        int changes = 0;
        for (int round = 0; round < MostRounds && outcome.Report is { } report; round++)
        {
            Round next = Plan(report, file, text, written);
            if (next.Plan.Changes.Count == 0)
            {
                told.AddRange(next.Told);
                break;
            }

            string mended = next.Plan.NewText();
            CheckOutcome again = check.Check(file, mended, options, stop);
            if (again.Report is null)
            {
                told.Add($"{file}: the values offered now would make the description wrong ({again.Problems[0].Message}); they are not written");
                break;
            }

            told.AddRange(next.Told);
            changes += next.Plan.Changes.Sum(c => c.Edits.Count);
            (text, outcome) = (mended, again);
        }

        return new MendOutcome(text, told, changes, outcome);
    }

    private static Round Plan(Report report, string file, string text, HashSet<string> written)
    {
        DescriptionEdits edits = DescriptionEdits.Of(file, text);
        List<MendChoice> choices = [];
        List<string> told = [];
        foreach (MendChoice choice in MendChoices.Of(report.Findings.Findings, edits))
        {
            ValueEdit edit = choice.Edit;
            if (written.Add($"{edit.PartId}\n{edit.Key}\n{edit.NewText}"))
            {
                choices.Add(choice);
            }
        }

        EditPlan plan = edits.Plan([.. choices.Select(c => c.Edit)]);
        foreach (TextChange change in plan.Changes)
        {
            foreach (ValueEdit edit in change.Edits)
            {
                MendChoice choice = choices.First(c => c.Edit == edit);
                string before = change.OldValue is { } old ? $"{old} becomes {edit.NewText}" : $"{edit.NewText} is written";
                string against = choice.Against is { } other ? $"; {other.Finding.Rule} on {other.Finding.Part} wanted {other.Value}" : "";
                told.Add($"{change.Start}: {Name(edit)}: {before} ({choice.Finding.Rule}{against})");
            }
        }

        told.AddRange(plan.Refused.Select(r => $"{r.Place?.ToString() ?? file}: {Name(r.Edit)} is left as it is: {r.Reason}"));
        return new Round(plan, told);
    }

    private static string Name(ValueEdit edit) => edit.PartId.Length == 0 ? edit.Key : $"{edit.PartId} {edit.Key}";

    private sealed record Round(EditPlan Plan, IReadOnlyList<string> Told);
}
