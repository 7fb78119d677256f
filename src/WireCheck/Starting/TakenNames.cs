using WireCheck.Description;

namespace WireCheck.Starting;

/// <summary>Names that the parts and wires of a new box have already.</summary>
internal static class TakenNames
{
    private static readonly HashSet<string> Taken = new(StringComparer.Ordinal)
    {
        "bank", "bms", "main", "isolator", "master", "precharge", "k-main", "shunt", "gauge", "blocker", "r-precharge", "plus",
        "live", "minus", "outlets", "inverter", "conv", "usb", "phones", "mains", "controller", "car-charger", "car", "panel",
        "inlet", "roof", "car-in", "trunk", "bar", "solar", "carlead", "control", "working", "mains-work", "overnight", "sunshine", "driving",
    };

    private static readonly string[] Prefixes = ["f-", "j-"];

    /// <summary>What is wrong with the name of a load, in words; null when it can be used.</summary>
    internal static string? WrongWith(string name)
    {
        if (!IdRules.IsValid(name) || IdRules.Reserved.Contains(name))
        {
            return $"'{name}' cannot name a load; use letters, digits and -, and none of {string.Join(", ", IdRules.Reserved)}";
        }

        return Taken.Contains(name) || name.EndsWith("-out", StringComparison.Ordinal) || Prefixes.Any(p => name.StartsWith(p, StringComparison.Ordinal))
            ? $"'{name}' is the name of another part of the box; choose another"
            : Steps.KeyOf(name) != name ? $"'{name}' ends as wires do here; write it without - before the number" : null;
    }
}
