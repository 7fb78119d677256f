using WireCheck.Text;

namespace WireCheck.Starting;

/// <summary>A coil as a description writes it, with a lower current to hold.</summary>
internal static class CoilText
{
    private const string Hold = "hold_current";

    /// <summary>The coil of a class; its economiser holds with the given current in A, or its own where that is less.</summary>
    internal static string Of(PartValues relay, double holdAmps)
    {
        double hold = Math.Min(holdAmps, relay.Amps($"coil.economiser.{Hold}"));
        string written = FormattableString.Invariant($"{Math.Floor(hold * MilliampsInAmp):0} mA");
        return Flow((YamlMap)relay.Node("coil")!, written);
    }

    private static string Flow(YamlMap map, string hold) => "{" + string.Join(", ", map.Entries.Select(e => $"{e.Key.Text}: {Value(e, hold)}")) + "}";

    private static string Value(YamlEntry entry, string hold) => entry.Value switch
    {
        YamlMap inner => Flow(inner, hold),
        _ when entry.Key.Text == Hold => hold,
        YamlNode scalar => ((YamlScalar)scalar).Text,
    };

    private const double MilliampsInAmp = 1000;
}
