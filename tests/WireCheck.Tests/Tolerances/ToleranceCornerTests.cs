using WireCheck.Circuit.Wiring;
using WireCheck.Description;
using WireCheck.Description.Kinds;
using WireCheck.Knowledge;
using WireCheck.Tests.Sheets;
using WireCheck.Text;
using WireCheck.Tolerances;

namespace WireCheck.Tests.Tolerances;

public sealed class ToleranceCornerTests
{
    [Fact]
    public void What_is_declared_wins_and_the_rest_is_assumed_with_its_source()
    {
        ToleranceSet set = ToleranceSet.Of(Read("tolerances: {length: 3 %}\n"), Library.Embedded);

        set.Lengths.ShouldBe(new Tolerance("lengths", "length of conductors", 0.03, null));
        set.Cells.Share.ShouldBe(0.2);
        set.Cells.Source.ShouldNotBeNull();
    }

    [Fact]
    public void There_is_a_corner_for_every_combination_of_ends_that_are_not_zero()
    {
        ToleranceCorner.All(Set("")).Count.ShouldBe(16);
        ToleranceCorner.All(Set("tolerances: {cell_resistance: 0 %, joint: 0 %}\n")).Count.ShouldBe(4);
        ToleranceCorner.All(Set("tolerances: {cell_resistance: 0 %, joint: 0 %, length: 0 %, coil: 0 %}\n")).ShouldBeEmpty();
        ToleranceCorner.All(Set("")).Select(c => c.Words).ShouldBeUnique();
    }

    [Fact]
    public void A_corner_moves_resistances_and_lengths_by_its_factors_and_leaves_the_rest()
    {
        Pack pack = Read("tolerances: {cell_resistance: 10 %, joint: 50 %, length: 5 %, coil: 0 %}\n");
        ToleranceCorner highest = ToleranceCorner.All(ToleranceSet.Of(pack, Library.Embedded))[^1];

        (Pack built, WiringData data) = highest.Build(pack, Library.Embedded);

        highest.Words.ShouldBe("cells high, lengths high, joints high");
        Cells bank = built.Of<Cells>().Single();
        Conditions conditions = new(0.5, true, 25, 20, 20);
        data.CellOhms(bank, 0, conditions).ShouldBe(1.1 * new WiringData(Library.Embedded).CellOhms(bank, 0, conditions), 1e-12);
        data.JointOhms("bolted", null, true).ShouldBe(1.5 * new WiringData(Library.Embedded).JointOhms("bolted", null, true), 1e-12);
        built.Conductors.Zip(pack.Conductors).ShouldAllBe(p => Math.Abs(p.First.Length.Value.Meters - (1.05 * p.Second.Length.Value.Meters)) < 1e-12);
    }

    [Fact]
    public void A_lengthened_wire_is_the_same_in_everything_else()
    {
        Conductor wire = Read("").Conductors[0];
        Conductor longer = wire.Lengthened(2);

        foreach (System.Reflection.PropertyInfo property in typeof(Conductor).GetProperties().Where(p => p.Name is not ("Length" or "Terminals")))
        {
            property.GetValue(longer).ShouldBe(property.GetValue(wire), property.Name);
        }
    }

    private static ToleranceSet Set(string tolerances) => ToleranceSet.Of(Read(tolerances), Library.Embedded);

    private static Pack Read(string tolerances)
    {
        string[] lines = SheetBooks.Small.Split('\n');
        string text = string.Join('\n', lines.Where(l => !l.StartsWith("tolerances", StringComparison.Ordinal))) + "\n" + tolerances;
        ProblemList problems = new();
        Pack? pack = PackReader.Read("box.yaml", text, problems);
        problems.InOrder().ShouldBeEmpty();
        return pack.ShouldNotBeNull();
    }
}
