using WireCheck.Numbers;
using WireCheck.Quantities;
using WireCheck.Reports.Text;

namespace WireCheck.Reports.Numbers;

/// <summary>The table of single faults for a reader.</summary>
public static class SingleFaultText
{
    /// <summary>Writes the table with its heading.</summary>
    public static void Write(TextWriter output, IReadOnlyList<SingleFaultRow> rows)
    {
        ArgumentNullException.ThrowIfNull(output);
        output.Write("\nSingle faults: one thing wrong at a time, at the worse of full and empty\n");
        TextTable table = new("fault", "in", "over its ampacity", "over its window", "cannot be switched off", "goes dark");
        foreach (SingleFaultRow row in rows)
        {
            table.Add(
                row.What,
                row.Mode,
                string.Join(", ", row.Conductors.Select(c => $"{c.Id} {Amps(c.Amps)} of {Amps(c.Ampacity)}")),
                string.Join(", ", row.Consumers.Select(c => $"{c.Id} {Volts(c.Volts)} of {Volts(c.Limit)}")),
                string.Join(", ", row.StaysOn),
                string.Join(", ", row.Dark));
        }

        table.Write(output);
    }

    private static string Amps(double amps) => QuantityText.WithPrefix(amps, "A");

    private static string Volts(double volts) => QuantityText.WithPrefix(volts, "V");
}
