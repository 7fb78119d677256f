using System.Globalization;
using WireCheck.Edits;
using WireCheck.Text;

namespace WireCheck.Tests.Edits;

/// <summary>Many edits at once, on the examples and on descriptions written in mixed styles.</summary>
public sealed class EditPropertyTests
{
    public static TheoryData<string> Examples =>
        [.. Directory.GetFiles(Path.Combine(Golden.Root, "examples"), "*.yaml").Select(f => Path.GetFileName(f)!).Order(StringComparer.Ordinal)];

    /// <summary>What may be refused: what is shared, what is no mapping, and one of two edits that exclude each other.</summary>
    private static readonly string[] Allowed = ["alias", "anchor", "'fresh'", "another edit"];

    public static TheoryData<int> Seeds => [.. Enumerable.Range(1, 120)];

    [Theory]
    [MemberData(nameof(Examples))]
    public void In_an_example_any_values_change_and_nothing_else(string example)
    {
        string text = File.ReadAllText(Path.Combine(Golden.Root, "examples", example));
        Random random = new(7);
        foreach (string written in new[] { text, text.Replace("\n", "\r\n", StringComparison.Ordinal) })
        {
            ValueEdit[] all = [.. MixedYaml.ValuesOf(Read(written)).Where(e => e.PartId.Length > 0)];
            all.Length.ShouldBeGreaterThan(100);
            foreach (ValueEdit[] some in all.OrderBy(_ => random.Next()).Chunk(25))
            {
                EditPlan plan = DescriptionEdits.Of("box.yaml", written).Plan(some);
                plan.Refused.ShouldBeEmpty();
                ShouldHold(written, plan, some);
            }
        }
    }

    [Theory]
    [MemberData(nameof(Examples))]
    public void In_an_example_every_part_takes_a_key_it_lacks(string example)
    {
        string text = File.ReadAllText(Path.Combine(Golden.Root, "examples", example));
        ValueEdit[] edits = [.. MixedYaml.ValuesOf(Read(text)).Select(e => e.PartId).Where(id => id.Length > 0).Distinct()
            .SelectMany(id => new[] { new ValueEdit(id, "spare_key", "1 A"), new ValueEdit(id, "spare.first", "2 A"), new ValueEdit(id, "spare.second", "3, 4") })];
        EditPlan plan = DescriptionEdits.Of("box.yaml", text).Plan(edits);
        plan.Refused.ShouldBeEmpty();
        ShouldHold(text, plan, edits);
        string.Concat(plan.NewText().Split('\n').Where(l => !l.Contains("spare", StringComparison.Ordinal)))
            .ShouldBe(string.Concat(text.Split('\n').Where((l, i) => plan.NewText().Split('\n').Contains(l))));
    }

    [Theory]
    [MemberData(nameof(Seeds))]
    public void In_any_mixture_of_styles_the_new_text_reads_as_the_old_tree_with_the_new_values(int seed)
    {
        Random random = new(seed);
        string text = WriteReadable(random);
        YamlMap tree = Read(text);
        ValueEdit[] there = [.. MixedYaml.ValuesOf(tree)];
        ValueEdit[] edits = [.. there.OrderBy(_ => random.Next()).Take(6), .. MixedYaml.PartIds(tree).Where(_ => random.Next(2) == 0).SelectMany(id =>
            new[] { new ValueEdit(id, "fresh", "1 A"), new ValueEdit(id, "nest.fresh", "it's 2"), new ValueEdit(id, "new_nest.fresh", "#3") })];
        EditPlan plan = DescriptionEdits.Of("box.yaml", text).Plan(edits);
        ShouldHold(text, plan, [.. edits.Except(plan.Refused.Select(r => r.Edit))]);
        foreach (EditRefusal refusal in plan.Refused)
        {
            // The parser does not take a key after an anchored value in braces.
            bool anchored = text.Contains('&', StringComparison.Ordinal) && refusal.Reason.Contains("without changing more", StringComparison.Ordinal);
            (anchored ? [refusal.Reason] : Allowed).ShouldContain(words => refusal.Reason.Contains(words, StringComparison.Ordinal), $"{refusal.Edit}: {refusal.Reason}\n{text}");
        }
    }

    /// <summary>A mixture that the parser takes; it refuses a few that are good YAML.</summary>
    private static string WriteReadable(Random random)
    {
        while (true)
        {
            string text = new MixedYaml(random).Write();
            ProblemList problems = new();
            if (YamlReader.ReadMap("box.yaml", text, YamlLimits.Default, problems) is not null && problems.IsEmpty)
            {
                return text;
            }
        }
    }

    private static YamlMap Read(string text)
    {
        ProblemList problems = new();
        YamlMap? map = YamlReader.ReadMap("box.yaml", text, YamlLimits.Default, problems);
        problems.InOrder().ShouldBeEmpty(text);
        return map.ShouldNotBeNull();
    }

    /// <summary>Outside the changes the text is the same; inside, the values asked for and no others.</summary>
    private static void ShouldHold(string text, EditPlan plan, ValueEdit[] made)
    {
        string after = plan.NewText();
        int shift = 0, done = 0;
        foreach (TextChange change in plan.Changes)
        {
            change.Offset.ShouldBeGreaterThanOrEqualTo(done);
            after[(done + shift)..(change.Offset + shift)].ShouldBe(text[done..change.Offset]);
            after.AsSpan(change.Offset + shift, change.NewText.Length).ToString().ShouldBe(change.NewText);
            shift += change.NewText.Length - change.Length;
            done = change.Offset + change.Length;
        }

        after[(done + shift)..].ShouldBe(text[done..]);
        SortedDictionary<string, string> expected = Flat(Read(text));
        foreach (ValueEdit edit in made)
        {
            string place = MixedYaml.PlaceOf(Read(text), edit);
            foreach (string empty in expected.Keys.Where(k => expected[k].Length == 0 && place.StartsWith(k + "/", StringComparison.Ordinal)).ToArray())
            {
                expected.Remove(empty);
            }

            expected[place] = edit.NewText;
        }

        Flat(Read(after)).ShouldBe(expected, after);
    }

    private static SortedDictionary<string, string> Flat(YamlNode root)
    {
        SortedDictionary<string, string> flat = new(StringComparer.Ordinal);
        void Walk(string place, YamlNode node)
        {
            switch (node)
            {
                case YamlMap { Entries.Count: > 0 } map:
                    foreach (YamlEntry entry in map.Entries)
                    {
                        Walk($"{place}/{entry.Key.Text}", entry.Value);
                    }

                    break;
                case YamlList list:
                    for (int i = 0; i < list.Items.Count; i++)
                    {
                        Walk(string.Create(CultureInfo.InvariantCulture, $"{place}/{i}"), list.Items[i]);
                    }

                    break;
                default:
                    flat[place] = (node as YamlScalar)?.Text ?? "";
                    break;
            }
        }

        Walk("", root);
        return flat;
    }
}
