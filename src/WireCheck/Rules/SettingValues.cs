using System.Globalization;
using UnitsNet;
using WireCheck.Text;

namespace WireCheck.Rules;

/// <summary>Values of settings: read from text, and overridden by a description.</summary>
public static class SettingValues
{
    private static readonly Dictionary<string, (string Example, Func<string, double> Read)> Units = new(StringComparer.Ordinal)
    {
        [""] = ("3 %", ReadPure),
        ["A"] = ("20 A", t => ElectricCurrent.Parse(t, CultureInfo.InvariantCulture).Amperes),
        ["V"] = ("12 V", t => ElectricPotential.Parse(t, CultureInfo.InvariantCulture).Volts),
        ["Ω"] = ("5 mΩ", t => ElectricResistance.Parse(t.Replace("ohm", "Ω", StringComparison.Ordinal), CultureInfo.InvariantCulture).Ohms),
        ["W"] = ("10 W", t => (double)Power.Parse(t, CultureInfo.InvariantCulture).Watts),
        ["J"] = ("10 J", t => Energy.Parse(t, CultureInfo.InvariantCulture).Joules),
        ["m"] = ("300 mm", t => Length.Parse(t, CultureInfo.InvariantCulture).Meters),
        ["m²"] = ("10 mm²", t => Area.Parse(t.Replace("mm2", "mm²", StringComparison.Ordinal), CultureInfo.InvariantCulture).SquareMeters),
        ["A/m²"] = ("2 A/mm²", ReadCurrentDensity),
        ["°C"] = ("60 °C", t => Temperature.Parse(t.Replace("degC", "°C", StringComparison.Ordinal), CultureInfo.InvariantCulture).DegreesCelsius),
        ["K"] = ("30 K", t => TemperatureDelta.Parse(t.Replace("K", "∆K", StringComparison.Ordinal), CultureInfo.InvariantCulture).Kelvins),
        ["s"] = ("20 min", t => Duration.Parse(t, CultureInfo.InvariantCulture).Seconds),
        ["kg"] = ("2 kg", t => Mass.Parse(t, CultureInfo.InvariantCulture).Kilograms),
        ["C"] = ("5 Ah", t => ElectricCharge.Parse(t, CultureInfo.InvariantCulture).Coulombs),
    };

    /// <summary>SI units a setting can have.</summary>
    internal static IReadOnlyCollection<string> KnownUnits => Units.Keys;

    /// <summary>A value of that unit as a rule file would write it.</summary>
    internal static string ExampleOf(string unit) => Units[unit].Example;

    /// <summary>Reads a value written with its unit, or a percentage or bare number for "". Null when it is none.</summary>
    internal static double? Read(string text, string unit)
    {
        try
        {
            double value = Units[unit].Read(text.Trim());
            return double.IsFinite(value) ? value : null;
        }
        catch (Exception error) when (error is FormatException or UnitsNetException or OverflowException)
        {
            return null;
        }
    }

    /// <summary>
    /// The value of every setting of the sets, in SI: the description's where it gives one, else the set's.
    /// Notes a setting no set has, a value of the wrong unit, and sets that disagree where the description
    /// does not decide.
    /// </summary>
    public static IReadOnlyDictionary<string, double> Resolve(
        IReadOnlyList<RuleSet> sets, IReadOnlyDictionary<string, YamlScalar> overrides, ProblemList problems)
    {
        Dictionary<string, RuleSetting> known = new(StringComparer.Ordinal);
        Dictionary<string, double> values = new(StringComparer.Ordinal);
        foreach (RuleSetting setting in sets.SelectMany(set => set.Settings.Values))
        {
            if (!known.TryAdd(setting.Name, setting)
                && known[setting.Name].Value != setting.Value
                && !overrides.ContainsKey(setting.Name))
            {
                problems.Add(
                    setting.Position,
                    RuleProblemWords.DifferentSettings(setting.Name, known[setting.Name].Written, setting.Written));
            }

            values.TryAdd(setting.Name, setting.Value);
        }

        foreach ((string name, YamlScalar written) in overrides)
        {
            if (!known.TryGetValue(name, out RuleSetting? setting))
            {
                problems.Add(written.Position, RuleProblemWords.UnknownSetting(name, known.Keys.Order(StringComparer.Ordinal)));
            }
            else if (Read(written.Text, setting.Unit) is double value)
            {
                values[name] = value;
            }
            else
            {
                string example = ExampleOf(setting.Unit);
                problems.Add(written.Position, RuleProblemWords.SettingValue(name, written.Text, setting.Unit, example));
            }
        }

        return values;
    }

    /// <summary>A current density in amperes per square millimetre, as the trade writes it.</summary>
    private static double ReadCurrentDensity(string text)
    {
        string written = text.Replace("mm2", "mm²", StringComparison.Ordinal);
        const string unit = "A/mm²";
        return written.EndsWith(unit, StringComparison.Ordinal)
            ? double.Parse(written[..^unit.Length], NumberStyles.Float, CultureInfo.InvariantCulture) * 1e6
            : throw new FormatException();
    }

    private static double ReadPure(string text) => text.EndsWith('%')
        ? double.Parse(text[..^1], NumberStyles.Float, CultureInfo.InvariantCulture) / 100
        : double.Parse(text, NumberStyles.Float, CultureInfo.InvariantCulture);
}
