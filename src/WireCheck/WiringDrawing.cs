using WireCheck.Description;
using WireCheck.Drawing;
using WireCheck.Facts;
using WireCheck.Quantities;

namespace WireCheck;

/// <summary>The drawing of a judged box: its schematic with the worst current on each conductor.</summary>
internal static class WiringDrawing
{
    /// <summary>Less than any meter on a bench shows, A.</summary>
    private const double SmallestAmps = 1e-9;

    internal static PlacedDrawing Of(Pack pack, FactTable facts)
    {
        Dictionary<string, double> amps = new(StringComparer.Ordinal);
        foreach (FactSubject subject in facts.Subjects)
        {
            if (subject.Kind == "conductor" && subject.Find("current")?.Value is double current)
            {
                amps[subject.Id] = current;
            }
        }

        return SchematicLayout.Place(
            Schematic.Of(pack),
            id => amps.TryGetValue(id, out double current) ? QuantityText.WithPrefix(current < SmallestAmps ? 0 : current, "A") : null);
    }
}
