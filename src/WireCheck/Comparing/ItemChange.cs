using WireCheck.Description;
using WireCheck.Quantities;

namespace WireCheck.Comparing;

/// <summary>What became of something from the old description to the new.</summary>
public enum ChangeKind
{
    /// <summary>Only the new one has it.</summary>
    Added,

    /// <summary>Only the old one has it.</summary>
    Removed,

    /// <summary>Both have it, with other values.</summary>
    Changed,
}

/// <summary>A value that is not the same.</summary>
/// <param name="Key">Its key, nested ones joined by a point.</param>
/// <param name="Old">As the old description, its defaults or the old class writes it; null when nothing gives it.</param>
/// <param name="New">The same of the new one.</param>
/// <param name="FromClass">True when the part itself writes it in neither, so that it came with another class or default.</param>
public sealed record ValueChange(string Key, string? Old, string? New, bool FromClass);

/// <summary>A part, conductor, mode, path or waiver that is not the same in both.</summary>
/// <param name="Kind">Its kind in the singular.</param>
/// <param name="Id">Its id; of a waiver and the like, its words.</param>
/// <param name="Change">What became of it.</param>
/// <param name="OldLine">Its line in the old description; null when it is not there.</param>
/// <param name="NewLine">Its line in the new description; null when it is not there.</param>
/// <param name="Values">What is not the same; of what was added or removed, the values that are written at it.</param>
public sealed record ItemChange(
    string Kind, string Id, ChangeKind Change, int? OldLine, int? NewLine, IReadOnlyList<ValueChange> Values)
{
    /// <summary>Changed and added things in the order of the new description, then what was removed in the order of the old.</summary>
    public static IReadOnlyList<ItemChange> Between(IReadOnlyList<WrittenItem> old, IReadOnlyList<WrittenItem> @new)
    {
        Dictionary<(string, string), WrittenItem> before = ById(old);
        Dictionary<(string, string), WrittenItem> after = ById(@new);
        List<ItemChange> changes = [];
        foreach (WrittenItem item in after.Values)
        {
            if (!before.TryGetValue((item.Kind, item.Id), out WrittenItem? was))
            {
                changes.Add(new ItemChange(item.Kind, item.Id, ChangeKind.Added, null, item.Line,
                    [.. item.Own.Select(k => new ValueChange(k, null, item.Values[k], false))]));
            }
            else if (Differences(was, item) is { Count: > 0 } values)
            {
                changes.Add(new ItemChange(item.Kind, item.Id, ChangeKind.Changed, was.Line, item.Line, values));
            }
        }

        changes.AddRange(before.Values.Where(i => !after.ContainsKey((i.Kind, i.Id))).Select(i => new ItemChange(
            i.Kind, i.Id, ChangeKind.Removed, i.Line, null, [.. i.Own.Select(k => new ValueChange(k, i.Values[k], null, false))])));
        return changes;
    }

    /// <summary>The first of those with the same id counts; a description with two has been refused.</summary>
    private static Dictionary<(string, string), WrittenItem> ById(IReadOnlyList<WrittenItem> items)
    {
        Dictionary<(string, string), WrittenItem> byId = [];
        foreach (WrittenItem item in items)
        {
            byId.TryAdd((item.Kind, item.Id), item);
        }

        return byId;
    }

    private static List<ValueChange> Differences(WrittenItem old, WrittenItem @new)
    {
        List<ValueChange> values = [];
        foreach (string key in @new.Values.Keys.Union(old.Values.Keys))
        {
            string? was = old.Values.GetValueOrDefault(key);
            string? now = @new.Values.GetValueOrDefault(key);
            if (was is null || now is null || !WrittenValue.SameMeaning(was, now))
            {
                values.Add(new ValueChange(key, was, now, !old.Own.Contains(key) && !@new.Own.Contains(key)));
            }
        }

        return values;
    }
}
