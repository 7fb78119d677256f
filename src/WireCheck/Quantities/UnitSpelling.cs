namespace WireCheck.Quantities;

/// <summary>
/// Brings the spellings of one unit together: <c>mm2</c>, <c>mm^2</c> and <c>mm²</c>; <c>mohm</c> and
/// <c>mΩ</c>; <c>uF</c> and <c>µF</c>; <c>degC</c> and <c>°C</c>.
/// </summary>
public static class UnitSpelling
{
    /// <summary>The spelling that unit tables use. Case is kept, since mV and MV differ.</summary>
    public static string Canonical(string unit)
    {
        string text = unit.Trim()
            .Replace("^2", "²", StringComparison.Ordinal)
            .Replace('\u03BC', '\u00B5')
            .Replace('\u2126', '\u03A9');
        text = ReplaceWord(text, "ohms", "Ω");
        text = ReplaceWord(text, "ohm", "Ω");
        text = ReplaceWord(text, "micro", "µ");
        text = ReplaceWord(text, "deg ", "°");
        text = ReplaceWord(text, "deg", "°");
        text = text.Replace("mm2", "mm²", StringComparison.Ordinal)
            .Replace("cm2", "cm²", StringComparison.Ordinal)
            .Replace("m2", "m²", StringComparison.Ordinal)
            .Replace("in2", "in²", StringComparison.Ordinal)
            .Replace("A2s", "A²s", StringComparison.Ordinal);
        bool isMicro = text.Length > 1 && text[0] == 'u' && "AVΩWsFCJmS".Contains(text[1], StringComparison.Ordinal);
        return isMicro ? "µ" + text[1..] : text;
    }

    /// <summary>
    /// The symbol of a unit that is written out (<c>Amp</c>, <c>volts</c>, <c>inches</c>), or null. It is offered
    /// to the builder, not taken: near words such as <c>mAmp</c> differ by a factor of a thousand.
    /// </summary>
    internal static string? SymbolOfWord(string word) => Words.GetValueOrDefault(word.Trim().TrimEnd('.'));

    private static readonly Dictionary<string, string> Words = new(StringComparer.OrdinalIgnoreCase)
    {
        ["amp"] = "A", ["amps"] = "A", ["ampere"] = "A", ["amperes"] = "A",
        ["volt"] = "V", ["volts"] = "V", ["vdc"] = "V", ["watt"] = "W", ["watts"] = "W",
        ["amp hours"] = "Ah", ["amp-hours"] = "Ah", ["watt hours"] = "Wh", ["watt-hours"] = "Wh",
        ["second"] = "s", ["seconds"] = "s", ["sec"] = "s", ["minute"] = "min", ["minutes"] = "min", ["mins"] = "min",
        ["hour"] = "h", ["hours"] = "h", ["hr"] = "h", ["hrs"] = "h", ["day"] = "d", ["days"] = "d",
        ["inch"] = "in", ["inches"] = "in", ["\""] = "in", ["foot"] = "ft", ["feet"] = "ft", ["'"] = "ft",
        ["metre"] = "m", ["metres"] = "m", ["meter"] = "m", ["meters"] = "m",
        ["celsius"] = "°C", ["fahrenheit"] = "°F", ["percent"] = "%", ["farad"] = "F", ["farads"] = "F",
    };

    private static string ReplaceWord(string text, string word, string symbol) =>
        text.Replace(word, symbol, StringComparison.OrdinalIgnoreCase);
}
