using WireCheck.Comparing;
using WireCheck.Findings;
using WireCheck.Quantities;
using WireCheck.Rules;

namespace WireCheck.Reports.Comparisons;

/// <summary>The words of a comparison, before they are escaped.</summary>
internal static class ComparisonWords
{
    /// <summary>What became better or worse, in counts.</summary>
    internal static string Summary(BoxDifference difference)
    {
        int Count(ChangeKind kind) => difference.Findings.Count(f => f.Change == kind);
        return FormattableString.Invariant(
            $"{Counted(Count(ChangeKind.Added), "finding", "findings")} gained, {Count(ChangeKind.Removed)} lost, {Count(ChangeKind.Changed)} changed; {Counted(difference.Items.Count, "entry", "entries")} of the file changed; {Counted(difference.Numbers.Count, "number", "numbers")} moved by more than {NumberWords.Percent(difference.Tolerance)}");
    }

    internal static string Change(ChangeKind change) => change switch
    {
        ChangeKind.Added => "added",
        ChangeKind.Removed => "removed",
        _ => "changed",
    };

    /// <summary>The part of a finding, or the box.</summary>
    internal static string Where(Finding finding) => finding.PartKind == FactVocabulary.PackKind ? "the box" : finding.Part;

    /// <summary>A thing with its kind: <c>fuse main</c>.</summary>
    internal static string What(ItemChange item) => item.Kind == item.Id ? item.Kind : $"{item.Kind} {item.Id}";

    /// <summary>The values that are not the same; those that came with a class behind the class.</summary>
    internal static string Values(ItemChange item)
    {
        string own = string.Join("; ", item.Values.Where(v => !v.FromClass).Select(Value));
        string brought = string.Join("; ", item.Values.Where(v => v.FromClass).Select(Value));
        return brought.Length == 0 ? own : own.Length == 0 ? $"by class or default: {brought}" : $"{own}; and with it {brought}";
    }

    /// <summary>Where on the way from the old load to the new one something gives way.</summary>
    internal static string At(Break found, LoadGrowth growth)
    {
        if (found.At is not double at)
        {
            return growth.Numbers.Count == 0 ? "" : "whatever the load";
        }

        string share = $"by {NumberWords.Percent(at)} of the way";
        return growth.Power is { } power
            ? $"by {QuantityText.Plain(power.Old + (at * (power.New - power.Old)), 3)} {power.Unit} of {power.Id} ({NumberWords.Percent(at)} of the way)"
            : share;
    }

    /// <summary>How the order of giving way is found.</summary>
    internal static string HowChosen(BoxDifference difference)
    {
        const string Advice = "Advice breaks nothing and is left out.";
        if (difference.Growth.Numbers.Count == 0)
        {
            return $"No load and no source has another figure, so nothing grows: worst first, then what is furthest beyond its limit. {Advice}";
        }

        string grows = difference.Growth.Power is { } power
            ? $"{power.Id} from {QuantityText.Plain(power.Old, 3)} to {QuantityText.Plain(power.New, 3)} {power.Unit}"
            : string.Join(", ", difference.Growth.Numbers.Select(n => n.Id).Distinct()) + " from the old figures to the new ones";
        return $"The new box is solved and judged with {grows}, step by step; what is found first stands first, at the step where it was first found. "
            + $"What is there from the beginning comes of the other changes and stands last, worst first. {Advice}";
    }

    /// <summary>What is not the same of a finding that both boxes have.</summary>
    internal static string Differences(FindingChange change)
    {
        List<string> what = [];
        if (change.Old is { } old && change.New is { } now)
        {
            if (old.Severity != now.Severity)
            {
                what.Add($"{SeverityWords.For(old.Severity)} before");
            }

            if (old.Waived is null != now.Waived is null)
            {
                what.Add(now.Waived is null ? "waived before" : "waived now");
            }
        }

        what.AddRange(change.Moved.Select(m =>
            $"{m.Name.Replace('_', ' ')} {NumberWords.Quantity(m.Old, m.Unit)} before, {NumberWords.Quantity(m.New, m.Unit)} now"));
        return string.Join("; ", what);
    }

    private static string Value(ValueChange value) => (value.Old, value.New) switch
    {
        (null, { } now) => $"{value.Key} {Short(now)}",
        ({ } was, null) => $"{value.Key} {Short(was)} left out",
        _ => $"{value.Key} {Short(value.Old!)} → {Short(value.New!)}",
    };

    /// <summary>The beginning of long words, such as notes.</summary>
    private static string Short(string words) => words.Length <= LongestValue ? words : string.Concat(words.AsSpan(0, LongestValue), " …");

    private const int LongestValue = 60;

    private static string Counted(int count, string one, string many) => FormattableString.Invariant($"{count} {(count == 1 ? one : many)}");
}
