using WireCheck.Circuit;
using WireCheck.Circuit.Elements;
using WireCheck.Circuit.Solving;

namespace WireCheck.Tests.Circuit.Solving;

/// <summary>Small circuits worked by hand.</summary>
public class OperatingPointTests
{
    private const double Emf = 13.2;
    private const double Ohms = 0.05;

    [Fact]
    public void A_divider_halves_the_voltage()
    {
        Network network = new();
        (int zero, int top, int middle) = (network.AddNode("zero"), network.AddNode("top"), network.AddNode("middle"));
        Source source = network.Add(new Source("cell", top, zero, 12, 1e-6));
        network.Add(new Resistance("upper", top, middle, 1000));
        Resistance lower = network.Add(new Resistance("lower", middle, zero, 1000));
        Solution solution = new OperatingPointSolver(network).Solve();
        solution.Outcome.ShouldBe(SolveOutcome.Solved);
        solution.Voltage(middle).ShouldBe(6, 1e-8);
        solution.Current(lower).ShouldBe(6e-3, 1e-11);
        solution.Current(source).ShouldBe(-6e-3, 1e-11);
    }

    [Fact]
    public void A_balanced_bridge_carries_nothing_across()
    {
        Network network = new();
        (int zero, int top, int left, int right) =
            (network.AddNode("zero"), network.AddNode("top"), network.AddNode("left"), network.AddNode("right"));
        network.Add(new Source("cell", top, zero, 10, 0.1));
        network.Add(new Resistance("r1", top, left, 100));
        network.Add(new Resistance("r2", left, zero, 200));
        network.Add(new Resistance("r3", top, right, 50));
        network.Add(new Resistance("r4", right, zero, 100));
        Resistance across = network.Add(new Resistance("across", left, right, 10));
        new OperatingPointSolver(network).Solve().Current(across).ShouldBe(0, 1e-12);
    }

    [Theory]
    [InlineData(10)]
    [InlineData(400)]
    [InlineData(870)]
    public void Constant_power_settles_on_the_upper_root_of_its_quadratic(double watts)
    {
        // V = (E + sqrt(E² - 4 P R)) / 2, by hand from (E - V) / R = P / V.
        (Solution solution, ConstantPowerSink sink) = Loaded(watts);
        solution.Outcome.ShouldBe(SolveOutcome.Solved);
        double expected = (Emf + Math.Sqrt((Emf * Emf) - (4 * watts * Ohms))) / 2;
        solution.Voltage(sink.A, sink.B).ShouldBe(expected, 1e-9);
    }

    [Fact]
    public void More_than_a_quarter_of_E_squared_over_R_collapses()
    {
        // The most a source gives is E² / 4R = 871.2 W.
        (Solution solution, ConstantPowerSink sink) = Loaded(872);
        solution.Outcome.ShouldBe(SolveOutcome.Collapsed);
        solution.Collapsed.ShouldBe([sink]);
    }

    [Fact]
    public void A_micro_ohm_bar_at_58_volts_leaves_less_than_a_nano_ampere()
    {
        Network network = new();
        (int zero, int top, int bar, int end) =
            (network.AddNode("zero"), network.AddNode("top"), network.AddNode("bar"), network.AddNode("end"));
        network.Add(new Source("bank", top, zero, 58.4, 4.4e-3));
        network.Add(new Resistance("b1", top, bar, 1e-6));
        network.Add(new Resistance("b2", bar, end, 1e-6));
        Resistance load = network.Add(new Resistance("load", end, zero, 0.5));
        Solution solution = new OperatingPointSolver(network).Solve();
        solution.WorstResidualAmps.ShouldBeLessThan(1e-9);
        solution.Current(load).ShouldBe(58.4 / (0.5 + 4.4e-3 + 2e-6), 1e-9);
    }

    [Fact]
    public void A_converter_takes_what_it_gives_over_its_efficiency_plus_its_idle()
    {
        Network network = new();
        int[] n = [.. Enumerable.Range(0, 4).Select(i => network.AddNode($"n{i}"))];
        network.Add(new Source("bank", n[1], n[0], 26, 0.02));
        ConverterStage stage = network.Add(new ConverterStage("dc", n[1], n[0], n[2], n[3])
        {
            Volts = 12, LimitAmps = 10, SlopeOhms = 0.01, Efficiency = 0.9, IdleWatts = 0.5, On = true,
        });
        Resistance load = network.Add(new Resistance("load", n[2], n[3], 3));
        Solution solution = new OperatingPointSolver(network).Solve();
        solution.Outcome.ShouldBe(SolveOutcome.Solved);
        double amps = 12 / 3.01;
        solution.Current(load).ShouldBe(amps, 1e-9);
        solution.Power(stage).ShouldBe((amps * amps * 3 / 0.9) + 0.5, 1e-8);
        solution.Island(n[2]).ShouldNotBe(solution.Island(n[1]));
    }

    [Theory]
    [InlineData(12.0, 10.0)]
    [InlineData(14.5, 1.6667)]
    [InlineData(15.0, 0)]
    public void A_charger_is_limited_in_current_then_in_voltage_and_blocks_above(double battery, double amps)
    {
        // 14.6 V behind 10 mΩ slope into a battery behind 50 mΩ: (14.6 - 14.5) / 0.06 = 1.667 A.
        Network network = new();
        (int zero, int top) = (network.AddNode("zero"), network.AddNode("top"));
        network.Add(new Source("battery", top, zero, battery, 0.05));
        ChargerOutput charger = network.Add(new ChargerOutput("charger", top, zero)
        {
            Volts = 14.6, LimitAmps = 10, SlopeOhms = 0.01, Connected = true,
        });
        Solution solution = new OperatingPointSolver(network).Solve();
        (-solution.Current(charger)).ShouldBe(amps, 1e-4);
    }

    [Fact]
    public void A_charger_without_a_battery_rests_at_its_voltage()
    {
        Network network = new();
        (int zero, int top) = (network.AddNode("zero"), network.AddNode("top"));
        network.Add(new ChargerOutput("charger", top, zero) { Volts = 14.6, LimitAmps = 10, SlopeOhms = 0.01, Connected = true });
        new OperatingPointSolver(network).Solve().Voltage(top, zero).ShouldBe(14.6, 0.01);
    }

    [Fact]
    public void Power_given_equals_power_taken()
    {
        (Solution solution, _) = Loaded(400);
        solution.WorstResidualAmps.ShouldBeLessThan(1e-9);
    }

    [Fact]
    public void A_node_behind_an_open_contact_does_not_stop_the_solve()
    {
        Network network = new();
        (int zero, int top, int dead, int dead2) =
            (network.AddNode("zero"), network.AddNode("top"), network.AddNode("dead"), network.AddNode("dead2"));
        network.Add(new Source("bank", top, zero, 13, 0.01));
        Contact contact = network.Add(new Contact("switch", top, dead, 1e-3));
        network.Add(new Resistance("wire", dead, dead2, 1e-4));
        network.Add(new ConstantCurrentSink("meter", dead2, zero, 0.01));
        OperatingPointSolver solver = new(network);
        solver.Solve().Voltage(dead2).ShouldBe(0, 1e-6);
        contact.Closed = true;
        solver.Solve().Voltage(dead2).ShouldBe(13 - (0.01 * 0.0111), 1e-9);
    }

    private static (Solution Solution, ConstantPowerSink Sink) Loaded(double watts)
    {
        Network network = new();
        (int zero, int top) = (network.AddNode("zero"), network.AddNode("top"));
        network.Add(new Source("bank", top, zero, Emf, Ohms));
        ConstantPowerSink sink = network.Add(new ConstantPowerSink("load", top, zero) { Watts = watts, On = true });
        return (new OperatingPointSolver(network).Solve().Snapshot(), sink);
    }
}
