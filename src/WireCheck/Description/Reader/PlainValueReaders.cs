using System.Globalization;
using WireCheck.Quantities;

namespace WireCheck.Description.Reader;

/// <summary>Reads yes or no. Editors that follow an older YAML turn them into true and false, which are taken too.</summary>
internal sealed class YesNoValueReader : ValueReader<bool>
{
    public override string Example => "yes";

    public override bool StandIn => false;

    protected override string? ReadText(string text, ValueSite site, out bool value)
    {
        value = text is "yes" or "true";
        return value || text is "no" or "false" ? null : InputMessages.NotYesOrNo(site.Subject, site.Key, text);
    }
}

/// <summary>Reads a count: a whole number within the bounds of its site, at most <see cref="Highest"/>.</summary>
internal sealed class CountValueReader : ValueReader<int>
{
    /// <summary>More of anything is no portable box; it also keeps a stranger's file from eating memory.</summary>
    internal const int Highest = 10_000;

    public override string Example => "4";

    public override int StandIn => 1;

    protected override string? ReadText(string text, ValueSite site, out int value)
    {
        int lowest = site.Bounds.LowestAllowed ? (int)Math.Max(0, site.Bounds.Lowest) : 1;
        int highest = (int)Math.Min(Highest, site.Bounds.Highest);
        bool whole = int.TryParse(text.Trim(), NumberStyles.None, CultureInfo.InvariantCulture, out value);
        return whole && value >= lowest && value <= highest
            ? null
            : InputMessages.NotACount(site.Subject, site.Key, text, lowest, highest);
    }
}

/// <summary>Reads a number that has no unit.</summary>
internal sealed class NumberValueReader : ValueReader<double>
{
    public override string Example => "1.2";

    public override double StandIn => 1;

    protected override string? ReadText(string text, ValueSite site, out double value)
    {
        Parsed<(double Number, string After)> split = NumberScanner.Split(text);
        value = split.Value.Number;
        bool good = split.Fault is null && split.Value.After.Length == 0 && site.Bounds.Check(value, text) is null;
        return good ? null : InputMessages.NotAPlainNumber(site.Subject, site.Key, text);
    }
}

/// <summary>Reads a day, written 2027-06-01.</summary>
internal sealed class DateValueReader : ValueReader<DateOnly>
{
    public override string Example => "2027-06-01";

    public override DateOnly StandIn => new(2027, 6, 1);

    protected override string? ReadText(string text, ValueSite site, out DateOnly value) =>
        DateOnly.TryParseExact(text, "yyyy-MM-dd", CultureInfo.InvariantCulture, DateTimeStyles.None, out value)
            ? null
            : InputMessages.NotADate(site.Subject, site.Key, text);
}

/// <summary>Reads free text of a bounded length.</summary>
internal sealed class TextValueReader : ValueReader<string>
{
    /// <summary>Most characters of a text.</summary>
    internal const int Longest = 2000;

    public override string Example => "…";

    public override string StandIn => "";

    protected override string? ReadText(string text, ValueSite site, out string value)
    {
        value = text;
        return text.Length <= Longest ? null : InputMessages.TooLong(site.Subject, site.Key, Longest);
    }
}

/// <summary>Reads one of a fixed set of words, written in kebab-case.</summary>
internal sealed class EnumValueReader<T> : ValueReader<T>
{
    private readonly string[] _words = [.. Enum.GetNames(typeof(T)).Select(KebabCase.Of)];
    private readonly T[] _values = [.. Enum.GetNames(typeof(T)).Select(n => (T)Enum.Parse(typeof(T), n))];

    public override string Example => _words[0];

    public override T StandIn => _values[0];

    /// <summary>All words, in their order.</summary>
    internal IReadOnlyList<string> Words => _words;

    protected override string? ReadText(string text, ValueSite site, out T value)
    {
        int at = Array.IndexOf(_words, text.Trim());
        value = at < 0 ? StandIn : _values[at];
        return at < 0 ? InputMessages.UnknownWord(site.Subject, site.Key, text, _words) : null;
    }
}
