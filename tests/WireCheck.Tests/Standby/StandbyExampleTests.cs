using WireCheck.Standby;
using WireCheck.States;

namespace WireCheck.Tests.Standby;

/// <summary>Every consumer of the four example boxes at rest, with the way its current takes, line by line.</summary>
public sealed class StandbyExampleTests
{
    private const string GaugeOfStall = "gauge 1.000 mA: w1 main j-gauge f-gauge w25 w26 w4 shunt w5 bms w6";
    private const string GaugeOfPump = "gauge 1.000 mA: w1 main j-gauge b-gauge w30 w31 w4 shunt w5 bms w6";
    private const string GaugeOfWorkshop = "gauge 1.000 mA: w1 main j-gauge b-gauge w25 w26 w6 shunt w7 bms w8";

    public static TheoryData<string, string[]> Boxes => new()
    {
        { "market-stall-12v", [GaugeOfStall, "bms 0.100 mA: w6"] },
        { "pump-house-24v", [GaugeOfPump, "bms 0.100 mA: w6"] },
        { "bicycle-workshop-48v", [GaugeOfWorkshop, "bms 0.100 mA: w8"] },
        { "first-draft-12v", ["bms 0.100 mA: w6"] },
    };

    [Theory]
    [MemberData(nameof(Boxes))]
    public void Each_consumer_of_a_stored_box_has_its_current_and_its_way(string name, string[] lines)
    {
        Lines(new StandbyStudy(Solve(name)).Stored).ShouldBe(lines);
    }

    /// <summary>What is plugged in without power adds less than a microampere in each of them: diodes and controllers hold.</summary>
    [Theory]
    [MemberData(nameof(Boxes))]
    public void Each_consumer_of_a_box_left_plugged_has_its_current_and_its_way(string name, string[] lines)
    {
        Lines(new StandbyStudy(Solve(name)).LeftPlugged).ShouldBe(lines);
    }

    [Theory]
    [MemberData(nameof(Boxes))]
    public void The_shares_add_up_to_the_total_and_the_total_is_what_leaves_the_cells(string name, string[] lines)
    {
        SolvedBox box = Solve(name);
        StandbyStudy study = new(box);
        foreach (StandbyState state in new[] { study.Stored!, study.LeftPlugged! })
        {
            state.Drains.Sum(d => d.Amps).ShouldBe(state.Amps, 1e-9);
            state.Drains.Sum(d => d.Amps / state.Amps).ShouldBe(1, 1e-9);
            BankAmps.Of(box, state.Point).ShouldBe(state.Amps, 1e-8);
            state.Drains.Count(d => d.Amps > 1e-6).ShouldBe(lines.Length);
        }
    }

    [Theory]
    [MemberData(nameof(Boxes))]
    public void What_leaves_is_the_most_of_all_corners(string name, string[] lines)
    {
        SolvedBox box = Solve(name);

        box.In(Modes.Stored).Max(p => BankAmps.Of(box, p)).ShouldBe(new StandbyStudy(box).Stored!.Amps, 1e-8);
        lines.ShouldNotBeEmpty();
    }

    private static SolvedBox Solve(string name) =>
        PackNumbers.Solve(name, File.ReadAllText(Path.Combine(Golden.Root, "examples", name + ".yaml"))).Box.ShouldNotBeNull();

    private static IEnumerable<string> Lines(StandbyState? state) => state.ShouldNotBeNull().Drains
        .Where(d => d.Amps > 1e-6)
        .Select(d => FormattableString.Invariant($"{d.PartId} {d.Amps * 1000:0.000} mA: {string.Join(' ', d.Chain)}"));
}
