using WireCheck.Text;

namespace WireCheck.Rules;

/// <summary>A threshold that a description takes otherwise than its rule set.</summary>
/// <param name="Name">Name of the setting.</param>
/// <param name="Written">The description's value.</param>
/// <param name="Usual">The set's value.</param>
/// <param name="Means">What it decides.</param>
/// <param name="Because">The builder's reason; null when none is given.</param>
public sealed record SettingOverride(string Name, string Written, string Usual, string Means, string? Because)
{
    /// <summary>The overrides of a description, in the order of their names.</summary>
    public static IReadOnlyList<SettingOverride> Of(
        IReadOnlyList<RuleSet> sets, IReadOnlyDictionary<string, YamlScalar> written, IReadOnlyDictionary<string, string> reasons)
    {
        List<SettingOverride> overrides = [];
        foreach ((string name, YamlScalar value) in written)
        {
            foreach (RuleSet set in sets)
            {
                if (set.Settings.TryGetValue(name, out RuleSetting? setting))
                {
                    overrides.Add(new SettingOverride(name, value.Text.Trim(), setting.Written, setting.Means, reasons.GetValueOrDefault(name)));
                    break;
                }
            }
        }

        overrides.Sort((a, b) => string.CompareOrdinal(a.Name, b.Name));
        return overrides;
    }
}
