using WireCheck.Description;

namespace WireCheck.Tests.Description;

/// <summary>
/// Each file of <c>Broken/</c> is wrong in one way; the text beside it is every problem it must give, whole.
/// </summary>
public sealed class BrokenDescriptionTests
{
    private static readonly string Folder = Path.Combine(Golden.Root, "tests", "WireCheck.Tests", "Description", "Broken");

    [Theory]
    [MemberData(nameof(Files))]
    public void A_broken_description_gives_exactly_these_problems(string name)
    {
        string path = Path.Combine(Folder, name + ".yaml");
        ReadResult result = PackReader.Read(name + ".yaml", File.ReadAllText(path), LibraryClasses.Embedded);

        string told = string.Concat(result.Problems.Select(p => p + "\n"));

        result.Pack.ShouldBeNull();
        told.ShouldNotBeEmpty();
        Golden.ShouldMatch(told, Path.Combine("Description", "Broken", name + ".txt"));
    }

    [Fact]
    public void Each_text_of_problems_belongs_to_a_broken_description()
    {
        IEnumerable<string> names = Directory.GetFiles(Folder, "*.txt").Select(f => Path.ChangeExtension(f, ".yaml"));

        names.Where(f => !File.Exists(f)).ShouldBeEmpty();
    }

    public static TheoryData<string> Files()
    {
        TheoryData<string> files = [];
        foreach (string file in Directory.GetFiles(Folder, "*.yaml").Order(StringComparer.Ordinal))
        {
            files.Add(Path.GetFileNameWithoutExtension(file));
        }

        return files;
    }
}
