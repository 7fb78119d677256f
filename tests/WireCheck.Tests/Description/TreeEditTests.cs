using WireCheck.Description;
using WireCheck.Text;

namespace WireCheck.Tests.Description;

public sealed class TreeEditTests
{
    private const string Text = "pack: Box\nrelays:\n  k: {part: relay-12v-40a, coil: {voltage: 12 V}}\n  n:\n";

    [Theory]
    [InlineData("relays", "k", "coil.voltage", "24 V")]
    [InlineData("relays", "k", "coil.resistance", "80 Ω")]
    [InlineData("relays", "k", "contact.break.amps", "20 A")]
    [InlineData("relays", "n", "part", "relay-12v-40a")]
    public void A_value_is_set_where_it_stands_or_added_where_it_does_not(string section, string id, string key, string value)
    {
        YamlMap root = Read();

        YamlMap edited = TreeEdit.Apply(root, [new TreeEdit(section, id, key, value)]);

        YamlNode? node = ((YamlMap)edited.Find(section)!).Find(id);
        foreach (string name in key.Split('.'))
        {
            node = ((YamlMap)node!).Find(name);
        }

        ((YamlScalar)node!).Text.ShouldBe(value);
        edited.Entries.Select(e => e.Key.Text).ShouldBe(root.Entries.Select(e => e.Key.Text));
    }

    [Fact]
    public void The_tree_that_was_given_stays_as_it_is_and_an_unknown_part_is_left_alone()
    {
        YamlMap root = Read();

        YamlMap edited = TreeEdit.Apply(root, [new TreeEdit("relays", "x", "part", "y"), new TreeEdit("relays", "k", "part", "other")]);

        Part(root).ShouldBe("relay-12v-40a");
        Part(edited).ShouldBe("other");
        ((YamlMap)edited.Find("relays")!).Find("x").ShouldBeNull();

        static string Part(YamlMap tree) => ((YamlScalar)((YamlMap)((YamlMap)tree.Find("relays")!).Find("k")!).Find("part")!).Text;
    }

    private static YamlMap Read() => YamlReader.ReadMap("box.yaml", Text, YamlLimits.Default, new ProblemList())!;
}
