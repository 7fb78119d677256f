namespace WireCheck.Quantities;

/// <summary>One way to write a unit.</summary>
/// <param name="Symbol">As it is written, in the spelling of <see cref="UnitSpelling"/>.</param>
/// <param name="Make">Makes the quantity from the number before the unit.</param>
public sealed record Unit<T>(string Symbol, Func<double, T> Make);

/// <summary>What messages need to know of a dimension, whatever type holds it.</summary>
public interface IQuantityKind
{
    /// <summary>With its article: "a length", "a current".</summary>
    string Name { get; }

    /// <summary>A value as a builder writes it, such as "90 mm".</summary>
    string Example { get; }

    /// <summary>Unit symbols, the commonest first.</summary>
    IReadOnlyList<string> Symbols { get; }

    /// <summary>A number of a unit in SI units (of a temperature, degrees Celsius); null when the unit is not in the table.</summary>
    double? ToSi(double number, string symbol);
}

/// <summary>
/// A dimension: the units it is written in and what it becomes. The table is our own and small, since the
/// library's full table of abbreviations costs more time to load than a whole check.
/// </summary>
/// <param name="name">With its article: "a length".</param>
/// <param name="example">A value as a builder writes it.</param>
/// <param name="si">The value in SI units, for the checks of range.</param>
/// <param name="units">Units, the commonest first.</param>
public sealed class QuantityKind<T>(string name, string example, Func<T, double> si, IReadOnlyList<Unit<T>> units)
    : IQuantityKind
{
    public string Name { get; } = name;

    public string Example { get; } = example;

    /// <summary>The value in SI units; of a temperature, degrees Celsius.</summary>
    public Func<T, double> Si { get; } = si;

    /// <summary>Values below zero are meant, as with a temperature.</summary>
    public bool MayBeNegative { get; init; }

    /// <summary>Symbols, the commonest first.</summary>
    public IReadOnlyList<string> Symbols { get; } = [.. units.Select(u => u.Symbol)];

    public double? ToSi(double number, string symbol) => Find(symbol) is { } unit ? Si(unit.Make(number)) : null;

    /// <summary>The unit of that symbol, or null.</summary>
    public Unit<T>? Find(string symbol)
    {
        foreach (Unit<T> unit in units)
        {
            if (unit.Symbol == symbol)
            {
                return unit;
            }
        }

        return null;
    }
}
