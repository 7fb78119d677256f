using WireCheck.Description;
using WireCheck.Description.Kinds;
using WireCheck.Quantities;

namespace WireCheck.Sheets;

/// <summary>One lead from a tap of the bank to the plug of a BMS that tells its leads in short and does not draw them.</summary>
/// <param name="Id">Its name on the sheets: that of the terminal at the BMS.</param>
/// <param name="Tap">The tap of the bank.</param>
/// <param name="Leads">Size, length and fuse that all of them have.</param>
internal sealed record SenseLead(string Id, string Tap, SenseLeads Leads)
{
    /// <summary>All of a box, lead 0 first.</summary>
    internal static IEnumerable<SenseLead> In(Pack pack)
    {
        foreach (Bms bms in pack.Of<Bms>())
        {
            if (bms.Sense is not { } leads || pack.Of<Cells>().FirstOrDefault(b => b.Series.Value == bms.Series.Value) is not { } bank)
            {
                continue;
            }

            for (int k = 0; k <= bms.Series.Value; k++)
            {
                string id = FormattableString.Invariant($"{bms.Id}.s{k}");
                if (!pack.Conductors.Any(c => c.From.ToString() == id || c.To.ToString() == id))
                {
                    string tap = k == 0 ? "-" : k == bank.Series.Value ? "+" : FormattableString.Invariant($"t{k}");
                    yield return new SenseLead(id, $"{bank.Id}.{tap}", leads);
                }
            }
        }
    }

    /// <summary>The fuse at its tap in words; empty for none.</summary>
    internal string FuseWords => Leads.Fuse is { } fuse ? $"fuse of {QuantityText.WithPrefix(fuse.Value.Amperes, "A")} at the tap" : "";
}
