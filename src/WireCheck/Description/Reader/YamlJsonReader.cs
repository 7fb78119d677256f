using System.Globalization;
using Newtonsoft.Json;
using WireCheck.Text;

namespace WireCheck.Description.Reader;

/// <summary>
/// Shows YAML to a reader of JSON, with the places of the YAML file. Plain scalars are numbers, true, false
/// or nothing where YAML 1.2 says so; all others are text.
/// </summary>
internal sealed class YamlJsonReader(YamlMap root) : JsonReader, IJsonLineInfo
{
    private readonly IEnumerator<(JsonToken Token, object? Value, Position Place)> _tokens = Tokens(root).GetEnumerator();
    private Position _place = root.Position;

    public int LineNumber => _place.Line;

    public int LinePosition => _place.Column;

    public bool HasLineInfo() => true;

    public override bool Read()
    {
        if (!_tokens.MoveNext())
        {
            SetToken(JsonToken.None);
            return false;
        }

        _place = _tokens.Current.Place;
        SetToken(_tokens.Current.Token, _tokens.Current.Value);
        return true;
    }

    protected override void Dispose(bool disposing)
    {
        if (disposing)
        {
            _tokens.Dispose();
        }

        base.Dispose(disposing);
    }

    private static IEnumerable<(JsonToken Token, object? Value, Position Place)> Tokens(YamlNode node)
    {
        switch (node)
        {
            case YamlMap map:
                yield return (JsonToken.StartObject, null, map.Position);
                foreach (YamlEntry entry in map.Entries)
                {
                    yield return (JsonToken.PropertyName, entry.Key.Text, entry.Key.Position);
                    foreach (var token in Tokens(entry.Value))
                    {
                        yield return token;
                    }
                }

                yield return (JsonToken.EndObject, null, map.Position);
                break;
            case YamlList list:
                yield return (JsonToken.StartArray, null, list.Position);
                foreach (var token in list.Items.SelectMany(Tokens))
                {
                    yield return token;
                }

                yield return (JsonToken.EndArray, null, list.Position);
                break;
            case YamlScalar scalar:
                (JsonToken kind, object? value) = Scalar(scalar);
                yield return (kind, value, scalar.Position);
                break;
        }
    }

    private static (JsonToken Token, object? Value) Scalar(YamlScalar scalar)
    {
        if (scalar.Quoted)
        {
            return (JsonToken.String, scalar.Text);
        }

        if (scalar.Text is "" or "~" or "null" or "Null" or "NULL")
        {
            return (JsonToken.Null, null);
        }

        if (scalar.Text is "true" or "false")
        {
            return (JsonToken.Boolean, scalar.Text == "true");
        }

        if (long.TryParse(scalar.Text, NumberStyles.AllowLeadingSign, CultureInfo.InvariantCulture, out long whole))
        {
            return (JsonToken.Integer, whole);
        }

        bool number = char.IsAsciiDigit(scalar.Text[^1])
            && double.TryParse(scalar.Text, NumberStyles.Float, CultureInfo.InvariantCulture, out double value)
            && double.IsFinite(value);
        return number
            ? (JsonToken.Float, double.Parse(scalar.Text, NumberStyles.Float, CultureInfo.InvariantCulture))
            : (JsonToken.String, scalar.Text);
    }
}
