using YamlDotNet.RepresentationModel;

namespace WireCheck.Tests.Seeded;

/// <summary>Lays one description over another: mappings merge, anything else replaces, and <c>~</c> takes a key away.</summary>
internal static class YamlOverlay
{
    internal static void Lay(YamlMappingNode target, YamlMappingNode over)
    {
        foreach ((YamlNode key, YamlNode value) in over)
        {
            if (IsTakenAway(value))
            {
                target.Children.Remove(key);
            }
            else if (value is YamlMappingNode inner && target.Children.TryGetValue(key, out YamlNode? held) && held is YamlMappingNode mapping)
            {
                Lay(mapping, inner);
            }
            else
            {
                target.Children[key] = Copy(value);
            }
        }
    }

    private static bool IsTakenAway(YamlNode node) => node is YamlScalarNode { Value: "~", Style: YamlDotNet.Core.ScalarStyle.Plain };

    private static YamlNode Copy(YamlNode node) => node switch
    {
        YamlMappingNode mapping => new YamlMappingNode(mapping.Children.Where(c => !IsTakenAway(c.Value))
            .Select(c => KeyValuePair.Create(Copy(c.Key), Copy(c.Value)))),
        YamlSequenceNode sequence => new YamlSequenceNode(sequence.Select(Copy)),
        _ => new YamlScalarNode(((YamlScalarNode)node).Value) { Style = ((YamlScalarNode)node).Style },
    };
}
