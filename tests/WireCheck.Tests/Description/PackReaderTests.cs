using WireCheck.Description;
using WireCheck.Description.Kinds;

namespace WireCheck.Tests.Description;

public sealed class PackReaderTests
{
    private static readonly LibraryClasses Classes = LibraryClasses.Embedded;

    [Fact]
    public void The_market_stall_box_is_read_without_a_problem()
    {
        ReadResult result = PackReader.Read("stall.yaml", Here("stall.yaml"), Classes);

        result.Problems.Select(p => p.ToString()).ShouldBeEmpty();
        Pack pack = result.Pack.ShouldNotBeNull();
        pack.Title.Value.ShouldBe("Market-stall power box");
        pack.Conductors.Select(c => c.Id).ShouldBe(["w1", "w2", "w3", "w9/1", "w9/2"]);
        Relay relay = pack.Find("k-dc").ShouldBeOfType<Relay>();
        relay.Coil.Resistance.Value.Ohms.ShouldBe(85);
        relay.Coil.Resistance.Assumed.ShouldBeFalse();
        relay.Coil.Operate.Value.Volts.ShouldBe(7.8);
        relay.Coil.Operate.Assumed.ShouldBeTrue();
    }

    [Theory]
    [MemberData(nameof(Good))]
    public void Every_example_and_every_case_of_a_rule_is_read_without_a_problem(string file)
    {
        ReadResult result = PackReader.Read(Path.GetFileName(file), File.ReadAllText(Path.Combine(Root, file)), Classes);

        result.Problems.Select(p => p.ToString()).ShouldBeEmpty();
    }

    public static TheoryData<string> Good()
    {
        TheoryData<string> files = [];
        string[] folders = ["examples", "tests/WireCheck.Tests/Rules/Cases"];
        foreach (string folder in folders.Select(f => Path.Combine(Root, f)).Where(Directory.Exists))
        {
            foreach (string file in Directory.GetFiles(folder, "*.yaml", SearchOption.AllDirectories).Order(StringComparer.Ordinal))
            {
                string name = Path.GetRelativePath(Root, file).Replace('\\', '/');
                if (name != RuleSetOfAnExample)
                {
                    files.Add(name);
                }
            }
        }

        return files;
    }

    /// <summary>Rules that an example brings along; it describes no box.</summary>
    private const string RuleSetOfAnExample = "examples/house-rules/house.yaml";

    private static string Root => Golden.Root;

    private static string Here(string name) => File.ReadAllText(Path.Combine(Root, "tests/WireCheck.Tests/Description", name));
}
