using System.Globalization;
using System.Text;
using WireCheck.Edits;
using WireCheck.Text;

namespace WireCheck.Tests.Edits;

/// <summary>Writes descriptions in a random mixture of the styles YAML allows, and knows where their values are.</summary>
internal sealed class MixedYaml(Random random)
{
    private static readonly string[] Sections = ["fuses", "switches", "relays", "conductors"];

    private readonly StringBuilder _text = new();
    private readonly string _break = random.Next(3) switch { 0 => "\r\n", _ => "\n" };
    private readonly string? _anchor = random.Next(3) == 0 ? "shared" : null;
    private bool _anchored;

    /// <summary>A whole description.</summary>
    internal string Write()
    {
        _text.Append("# Ä comment, with: {braces}").Append(_break);
        foreach (string section in Sections.Take(1 + random.Next(Sections.Length)))
        {
            _text.Append(section).Append(':');
            if (random.Next(5) == 0)
            {
                _text.Append(' ');
                Flow(string.Concat(section.AsSpan(0, 1), "-"), 0);
                EndLine();
                continue;
            }

            EndLine();
            for (int part = 0; part < 1 + random.Next(4); part++)
            {
                string id = string.Create(CultureInfo.InvariantCulture, $"{section[0]}{part}");
                _text.Append("  ").Append(random.Next(6) == 0 ? $"\"{id}\"" : id).Append(':');
                Value(4, 1);
                if (random.Next(4) == 0)
                {
                    _text.Append(random.Next(2) == 0 ? "" : "      # a comment between").Append(_break);
                }
            }
        }

        return random.Next(3) == 0 ? _text.ToString().TrimEnd('\r', '\n') : _text.ToString();
    }

    /// <summary>An edit for each single value below a part, with another value.</summary>
    internal static IEnumerable<ValueEdit> ValuesOf(YamlMap root)
    {
        foreach (YamlEntry section in root.Entries.Where(s => s.Value is YamlMap && IsSection(s.Key.Text)))
        {
            foreach (YamlEntry part in ((YamlMap)section.Value).Entries)
            {
                foreach (string key in KeysBelow(part.Value, ""))
                {
                    yield return new ValueEdit(part.Key.Text, key, $"new {key}");
                }
            }
        }
    }

    internal static IEnumerable<string> PartIds(YamlMap root) =>
        root.Entries.Where(s => s.Value is YamlMap).SelectMany(s => ((YamlMap)s.Value).Entries).Where(p => p.Value is YamlMap).Select(p => p.Key.Text);

    /// <summary>Where an edit's value stands, as a path from the root.</summary>
    internal static string PlaceOf(YamlMap root, ValueEdit edit)
    {
        string section = root.Entries.First(s => IsSection(s.Key.Text) && s.Value is YamlMap parts && parts.Find(edit.PartId) is not null).Key.Text;
        return $"/{section}/{edit.PartId}/{edit.Key.Replace('.', '/')}";
    }

    private static bool IsSection(string name) => name is not ("pack" or "defaults" or "surroundings" or "settings" or "modes" or "paths" or "costs");

    private static IEnumerable<string> KeysBelow(YamlNode node, string above)
    {
        string dot = above.Length == 0 ? "" : ".";
        return node switch
        {
            YamlMap map => map.Entries.Where(e => !e.Key.Text.Contains('.', StringComparison.Ordinal)).SelectMany(e => KeysBelow(e.Value, above + dot + e.Key.Text)),
            YamlList list => list.Items.SelectMany((item, i) => KeysBelow(item, string.Create(CultureInfo.InvariantCulture, $"{above}{dot}{i}"))),
            _ => above.Length == 0 ? [] : [above],
        };
    }

    private void EndLine()
    {
        _text.Append(random.Next(4) switch { 0 => " # says: more", 1 => "\t# tab", 2 => " ", _ => "" }).Append(_break);
    }

    /// <summary>The value after a colon, to the end of its last line.</summary>
    private void Value(int indent, int depth)
    {
        if (depth < 3 && (depth == 1 || random.Next(3) == 0) && random.Next(2) == 0)
        {
            EndLine();
            Block(indent, depth);
            return;
        }

        _text.Append(random.Next(8) == 0 ? "   " : " ");
        if (depth == 1 || (depth < 3 && random.Next(3) == 0))
        {
            Flow("", depth);
        }
        else
        {
            Scalar();
        }

        EndLine();
    }

    private void Block(int indent, int depth)
    {
        int keys = 1 + random.Next(4);
        for (int key = 0; key < keys; key++)
        {
            _text.Append(' ', indent).Append(KeyName(key)).Append(random.Next(9) == 0 ? " :" : ":");
            if (random.Next(9) == 0)
            {
                EndLine();
            }
            else if (random.Next(7) == 0)
            {
                EndLine();
                for (int item = 0; item < 2; item++)
                {
                    _text.Append(' ', indent).Append("  - ");
                    Scalar();
                    EndLine();
                }
            }
            else
            {
                Value(indent + 2, depth + 1);
            }
        }
    }

    private void Flow(string prefix, int depth)
    {
        _text.Append('{');
        int keys = random.Next(4);
        for (int key = 0; key < keys; key++)
        {
            _text.Append(key == 0 ? "" : random.Next(5) == 0 ? $",{_break}        " : ", ").Append(prefix + KeyName(key)).Append(": ");
            if (depth == 0 || (depth < 3 && random.Next(4) == 0))
            {
                Flow("", depth + 1);
            }
            else if (random.Next(9) == 0)
            {
                _text.Append("[a, 'b', {c: d}]");
            }
            else if (random.Next(9) != 0)
            {
                Scalar();
            }
        }

        _text.Append(keys > 0 && random.Next(5) == 0 ? ", }" : "}");
    }

    private static string KeyName(int key) => key switch { 0 => "rating", 1 => "nest", 2 => "'size'", _ => "colour" };

    private void Scalar()
    {
        if (_anchor is not null && random.Next(6) == 0)
        {
            _text.Append(_anchored ? '*' : '&').Append(_anchor).Append(_anchored ? "" : " 80 A");
            _anchored = true;
            return;
        }

        _text.Append(random.Next(7) switch
        {
            0 => "'it''s 5 A'",
            1 => "\"tab\\t \\\"quoted\\\" 😀\"",
            2 => "10 mm²",
            3 => "a b  c",
            4 => "-5 °C",
            5 => "x#y:z",
            _ => "80 A",
        });
    }
}
