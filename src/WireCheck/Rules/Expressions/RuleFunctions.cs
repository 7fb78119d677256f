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
        Filter("amps", "A", v => QuantityText.WithPrefix(v, "A")),
        Filter("volts", "V", v => QuantityText.WithPrefix(v, "V")),
        Filter("volts_up", "V", v => QuantityText.WithPrefix(QuantityText.Up(v), "V")),
        Filter("ohms", "Ω", v => QuantityText.WithPrefix(v, "Ω")),
        Filter("watts", "W", v => QuantityText.WithPrefix(v, "W")),
        Filter("joules", "J", v => QuantityText.WithPrefix(v, "J")),
        Filter("watt_hours", "J", v => QuantityText.WithUnit(v / 3600, "Wh")),
        Filter("amp_hours", "C", v => QuantityText.WithUnit(v / 3600, "Ah")),
        Filter("ampere_squared_seconds", "A²s", v => QuantityText.WithUnit(v, "A²s")),
        Filter("farads", "F", v => QuantityText.WithPrefix(v, "F")),
        Filter("henries", "H", v => QuantityText.WithPrefix(v, "H")),
        Filter("hertz", "Hz", v => QuantityText.WithPrefix(v, "Hz")),
        Filter("celsius", "°C", v => QuantityText.WithUnit(v, "°C")),
        Filter("kelvins", "K", v => QuantityText.WithUnit(v, "K")),
        Filter("metres", "m", v => QuantityText.WithUnit(v, "m")),
        Filter("millimetres", "m", v => QuantityText.WithUnit(v * 1e3, "mm")),
        Filter("square_millimetres", "m²", v => QuantityText.WithUnit(v * 1e6, "mm²")),
        Filter("amps_per_square_millimetre", "A/m²", v => QuantityText.WithUnit(v / 1e6, "A/mm²")),
        Filter("kilograms", "kg", v => QuantityText.WithUnit(v, "kg")),
        Filter("seconds", "s", v => QuantityText.WithPrefix(v, "s")),
        Filter("minutes", "s", v => QuantityText.WithUnit(v / 60, "min")),
        Filter("hours", "s", v => QuantityText.WithUnit(v / 3600, "h")),
        Filter("days", "s", v => QuantityText.WithUnit(v / Durations.SecondsPerDay, "days")),
        Filter("duration", "s", QuantityText.Time),
        Filter("percent", "", v => QuantityText.WithUnit(v * 100, "%")),
        Filter("ratio", "", v => QuantityText.WithUnit(v, "")),
        Filter("count", "", v => QuantityText.Plain(Math.Round(v), 15)),
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

    private static RuleFunction Filter(string name, string unit, Func<double, string> write) =>
        new(name, [ExpressionKind.Number], ExpressionKind.Word, a => ToNumber(a[0]) is double value ? write(value) : NotKnown)
        {
            Unit = unit,
        };

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
