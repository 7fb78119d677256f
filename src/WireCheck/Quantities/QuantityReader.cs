using UnitsNet;

namespace WireCheck.Quantities;

/// <summary>Reads quantities, ranges, sections and boxes from text such as <c>90 mm</c> and <c>10.8 .. 15 V</c>.</summary>
public static class QuantityReader
{
    /// <summary>Reads <c>number unit</c>. A value outside <paramref name="bounds"/> (in SI units) is a fault.</summary>
    public static Parsed<T> Read<T>(string text, QuantityKind<T> kind, Bounds bounds)
    {
        Parsed<(double Number, string After)> split = NumberScanner.Split(text);
        return split.Fault is not null ? split.Fault : Make(split.Value.Number, split.Value.After, text.Trim(), kind, bounds);
    }

    /// <summary>
    /// Reads <c>a .. b UNIT</c>, where the first number may have its own unit. Its ends keep to
    /// <paramref name="bounds"/> and stand in order.
    /// </summary>
    public static Parsed<Range<T>> ReadRange<T>(string text, QuantityKind<T> kind, Bounds bounds)
    {
        int dots = text.IndexOf("..", StringComparison.Ordinal);
        if (dots < 0)
        {
            return new QuantityFault(QuantityFaultKind.NotARange, text.Trim());
        }

        string upper = text[(dots + 2)..];
        Parsed<T> to = Read(upper, kind, bounds);
        if (to.Fault is not null)
        {
            return to.Fault;
        }

        string unit = NumberScanner.Split(upper).Value.After;
        string lower = text[..dots];
        Parsed<(double Number, string After)> split = NumberScanner.Split(lower);
        Parsed<T> from = split.Fault is null && split.Value.After.Length == 0
            ? Make(split.Value.Number, unit, $"{lower.Trim()} {unit}", kind, bounds)
            : Read(lower, kind, bounds);
        return from.Fault is not null ? from.Fault : InOrder(from.Value, to.Value, text.Trim(), kind);
    }

    /// <summary>A range of two ends, or a fault when they stand in the wrong order.</summary>
    public static Parsed<Range<T>> InOrder<T>(T from, T to, string written, QuantityKind<T> kind) =>
        kind.Si(from) <= kind.Si(to)
            ? new Range<T>(from, to)
            : new QuantityFault(QuantityFaultKind.Reversed, written);

    /// <summary>Reads <c>20 x 2 mm</c>.</summary>
    public static Parsed<Section> ReadSection(string text)
    {
        Parsed<Length[]> sides = ReadSides(text, 2);
        return sides.Fault is not null ? sides.Fault : new Section(sides.Value[0], sides.Value[1]);
    }

    /// <summary>Reads <c>300 x 190 x 160 mm</c>.</summary>
    public static Parsed<BoxSize> ReadBox(string text)
    {
        Parsed<Length[]> sides = ReadSides(text, 3);
        return sides.Fault is not null ? sides.Fault : new BoxSize(sides.Value[0], sides.Value[1], sides.Value[2]);
    }

    private static Parsed<Length[]> ReadSides(string text, int count)
    {
        string[] pieces = text.Split('x', 'X', '×');
        if (pieces.Length != count)
        {
            return new QuantityFault(QuantityFaultKind.WrongSides, text.Trim());
        }

        Parsed<(double Number, string After)> last = NumberScanner.Split(pieces[^1]);
        Length[] sides = new Length[count];
        for (int i = 0; i < count; i++)
        {
            Parsed<(double Number, string After)> split = NumberScanner.Split(pieces[i]);
            if (split.Fault is not null)
            {
                return split.Fault with { Written = text.Trim() };
            }

            string unit = split.Value.After.Length == 0 ? last.Value.After ?? "" : split.Value.After;
            Parsed<Length> side = Make(split.Value.Number, unit, text.Trim(), PlainKinds.Length, Bounds.Positive);
            if (side.Fault is not null)
            {
                return side.Fault;
            }

            sides[i] = side.Value;
        }

        return sides;
    }

    private static Parsed<T> Make<T>(double number, string unitText, string written, QuantityKind<T> kind, Bounds bounds)
    {
        string symbol = UnitSpelling.Canonical(unitText);
        if (symbol.Length == 0)
        {
            return new QuantityFault(QuantityFaultKind.NoUnit, written);
        }

        if (kind.Find(symbol) is not Unit<T> unit)
        {
            return WrongUnit(unitText, written, symbol, kind);
        }

        T value = unit.Make(number);
        if (kind.MayBeNegative && kind.Si(value) < Temperature.Zero.DegreesCelsius)
        {
            return new QuantityFault(QuantityFaultKind.BelowAbsoluteZero, written);
        }

        QuantityFault? fault = (kind.MayBeNegative ? Bounds.Any : bounds).Check(kind.Si(value), written);
        return fault is not null ? fault : value;
    }

    private static QuantityFault WrongUnit<T>(string unitText, string written, string symbol, QuantityKind<T> kind) =>
        QuantityKinds.WithUnit(symbol) is IQuantityKind other
            ? new QuantityFault(QuantityFaultKind.OtherDimension, written, other)
            : new QuantityFault(QuantityFaultKind.UnknownUnit, unitText, null, QuantityKinds.NearestUnit(kind, symbol));
}
