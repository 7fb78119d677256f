using System.Globalization;
using WireCheck.Description;
using WireCheck.Quantities;

namespace WireCheck.Comparing;

/// <summary>One number of what draws or feeds, on its way from the old box to the new one.</summary>
/// <param name="Kind">Kind of the part, or "mode".</param>
/// <param name="Id">Id of the part or mode.</param>
/// <param name="Key">Its key.</param>
/// <param name="Old">Before, in <paramref name="Unit"/>.</param>
/// <param name="New">Now.</param>
/// <param name="Unit">The unit of the new one.</param>
public sealed record GrowingNumber(string Kind, string Id, string Key, double Old, double New, string Unit)
{
    /// <summary>The number at a part of the way, 0 to 1, as a description writes it.</summary>
    public string At(double share) =>
        $"{(Old + (share * (New - Old))).ToString("G12", CultureInfo.InvariantCulture)} {Unit}";
}

/// <summary>
/// The loads and sources that both boxes have with other figures. All other differences are taken as the new box has them: it
/// is the new box that is loaded more and more.
/// </summary>
/// <param name="Numbers">What grows or shrinks; empty when no load or source differs.</param>
public sealed record LoadGrowth(IReadOnlyList<GrowingNumber> Numbers)
{
    private static readonly string[] Kinds = ["inverter", "converter", "load", "charger", "vehicle", "panel", "mode"];

    private const string PowerKey = "power";

    /// <summary>The one power that differs, for words; null when none or several do.</summary>
    public GrowingNumber? Power => Numbers.Where(n => n.Key == PowerKey).ToList() is [var only] ? only : null;

    /// <summary>The figures of loads and sources among what differs.</summary>
    public static LoadGrowth In(IReadOnlyList<ItemChange> items)
    {
        List<GrowingNumber> numbers = [];
        foreach (ItemChange item in items.Where(i => i.Change == ChangeKind.Changed && Kinds.Contains(i.Kind)))
        {
            foreach (ValueChange value in item.Values)
            {
                if (value.Old is { } old && value.New is { } now && WrittenValue.InUnitOf(old, now) is var (before, after, unit))
                {
                    numbers.Add(new GrowingNumber(item.Kind, item.Id, value.Key, before, after, unit));
                }
            }
        }

        return new LoadGrowth(numbers);
    }

    /// <summary>What to set in the new description for the loads at a part of the way.</summary>
    public IReadOnlyList<TreeEdit> At(double share) =>
        [.. Numbers.Select(n => new TreeEdit(WrittenItems.SectionOf(n.Kind), n.Id, n.Key, n.At(share)))];
}
