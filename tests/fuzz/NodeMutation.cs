using System.Globalization;
using System.Text.RegularExpressions;
using YamlDotNet.RepresentationModel;

namespace WireCheck.Fuzz;

/// <summary>
/// Changes of values, keys and whole branches that leave the text good YAML, so that they reach what lies behind the reader:
/// other wires between other terminals, absurd numbers with the right unit, parts of one box in another.
/// </summary>
internal sealed partial class NodeMutation(SeedTexts seeds)
{
    private static readonly string[] Numbers =
        ["0", "-1", "1", "1e-12", "0.001", "0.5", "2", "3", "7", "13", "64", "100", "1000", "32767", "1e5", "1e6", "1e9", "1e15", "1e300", "-0.1", "0.1 .. 0.2", "5 .. 1"];

    /// <summary>More nodes than any box has; aliases of aliases would be written out without end.</summary>
    private const int MostNodes = 20_000;

    private static readonly string[] Shapes = ["", "{}", "[]", "~", "[[]]", "{a: b}", "yes", "x", "0 V", "1 A", "[a, b]"];

    /// <summary>The text with some changes; as it is when it is no good YAML.</summary>
    internal string Change(string text, int changes, Random random)
    {
        if (SeedTexts.TryTree(text) is not { } tree || tree is YamlScalarNode || NodesOf(tree, MostNodes) >= MostNodes)
        {
            return text;
        }

        YamlNode copy = Copy(tree);
        for (; changes > 0; changes--)
        {
            ChangeOne(copy, random);
        }

        using StringWriter written = new(CultureInfo.InvariantCulture);
        new YamlStream(new YamlDocument(copy)).Save(written, assignAnchors: false);
        return written.ToString();
    }

    private void ChangeOne(YamlNode tree, Random random)
    {
        List<Place> places = [];
        Collect(tree, places);
        if (places.Count == 0)
        {
            return;
        }

        Place place = places[random.Next(places.Count)];
        switch (random.Next(16))
        {
            case 0 or 1 or 2 or 3 when place.Key is { Value: { } key and not ("from" or "to") } && seeds.AnyValueOf(key, random) is { } other:
                place.Set(Copy(other));
                break;
            case 4 or 5 or 6 or 7 or 8:
                Place[] scalars = [.. places.Where(p => p.Value is YamlScalarNode s && Number().IsMatch(s.Value ?? ""))];
                ChangeNumber(scalars.Length == 0 ? place : scalars[random.Next(scalars.Length)], random);
                break;
            case 9 or 10:
                place.Remove();
                break;
            case 11:
                place.Repeat(Copy(place.Value), random.Next(1000));
                break;
            case 12:
                Place another = places[random.Next(places.Count)];
                (YamlNode mine, YamlNode its) = (Copy(place.Value), Copy(another.Value));
                place.Set(its);
                another.Set(mine);
                break;
            case 13 or 14:
                // A terminal instead of another terminal, a word instead of another word.
                Place[] words = [.. places.Where(p => p.Value is YamlScalarNode)];
                Place target = words.Length == 0 ? place : words[random.Next(words.Length)];
                Place[] alike = [.. words.Where(w => (w.Key?.Value is "from" or "to") == (target.Key?.Value is "from" or "to"))];
                target.Set(alike.Length == 0 ? new YamlScalarNode("x") : Copy(alike[random.Next(alike.Length)].Value));
                break;
            default:
                place.Set(SeedTexts.TryTree(Shapes[random.Next(Shapes.Length)]) ?? new YamlScalarNode(""));
                break;
        }
    }

    private static void ChangeNumber(Place place, Random random)
    {
        if (place.Value is not YamlScalarNode { Value: { } words })
        {
            return;
        }

        MatchCollection numbers = Number().Matches(words);
        if (numbers.Count == 0)
        {
            return;
        }

        Match one = numbers[random.Next(numbers.Count)];
        string number = words.Contains("AWG", StringComparison.Ordinal) ? random.Next(-2, 26).ToString(CultureInfo.InvariantCulture)
            : random.Next(3) == 0 || !double.TryParse(one.Value, CultureInfo.InvariantCulture, out double value)
            ? Numbers[random.Next(Numbers.Length)]
            : (value * Math.Pow(10, (random.NextDouble() * 4) - 2)).ToString("G4", CultureInfo.InvariantCulture);
        place.Set(new YamlScalarNode(string.Concat(words.AsSpan(0, one.Index), number, words.AsSpan(one.Index + one.Length))));
    }

    private static void Collect(YamlNode node, List<Place> places)
    {
        if (node is YamlSequenceNode list)
        {
            for (int i = 0; i < list.Children.Count; i++)
            {
                places.Add(new Place(list, null, i, list.Children[i]));
                Collect(list.Children[i], places);
            }
        }
        else if (node is YamlMappingNode map)
        {
            foreach ((YamlNode key, YamlNode value) in map.Children)
            {
                places.Add(new Place(map, key as YamlScalarNode, 0, value));
                Collect(value, places);
            }
        }
    }

    /// <summary>Nodes with each alias written out, counted no further than asked.</summary>
    private static int NodesOf(YamlNode node, int most)
    {
        IEnumerable<YamlNode> inside = node switch
        {
            YamlMappingNode map => map.Children.Values,
            YamlSequenceNode list => list.Children,
            _ => [],
        };
        int count = 1;
        foreach (YamlNode child in inside)
        {
            if (count >= most)
            {
                break;
            }

            count += NodesOf(child, most - count);
        }

        return count;
    }

    private static YamlNode Copy(YamlNode node) => node switch
    {
        YamlMappingNode map => new YamlMappingNode(map.Children.Select(c => KeyValuePair.Create(Copy(c.Key), Copy(c.Value)))) { Style = map.Style },
        YamlSequenceNode list => new YamlSequenceNode(list.Children.Select(Copy)) { Style = list.Style },
        YamlScalarNode scalar => new YamlScalarNode(scalar.Value) { Style = scalar.Style },
        _ => new YamlScalarNode(""),
    };

    [GeneratedRegex(@"-?\d+(\.\d+)?(e-?\d+)?")]
    private static partial Regex Number();

    /// <summary>A value and where it stands; one whose place has gone is left alone.</summary>
    private sealed record Place(YamlNode Parent, YamlScalarNode? Key, int Index, YamlNode Value)
    {
        internal void Set(YamlNode value)
        {
            if (Parent is YamlMappingNode map && Key is not null)
            {
                map.Children[Key] = value;
            }
            else if (Parent is YamlSequenceNode list && Index < list.Children.Count)
            {
                list.Children[Index] = value;
            }
        }

        internal void Remove()
        {
            if (Parent is YamlMappingNode map && Key is not null)
            {
                map.Children.Remove(Key);
            }
            else if (Parent is YamlSequenceNode list && Index < list.Children.Count)
            {
                list.Children.RemoveAt(Index);
            }
        }

        internal void Repeat(YamlNode copy, int number)
        {
            if (Parent is YamlMappingNode map && Key is not null)
            {
                map.Children[new YamlScalarNode(FormattableString.Invariant($"{Key.Value}-{number}"))] = copy;
            }
            else if (Parent is YamlSequenceNode list)
            {
                list.Children.Add(copy);
            }
        }
    }
}
