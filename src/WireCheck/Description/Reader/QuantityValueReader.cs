using WireCheck.Quantities;
using WireCheck.Text;

namespace WireCheck.Description.Reader;

/// <summary>Reads a number with its unit.</summary>
internal sealed class QuantityValueReader<T>(QuantityKind<T> kind) : ValueReader<T>
{
    public override string Example => kind.Example;

    public override T StandIn { get; } = QuantityReader.Read(kind.Example, kind, Bounds.Any).Value;

    protected override string? ReadText(string text, ValueSite site, out T value)
    {
        Parsed<T> parsed = QuantityReader.Read(text, kind, site.Bounds);
        value = parsed.Value;
        return parsed.Fault is null ? null : InputMessages.Value(site.Subject, site.Key, parsed.Fault, kind.Name, kind.Example);
    }
}

/// <summary>Reads <c>a .. b UNIT</c> or <c>{from: a, to: b}</c>.</summary>
internal sealed class RangeValueReader<T>(QuantityKind<T> kind, string example) : ValueReader<Range<T>>
{
    private readonly QuantityValueReader<T> _end = new(kind);

    public override string Example => example;

    public override Range<T> StandIn { get; } = QuantityReader.ReadRange(example, kind, Bounds.Any).Value;

    public override bool TryRead(YamlNode node, ValueSite site, out Range<T> value) =>
        node is YamlMap map ? TryReadMap(map, site, out value) : base.TryRead(node, site, out value);

    protected override string? ReadText(string text, ValueSite site, out Range<T> value)
    {
        Parsed<Range<T>> parsed = QuantityReader.ReadRange(text, kind, site.Bounds);
        value = parsed.Value;
        return parsed.Fault is null ? null : InputMessages.Value(site.Subject, site.Key, parsed.Fault, kind.Name, example);
    }

    private bool TryReadMap(YamlMap map, ValueSite site, out Range<T> value)
    {
        value = StandIn;
        string subject = $"'{site.Key}' of {site.Subject}";
        foreach (YamlEntry entry in map.Entries.Where(e => e.Key.Text is not ("from" or "to")))
        {
            site.Problems.Add(entry.Key.Position, InputMessages.UnknownKey(subject, entry.Key.Text, ["from", "to"]));
        }

        bool good = TryReadEnd(map, "from", site, out T from);
        if (!(TryReadEnd(map, "to", site, out T to) && good))
        {
            return false;
        }

        Parsed<Range<T>> range = QuantityReader.InOrder(from, to, $"{Text(map, "from")} .. {Text(map, "to")}", kind);
        if (range.Fault is not null)
        {
            site.Problems.Add(map.Position, InputMessages.Value(site.Subject, site.Key, range.Fault, kind.Name, example));
            return false;
        }

        value = range.Value;
        return true;
    }

    private bool TryReadEnd(YamlMap map, string key, ValueSite site, out T value)
    {
        if (map.Find(key) is YamlNode node)
        {
            return _end.TryRead(node, site with { Key = $"{site.Key}.{key}" }, out value);
        }

        value = _end.StandIn;
        site.Problems.Add(map.Position, InputMessages.Missing($"'{site.Key}' of {site.Subject}", $"'{key}'", key, kind.Example, false));
        return false;
    }

    private static string Text(YamlMap map, string key) => map.Find(key) is YamlScalar scalar ? scalar.Text : "";
}
