using WireCheck.Quantities;

namespace WireCheck.Rules.Expressions;

/// <summary>Everything a rule may call; there is nothing else in its sandbox.</summary>
internal static class RuleFunctions
{
    private const string NotKnown = "(not known)";

    /// <summary>All functions, by name.</summary>
    internal static IReadOnlyDictionary<string, RuleFunction> All { get; } =
        Filters().Concat(Numbers()).Concat(Lists()).ToDictionary(f => f.Name, StringComparer.Ordinal);

    private static IEnumerable<RuleFunction> Filters() =>
    [
        Filter("amps", "A", (v, digits) => QuantityText.WithPrefix(v, "A", digits)),
        Filter("volts", "V", (v, digits) => QuantityText.WithPrefix(v, "V", digits)),
        Filter("volts_up", "V", (v, digits) => QuantityText.WithPrefix(QuantityText.Up(v), "V", digits)),
        Filter("ohms", "Ω", (v, digits) => QuantityText.WithPrefix(v, "Ω", digits)),
        Filter("watts", "W", (v, digits) => QuantityText.WithPrefix(v, "W", digits)),
        Filter("joules", "J", (v, digits) => QuantityText.WithPrefix(v, "J", digits)),
        Filter("watt_hours", "J", (v, digits) => QuantityText.WithUnit(v / 3600, "Wh", digits)),
        Filter("amp_hours", "C", (v, digits) => QuantityText.WithUnit(v / 3600, "Ah", digits)),
        Filter("ampere_squared_seconds", "A²s", (v, digits) => QuantityText.WithUnit(v, "A²s", digits)),
        Filter("farads", "F", (v, digits) => QuantityText.WithPrefix(v, "F", digits)),
        Filter("henries", "H", (v, digits) => QuantityText.WithPrefix(v, "H", digits)),
        Filter("hertz", "Hz", (v, digits) => QuantityText.WithPrefix(v, "Hz", digits)),
        Filter("celsius", "°C", (v, digits) => QuantityText.WithUnit(v, "°C", digits)),
        Filter("kelvins", "K", (v, digits) => QuantityText.WithUnit(v, "K", digits)),
        Filter("metres", "m", (v, digits) => QuantityText.WithUnit(v, "m", digits)),
        Filter("millimetres", "m", (v, digits) => QuantityText.WithUnit(v * 1e3, "mm", digits)),
        Filter("square_millimetres", "m²", (v, digits) => QuantityText.WithUnit(v * 1e6, "mm²", digits)),
        Filter("amps_per_square_millimetre", "A/m²", (v, digits) => QuantityText.WithUnit(v / 1e6, "A/mm²", digits)),
        Filter("kilograms", "kg", (v, digits) => QuantityText.WithUnit(v, "kg", digits)),
        Filter("seconds", "s", (v, digits) => QuantityText.WithPrefix(v, "s", digits)),
        Filter("minutes", "s", (v, digits) => QuantityText.WithUnit(v / 60, "min", digits)),
        Filter("hours", "s", (v, digits) => QuantityText.WithUnit(v / 3600, "h", digits)),
        Filter("days", "s", (v, digits) => QuantityText.WithUnit(v / Durations.SecondsPerDay, "days", digits)),
        Filter("duration", "s", QuantityText.Time),
        Filter("percent", "", (v, digits) => QuantityText.WithUnit(v * 100, "%", digits)),
        Filter("ratio", "", (v, digits) => QuantityText.WithUnit(v, "", digits)),
        Filter("count", "", (v, _) => QuantityText.Plain(Math.Round(v), 15)),
    ];

    private static IEnumerable<RuleFunction> Numbers() =>
    [
        Arithmetic("abs", 1, a => Math.Abs(a[0])),
        Arithmetic("min", 2, a => Math.Min(a[0], a[1])),
        Arithmetic("max", 2, a => Math.Max(a[0], a[1])),
        Arithmetic("round", 1, a => Math.Round(a[0], MidpointRounding.AwayFromZero)),
    ];

    private static IEnumerable<RuleFunction> Lists() =>
    [
        new("list", [ExpressionKind.Names], ExpressionKind.Word, a => InWords(a[0] as IReadOnlyList<string>)),
        new("size", [ExpressionKind.Names], ExpressionKind.Number, a => (double?)(a[0] as IReadOnlyList<string>)?.Count),
        new("contains", [ExpressionKind.Names, ExpressionKind.Word], ExpressionKind.YesNo,
            a => a[0] is IReadOnlyList<string> names && a[1] is string name && names.Contains(name)),
        new("plural", [ExpressionKind.Number, ExpressionKind.Word, ExpressionKind.Word], ExpressionKind.Word, Plural),
        new("capital", [ExpressionKind.Word], ExpressionKind.Word, a => Capital(a[0] as string)),
        new("yes_no", [ExpressionKind.YesNo], ExpressionKind.Word, a => a[0] is bool yes ? (yes ? "yes" : "no") : NotKnown),
    ];

    private static RuleFunction Filter(string name, string unit, Func<double, int, string> write) =>
        new(name, [ExpressionKind.Number], ExpressionKind.Word, Written(write))
        {
            Unit = unit,
        };

    private static Func<IReadOnlyList<object?>, int, object?> Written(Func<double, int, string> write) =>
        (a, digits) => ToNumber(a[0]) is double value ? write(value, digits) : NotKnown;

    private static RuleFunction Arithmetic(string name, int count, Func<double[], double> compute)
    {
        return new RuleFunction(name, [.. Enumerable.Repeat(ExpressionKind.Number, count)], ExpressionKind.Number, Body)
        {
            KeepsUnit = true,
        };

        object? Body(IReadOnlyList<object?> arguments)
        {
            double[] numbers = [.. arguments.Select(ToNumber).OfType<double>()];
            return numbers.Length == count ? compute(numbers) : null;
        }
    }

    private static object Plural(IReadOnlyList<object?> arguments)
    {
        if (ToNumber(arguments[0]) is not double count)
        {
            return NotKnown;
        }

        return $"{QuantityText.Plain(count, 15)} {(count == 1 ? arguments[1] : arguments[2])}";
    }

    private static string InWords(IReadOnlyList<string>? names) => names switch
    {
        null => NotKnown,
        [] => "none",
        [string only] => only,
        _ => $"{string.Join(", ", names.Take(names.Count - 1))} and {names[^1]}",
    };

    private static string Capital(string? words) =>
        string.IsNullOrEmpty(words) ? NotKnown : char.ToUpperInvariant(words[0]) + words[1..];

    /// <summary>A number as a double, whatever type the expression gave it; null when it is none.</summary>
    internal static double? ToNumber(object? value) => value switch
    {
        double number => number,
        int number => number,
        long number => number,
        float number => number,
        _ => null,
    };
}
