using System.Globalization;
using WireCheck.Circuit.Elements;
using WireCheck.Circuit.Solving;
using WireCheck.Circuit.Wiring;
using WireCheck.Description;
using WireCheck.Switching;

namespace WireCheck.Tests.Switching;

/// <summary>
/// Every state solved once more from nothing: the box wired anew for each state, with its own order, factor and voltages, and
/// a burden put on each point in turn. What the enumeration leaves out or takes over from a neighbour must not show.
/// </summary>
public sealed class BruteForceTests
{
    private const int Boxes = 40;

    [Fact]
    public void Every_state_of_generated_boxes_is_as_solved_from_nothing()
    {
        int seed = int.TryParse(Environment.GetEnvironmentVariable("WIRECHECK_SEED"), CultureInfo.InvariantCulture, out int given)
            ? given : Environment.TickCount & int.MaxValue;
        Random random = new(seed);
        Count count = new();
        for (int number = 0; number < Boxes; number++)
        {
            string text = GeneratedBox.Text(random);
            CompareAll(StudiedBox.Read(text), $"WIRECHECK_SEED={seed}, box {number}\n{text}", count);
        }

        count.Live.ShouldBeGreaterThan(1000);
        count.Dead.ShouldBeGreaterThan(1000);
        count.HeldIn.ShouldBeGreaterThan(0, $"WIRECHECK_SEED={seed}");
    }

    [Theory]
    [InlineData("market-stall-12v")]
    [InlineData("first-draft-12v")]
    [InlineData("pump-house-24v")]
    [InlineData("bicycle-workshop-48v")]
    public void Every_state_of_an_example_is_as_solved_from_nothing(string name)
    {
        Count count = new();

        CompareAll(StudiedBox.Read(StudiedBox.Example(name)), name, count);

        count.Live.ShouldBeGreaterThan(100);
        count.Dead.ShouldBeGreaterThan(100);
    }

    [Fact]
    public void A_state_in_which_a_switch_makes_no_difference_is_not_solved_again()
    {
        Pack pack = StudiedBox.Read("""
            pack: Two switches, one behind the other
            language: 1
            surroundings: {ambient: {from: 20 °C, to: 20 °C}}
            defaults: {conductor: {insulation: pvc-105, ends: crimped-ring}}
            cells: {bank: {part: lfp-prismatic-100ah, series: 4, links: {section: 20 x 2 mm, length: 70 mm}}}
            switches: {near: {part: panel-rocker}, far: {part: panel-rocker}}
            loads: {lamp: {resistance: 10 Ω}}
            conductors:
              w1: {from: bank.+, to: near.1, size: 14 AWG, length: 300 mm}
              w2: {from: near.2, to: far.1, size: 14 AWG, length: 300 mm}
              w3: {from: far.2, to: lamp.+, size: 14 AWG, length: 300 mm}
              w4: {from: lamp.-, to: bank.-, size: 14 AWG, length: 300 mm}
            """);
        Enumeration enumeration = new(new SwitchedBox(pack, StudiedBox.Data));
        int solved = 0;

        enumeration.Run(PlugCase.For(pack)[0], _ => solved++);

        // Neither closed, the near one, both: the far one behind an open one is as open itself.
        enumeration.States.Length.ShouldBe(4);
        solved.ShouldBe(3);
    }

    private static void CompareAll(Pack pack, string where, Count count)
    {
        SwitchedBox box = new(pack, StudiedBox.Data);
        Enumeration enumeration = new(box);
        foreach (PlugCase plugs in PlugCase.For(pack))
        {
            Dictionary<(ulong Closed, bool HeldIn), Told> told = [];
            byte[] marks = enumeration.Run(plugs, state => told.Add((state.Closed, state.HeldIn), new Told(state, Polished(box))));
            for (int i = 0; i < enumeration.States.Length; i++)
            {
                ulong closed = enumeration.States[i];
                ulong mattering = enumeration.Mattering(closed);
                Told rest = told[(mattering, false)];
                Told? held = told.GetValueOrDefault((mattering, true));
                count.HeldIn += held is null ? 0 : 1;
                string here = $"{plugs.Id}, switches {closed}, {where}";
                bool[] live = new bool[box.Points.Count];
                Fresh atRest = FromNothing(pack, plugs, closed, 0);
                bool shorted = atRest.Shorted;
                Compare(atRest, rest, live, here);
                Fresh pulledIn = FromNothing(pack, plugs, closed, ulong.MaxValue);
                if (pulledIn.Chattering == 0 && rest.Chattering == 0)
                {
                    // Relays that buzz from one start and rest from the other have one end only.
                    shorted |= pulledIn.Shorted;
                    Compare(pulledIn, held ?? rest, live, here);
                }

                for (int p = 0; p < live.Length && rest.Chattering == 0 && !shorted; p++)
                {
                    // What is live while a relay buzzes depends on the moment, and in a short on the place along the wire.
                    (marks[(i * live.Length) + p] != 0).ShouldBe(live[p], $"{box.Points[p].Id}, {here}");
                    (count.Live, count.Dead) = live[p] ? (count.Live + 1, count.Dead) : (count.Live, count.Dead + 1);
                }
            }
        }
    }

    private static void Compare(Fresh fresh, Told told, bool[] live, string here)
    {
        fresh.Chattering.ShouldBe(told.Chattering, here);
        if (told.Chattering != 0)
        {
            return;
        }

        fresh.Settling.Energised().ShouldBe(told.Energised, here);
        Solution open = Polished(fresh.Box);
        for (int node = 0; node < fresh.Box.Wiring.Network.NodeCount; node++)
        {
            // What hangs on nothing at all has no voltage.
            if (!open.IsFloating(node) && !told.Solution.IsFloating(node))
            {
                // A rail that only a junction holds stands to the billionth of an ampere that the junction lets through.
                bool tied = open.Island(node) == open.Island(fresh.Box.Wiring.Network.Reference);
                told.Solution.Voltage(node).ShouldBe(
                    open.Voltage(node), tied ? 1e-9 : 1e-6, $"node {fresh.Box.Wiring.Network.NodeName(node)}, {here}");
            }
        }

        for (int p = 0; p < live.Length; p++)
        {
            live[p] |= IsLive(fresh, open, p);
        }
    }

    /// <summary>A few more steps from where it stands: behind megohms a nano-ampere left over is a millivolt.</summary>
    private static Solution Polished(SwitchedBox box)
    {
        box.Solver.Solve();
        box.Solver.Solve();
        return box.Solver.Solve().Snapshot();
    }

    private static bool IsLive(Fresh fresh, Solution open, int number)
    {
        LivePoint point = fresh.Box.Points[number];
        if (point.Kind == LivePointKind.Outlet)
        {
            int input = Array.IndexOf(fresh.Box.Inputs, fresh.Box.Inverters[point.Inverter]);
            return fresh.Settling.Running[input];
        }

        // The output of an isolated converter has its own zero.
        if (point.Kind == LivePointKind.Rail && open.IsFloating(point.Plus))
        {
            int island = open.Island(point.Plus);
            double lowest = Enumerable.Range(0, fresh.Box.Wiring.Network.NodeCount)
                .Where(n => open.Island(n) == island).Min(open.Voltage);
            return open.Voltage(point.Plus) - lowest > 1;
        }

        if (fresh.Box.Burdens[number] is not { } burden || open.IsFloating(point.Plus) != open.IsFloating(point.Minus))
        {
            return false;
        }

        burden.Closed = true;
        Solution burdened = fresh.Box.Solver.Solve();
        burden.Closed = false;
        return Math.Abs(burdened.Voltage(burden.A, burden.B)) > 1;
    }

    private static Fresh FromNothing(Pack pack, PlugCase plugs, ulong closed, ulong pulledIn)
    {
        SwitchedBox box = new(pack, StudiedBox.Data);
        Settling settling = new(box);
        box.Plug(plugs);
        box.SetSwitches(closed);
        Solution solution = pulledIn == 0 ? settling.FromRest() : settling.FromPulledIn(pulledIn);
        return new Fresh(box, settling, solution);
    }

    private sealed record Fresh(SwitchedBox Box, Settling Settling, Solution Solution)
    {
        /// <summary>More current than any fuse of such a box would let stand.</summary>
        internal bool Shorted { get; } = Math.Abs(Solution.Current(Box.Wiring.Of<WiredBank>().First().CellElements[0])) > 50;

        internal ulong Chattering { get; } = Bits(Settling.Chatters);

        private static ulong Bits(IReadOnlyList<bool> marks) =>
            marks.Select((m, i) => m ? 1UL << i : 0).Aggregate(0UL, (all, bit) => all | bit);
    }

    /// <summary>A state as the enumeration tells it, kept.</summary>
    private sealed class Told(SettledState state, Solution solution)
    {
        internal ulong Energised { get; } = state.Energised;

        internal ulong Chattering { get; } = state.Chattering;

        internal Solution Solution { get; } = solution;
    }

    private sealed class Count
    {
        internal int Live { get; set; }

        internal int Dead { get; set; }

        internal int HeldIn { get; set; }
    }
}
