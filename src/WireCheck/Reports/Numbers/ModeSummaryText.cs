using WireCheck.Numbers;
using WireCheck.Quantities;
using WireCheck.Reports.Text;

namespace WireCheck.Reports.Numbers;

/// <summary>The modes of a box, one line each.</summary>
internal static class ModeSummaryText
{
    internal static void Write(TextWriter output, IReadOnlyList<ModeSummary> modes)
    {
        TextTable table = new("mode", "what it is", "from the bank, at most", "power", "lowest voltage", "highest voltage", "corner of the current");
        foreach (ModeSummary mode in modes)
        {
            table.Add(
                mode.Mode,
                mode.Words,
                QuantityText.WithPrefix(mode.Amps, "A"),
                QuantityText.WithPrefix(mode.Watts, "W"),
                QuantityText.WithPrefix(mode.LowestVolts, "V"),
                QuantityText.WithPrefix(mode.HighestVolts, "V"),
                mode.Unsolved == 0 ? mode.Corner : FormattableString.Invariant($"{mode.Corner}; {mode.Unsolved} corners have no answer"));
        }

        table.Write(output);
    }
}
