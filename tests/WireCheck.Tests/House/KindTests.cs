using WireCheck.Circuit.Wiring;
using WireCheck.Description;
using WireCheck.Description.Kinds;
using WireCheck.Description.Reader;
using WireCheck.Facts.Gather;

namespace WireCheck.Tests.House;

/// <summary>A kind of part is one file in each place; whoever adds one is told here what is missing.</summary>
public sealed class KindTests
{
    private static readonly Type[] Kinds =
        [.. typeof(Part).Assembly.GetTypes().Where(t => t.IsSubclassOf(typeof(Part)) && !t.IsAbstract)];

    public static TheoryData<string> Names => [.. Kinds.Select(k => k.Name)];

    [Theory]
    [MemberData(nameof(Names))]
    public void A_kind_has_a_file_of_its_own_in_each_place(string kind)
    {
        string[] missing =
        [
            .. new[]
            {
                $"src/WireCheck/Description/Kinds/{kind}.cs",
                $"src/WireCheck/Circuit/Wiring/{kind}Wiring.cs",
                $"src/WireCheck/Facts/Gather/{kind}Gatherer.cs",
            }.Where(file => !SourceTree.Has(file)),
        ];

        missing.ShouldBeEmpty();
    }

    [Fact]
    public void Each_file_of_Kinds_is_a_kind()
    {
        SourceTree.Files("src/WireCheck/Description/Kinds").Select(f => Path.GetFileNameWithoutExtension(f))
            .ShouldBe(Kinds.Select(k => k.Name), ignoreOrder: true);
    }

    [Fact]
    public void Each_kind_is_wired_once() => KindWirings.All.Select(w => w.PartType).ShouldBe(Kinds, ignoreOrder: true);

    [Fact]
    public void Facts_are_gathered_for_each_kind_once() => Gatherers.All.Select(g => g.PartType).ShouldBe(Kinds, ignoreOrder: true);

    [Fact]
    public void Each_kind_has_its_section_and_each_section_its_kind()
    {
        // A breaker is read as a fuse from a section of its own; conductors have a reader of their own.
        IEnumerable<Type> read = PartSections.All.Where(s => s.Name != SectionNames.Breakers).Select(s => s.Read.Method.ReturnType);

        read.Append(typeof(Conductor)).ShouldBe(Kinds, ignoreOrder: true);
    }

    [Fact]
    public void Each_section_has_its_file_of_part_classes()
    {
        // Joints and conductors take their values from tables: joints, insulation, conductor-resistance.
        IEnumerable<string> sections = PartSections.All.Select(s => s.Name).Where(name => name != "joints");

        Directory.EnumerateFiles(Path.Combine(Golden.Root, "rules", "parts")).Select(f => Path.GetFileNameWithoutExtension(f))
            .ShouldBe(sections, ignoreOrder: true);
    }
}
