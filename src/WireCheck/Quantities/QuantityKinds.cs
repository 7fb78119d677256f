using UnitsNet;
using WireCheck.Text;

namespace WireCheck.Quantities;

/// <summary>All dimensions a file can hold.</summary>
public static class QuantityKinds
{
    private static readonly Dictionary<Type, IQuantityKind> ByType = new()
    {
        [typeof(Length)] = PlainKinds.Length,
        [typeof(ElectricCurrent)] = ElectricKinds.Current,
        [typeof(ElectricPotential)] = ElectricKinds.Voltage,
        [typeof(ElectricResistance)] = ElectricKinds.Resistance,
        [typeof(LinearResistance)] = ElectricKinds.LinearResistance,
        [typeof(Power)] = ElectricKinds.Power,
        [typeof(UnitsNet.Energy)] = ElectricKinds.Energy,
        [typeof(ElectricCapacitance)] = ElectricKinds.Capacitance,
        [typeof(ElectricCharge)] = ElectricKinds.Charge,
        [typeof(JouleIntegral)] = ElectricKinds.JouleIntegral,
        [typeof(Area)] = PlainKinds.Area,
        [typeof(Duration)] = PlainKinds.Duration,
        [typeof(Temperature)] = PlainKinds.Temperature,
        [typeof(Ratio)] = PlainKinds.Ratio,
        [typeof(ShareRate)] = PlainKinds.ShareRate,
    };

    /// <summary>Every dimension.</summary>
    public static IReadOnlyCollection<IQuantityKind> All => ByType.Values;

    /// <summary>The dimension that a type holds, or null when the type is no quantity.</summary>
    public static QuantityKind<T>? Of<T>() => ByType.GetValueOrDefault(typeof(T)) as QuantityKind<T>;

    /// <summary>The dimension whose table has this unit, or null.</summary>
    public static IQuantityKind? WithUnit(string symbol) => All.FirstOrDefault(k => k.Symbols.Contains(symbol));

    /// <summary>
    /// The unit of that dimension a builder probably meant: the symbol of the unit written out, else the
    /// nearest of its symbols in another case, else by letters; null when none is near.
    /// </summary>
    public static string? NearestUnit(IQuantityKind kind, string written) =>
        kind.Symbols.FirstOrDefault(s => s == UnitSpelling.SymbolOfWord(written))
        ?? kind.Symbols.FirstOrDefault(s => string.Equals(s, written, StringComparison.OrdinalIgnoreCase))
        ?? (written.Length > 1 ? NearestName.Find(written, kind.Symbols) : null);
}
