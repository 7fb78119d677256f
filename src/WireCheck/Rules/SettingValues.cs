using System.Globalization;
using WireCheck.Quantities;
using WireCheck.Text;

namespace WireCheck.Rules;

/// <summary>Values of settings: read from text, and overridden by a description.</summary>
public static class SettingValues
{
    private static readonly QuantityKind<double> CurrentDensity = new(
        "a current density", "2 A/mm²", d => d, [new("A/mm²", v => v * 1e6)]);

    private static readonly QuantityKind<double> TemperatureDifference = new(
        "a temperature difference", "30 K", d => d, [new("K", v => v)]);

    private static readonly QuantityKind<double> Mass = new(
        "a mass", "2 kg", m => m, [new("kg", v => v), new("g", v => v / 1000), new("lb", v => v * 0.45359237)]);

    private static readonly Dictionary<string, (string Example, Func<string, double?> Read)> Units = new(StringComparer.Ordinal)
    {
        [""] = ("3 %", ReadPure),
        ["A"] = ("20 A", t => ReadIn(ElectricKinds.Current, t)),
        ["V"] = ("12 V", t => ReadIn(ElectricKinds.Voltage, t)),
        ["Ω"] = ("5 mΩ", t => ReadIn(ElectricKinds.Resistance, t)),
        ["W"] = ("10 W", t => ReadIn(ElectricKinds.Power, t)),
        ["J"] = ("10 J", t => ReadIn(ElectricKinds.Energy, t)),
        ["m"] = ("300 mm", t => ReadIn(PlainKinds.Length, t)),
        ["m²"] = ("10 mm²", t => ReadIn(PlainKinds.Area, t)),
        ["A/m²"] = (CurrentDensity.Example, t => ReadIn(CurrentDensity, t)),
        ["°C"] = ("60 °C", t => ReadIn(PlainKinds.Temperature, t)),
        ["K"] = (TemperatureDifference.Example, t => ReadIn(TemperatureDifference, t)),
        ["s"] = ("20 min", t => ReadIn(PlainKinds.Duration, t)),
        ["kg"] = (Mass.Example, t => ReadIn(Mass, t)),
        ["C"] = ("5 Ah", t => ReadIn(ElectricKinds.Charge, t)),
    };

    /// <summary>SI units a setting can have.</summary>
    internal static IReadOnlyCollection<string> KnownUnits => Units.Keys;

    /// <summary>A value of that unit as a rule file would write it.</summary>
    internal static string ExampleOf(string unit) => Units[unit].Example;

    /// <summary>Reads a value written with its unit, or a percentage or bare number for "". Null when it is none.</summary>
    internal static double? Read(string text, string unit) =>
        Units[unit].Read(text.Trim()) is double value && double.IsFinite(value) ? value : null;

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

    /// <summary>The value in SI units, or null when the text is not a number with a unit of that dimension.</summary>
    private static double? ReadIn<T>(QuantityKind<T> kind, string text)
    {
        Parsed<T> read = QuantityReader.Read(text, kind, Bounds.Any);
        return read.Fault is null ? kind.Si(read.Value) : null;
    }

    private static double? ReadPure(string text)
    {
        bool percent = text.EndsWith('%');
        string number = percent ? text[..^1] : text;
        return double.TryParse(number, NumberStyles.Float, CultureInfo.InvariantCulture, out double value)
            ? percent ? value / 100 : value
            : null;
    }
}
