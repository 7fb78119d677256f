using WireCheck.Circuit.Solving;
using WireCheck.Circuit.Wiring;
using WireCheck.States;
using WireCheck.Tests.Facts.Gather;

namespace WireCheck.Tests.States;

/// <summary>A box in its states: what follows what until nothing moves.</summary>
public sealed class StateSolverTests
{
    /// <summary>The coil is fed from the relay's own contact: it holds once pulled in and never pulls in by itself.</summary>
    private static readonly string HoldsItself = GatheredBox.Plain
        .Replace("w6: {from: master.2, to: k1.86,", "w6: {from: k1.87, to: k1.86,", StringComparison.Ordinal);

    /// <summary>The coil is fed through the contact that it opens.</summary>
    private static readonly string CutsItself = GatheredBox.Plain
        .Replace("{part: relay-12v-40a}", "{part: relay-12v-40a, form: change-over}", StringComparison.Ordinal)
        .Replace("w6: {from: master.2, to: k1.86,", "w6: {from: k1.87a, to: k1.86,", StringComparison.Ordinal);

    public static TheoryData<string> Examples =>
        [.. Directory.EnumerateFiles(Path.Combine(Golden.Root, "examples"), "*.yaml").Select(f => Path.GetFileName(f)).Order(StringComparer.Ordinal)];

    [Fact]
    public void Every_mode_is_solved_at_six_corners()
    {
        SolvedBox box = Solve(GatheredBox.Plain);

        box.Corners.Count.ShouldBe(6);
        box.Points.Count.ShouldBe(6 * box.Modes.Count);
        box.Modes.Select(m => m.Id).ShouldBe([Modes.Stored, Modes.LeftPlugged, Modes.Idle, Modes.Everything], ignoreOrder: true);
    }

    [Theory]
    [MemberData(nameof(Examples))]
    public void Kirchhoff_holds_to_a_nanoampere_in_every_state_of_an_example(string example)
    {
        foreach (OperatingPoint point in Solve(File.ReadAllText(Path.Combine(Golden.Root, "examples", example))).Points)
        {
            string place = $"{point.Mode.Id}, {point.Corner}";
            point.Solution.Outcome.ShouldBe(SolveOutcome.Solved, place);
            point.Solution.WorstResidualAmps.ShouldBeLessThan(1e-9, place);
        }
    }

    [Fact]
    public void With_its_switch_open_a_relay_is_at_rest_and_its_load_without_current()
    {
        SolvedBox box = Solve(GatheredBox.Plain);

        foreach (OperatingPoint point in box.In(Modes.Stored))
        {
            point.Relays.Single().Energised.ShouldBeFalse();
            Amps(box, point, "w3").ShouldBe(0, 1e-9);
        }
    }

    [Fact]
    public void With_its_switch_closed_a_relay_pulls_in_and_carries_its_load()
    {
        SolvedBox box = Solve(GatheredBox.Plain);

        foreach (OperatingPoint point in box.In(Modes.Everything))
        {
            RelayState relay = point.Relays.Single();
            relay.Energised.ShouldBeTrue();
            relay.CoilVolts.ShouldBeGreaterThan(relay.OperateVolts);

            // The lamp draws 10 A by its description; only the relay's contact leads there.
            Amps(box, point, "w3").ShouldBe(10, 1e-6);
        }
    }

    [Fact]
    public void A_relay_that_holds_itself_is_told_as_one_with_two_states()
    {
        OperatingPoint point = Solve(HoldsItself).In(Modes.Everything).First();

        point.RelaysWithTwoStates.ShouldBe(["k1"]);
        point.Relays.Single().Energised.ShouldBeFalse("the state told is the one from rest");
    }

    [Fact]
    public void A_relay_that_cuts_its_own_coil_is_told_as_chattering()
    {
        OperatingPoint point = Solve(CutsItself).In(Modes.Everything).First();

        point.ChatteringRelays.ShouldBe(["k1"]);
        point.RelaysWithTwoStates.ShouldBeEmpty();
    }

    [Fact]
    public void The_highest_resistance_leaves_a_load_fewer_volts_than_the_lowest()
    {
        SolvedBox box = Solve(GatheredBox.Plain);
        WiredConductor feed = box.Wiring.Of<WiredConductor>().Single(w => w.Part.Id == "w3");
        WiredConductor back = box.Wiring.Of<WiredConductor>().Single(w => w.Part.Id == "w4");

        foreach (IGrouping<Charge, OperatingPoint> pair in box.In(Modes.Everything).GroupBy(p => p.Corner.Charge))
        {
            double Volts(bool highest)
            {
                OperatingPoint point = pair.Single(p => p.Corner.HighestResistance == highest);
                return point.Volts(feed.Element.B, back.Element.A);
            }

            Volts(highest: true).ShouldBeLessThan(Volts(highest: false));
        }
    }

    [Fact]
    public void An_open_BMS_lets_nothing_through_to_the_loads()
    {
        SolvedBox box = Solve(File.ReadAllText(Path.Combine(Golden.Root, "examples", "market-stall-12v.yaml")));
        BoxMode everything = box.Modes.Single(m => m.Id == Modes.Everything);
        WiredBms bms = box.Wiring.Of<WiredBms>().Single();
        StateSolver solver = new(box.Wiring);

        OperatingPoint closed = solver.Solve(everything, box.Corners[0]);
        OperatingPoint open = solver.Solve(everything, box.Corners[0], bmsConducts: false);

        Math.Abs(closed.Amps(bms.Path)).ShouldBeGreaterThan(5);
        open.Amps(bms.Path).ShouldBe(0, 1e-9);
    }

    private static SolvedBox Solve(string text)
    {
        (SolvedBox? box, IReadOnlyList<WireCheck.Text.Problem> problems) = PackNumbers.Solve("box.yaml", text);
        problems.Select(p => p.ToString()).ShouldBeEmpty();
        return box.ShouldNotBeNull();
    }

    private static double Amps(SolvedBox box, OperatingPoint point, string wire) =>
        point.Amps(box.Wiring.Of<WiredConductor>().Single(w => w.Part.Id == wire).Element);
}
