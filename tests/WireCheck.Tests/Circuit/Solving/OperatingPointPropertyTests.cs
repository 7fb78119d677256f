using WireCheck.Circuit;
using WireCheck.Circuit.Elements;
using WireCheck.Circuit.Solving;

namespace WireCheck.Tests.Circuit.Solving;

/// <summary>What holds for every network, on networks from a seed.</summary>
public class OperatingPointPropertyTests
{
    public static TheoryData<int> Seeds => [.. Enumerable.Range(1, 20)];

    [Theory]
    [MemberData(nameof(Seeds))]
    public void Voltages_of_two_sources_add_up_in_a_linear_network(int seed)
    {
        (double first, double second) = (11.3, 4.7);
        double[] both = Volts(seed, first, second);
        double[] one = Volts(seed, first, 0);
        double[] other = Volts(seed, 0, second);
        for (int node = 0; node < both.Length; node++)
        {
            both[node].ShouldBe(one[node] + other[node], 1e-9);
        }
    }

    [Theory]
    [MemberData(nameof(Seeds))]
    public void Twice_the_voltage_gives_twice_everywhere_in_a_linear_network(int seed)
    {
        double[] once = Volts(seed, 3, 7);
        double[] twice = Volts(seed, 6, 14);
        for (int node = 0; node < once.Length; node++)
        {
            twice[node].ShouldBe(2 * once[node], 1e-9);
        }
    }

    [Theory]
    [MemberData(nameof(Seeds))]
    public void Power_given_equals_power_taken(int seed)
    {
        (Network network, _, _) = Linear(seed, 25, 12.5);
        network.Add(new ConstantPowerSink("load", 1, 0) { Watts = 2, On = true });
        network.Add(new Diode("diode", 2, 0, DiodeModel.Fit(14, 0.1, 30, 0.1)));
        Solution solution = new OperatingPointSolver(network).Solve();
        solution.Outcome.ShouldBe(SolveOutcome.Solved);
        double[] watts = [.. network.Elements.Select(solution.Power)];
        watts.Sum().ShouldBe(0, 1e-9 * watts.Sum(Math.Abs));
    }

    [Theory]
    [MemberData(nameof(Seeds))]
    public void More_resistance_before_a_load_lets_less_current_through(int seed)
    {
        (Network network, _, _) = Linear(seed, 25, 0);
        int end = network.AddNode("end");
        Resistance lead = network.Add(new Resistance("lead", 1, end, 1e-3));
        Resistance load = network.Add(new Resistance("load", end, 0, 2));
        OperatingPointSolver solver = new(network);
        double before = double.PositiveInfinity;
        for (double ohms = 1e-3; ohms < 10; ohms *= 2)
        {
            lead.Ohms = ohms;
            double amps = Math.Abs(solver.Solve().Current(load));
            amps.ShouldBeLessThan(before);
            before = amps;
        }
    }

    [Theory]
    [MemberData(nameof(Seeds))]
    public void A_solve_from_other_voltages_ends_at_the_same_point(int seed)
    {
        (Network network, _, _) = Linear(seed, 25, 12.5);
        ConstantPowerSink sink = network.Add(new ConstantPowerSink("load", 1, 0) { Watts = 3, On = true });
        OperatingPointSolver solver = new(network);
        double volts = solver.Solve().Voltage(sink.A, sink.B);
        Random random = new(seed);
        double[] start = [.. Enumerable.Range(0, network.NodeCount).Select(_ => 40 * random.NextDouble())];
        solver.Solve(start).Voltage(sink.A, sink.B).ShouldBe(volts, 1e-8);
    }

    [Fact]
    public void A_start_for_another_number_of_nodes_is_refused()
    {
        (Network network, _, _) = Linear(1, 25, 12.5);
        Should.Throw<ArgumentException>(() => new OperatingPointSolver(network).Solve([1.0, 2.0]));
    }

    [Fact]
    public void A_warm_solve_allocates_nothing()
    {
        (Network network, Source source, _) = Linear(4, 25, 12.5);
        network.Add(new ConstantPowerSink("load", 1, 0) { Watts = 3, On = true });
        OperatingPointSolver solver = new(network);
        for (int i = 0; i < 50; i++)
        {
            source.Emf += 0.001;
            solver.Solve();
        }

        long before = GC.GetAllocatedBytesForCurrentThread();
        source.Emf += 0.001;
        solver.Solve();
        (GC.GetAllocatedBytesForCurrentThread() - before).ShouldBe(0);
    }

    [Fact]
    public void A_node_cut_off_goes_back_to_0_volts_and_is_said_to_float()
    {
        Network network = new();
        (int zero, int top, int far) = (network.AddNode("zero"), network.AddNode("top"), network.AddNode("far"));
        network.Add(new Source("bank", top, zero, 13, 0.01));
        Contact contact = network.Add(new Contact("switch", top, far, 1e-3));
        contact.Closed = true;
        OperatingPointSolver solver = new(network);
        solver.Solve().Voltage(far).ShouldBe(13, 1e-9);
        solver.Solve().IsFloating(far).ShouldBeFalse();
        contact.Closed = false;
        Solution solution = solver.Solve();
        solution.Voltage(far).ShouldBe(0);
        solution.IsFloating(far).ShouldBeTrue();
        solution.Island(far).ShouldNotBe(solution.Island(top));
    }

    private static double[] Volts(int seed, double first, double second)
    {
        (Network network, _, _) = Linear(seed, first, second);
        Solution solution = new OperatingPointSolver(network).Solve();
        solution.Outcome.ShouldBe(SolveOutcome.Solved);
        return [.. Enumerable.Range(0, network.NodeCount).Select(node => solution.Voltage(node))];
    }

    /// <summary>A random net of 25 nodes between two sources.</summary>
    private static (Network Network, Source First, Source Second) Linear(int seed, double first, double second)
    {
        Random random = new(seed);
        Network network = new();
        int zero = network.AddNode("zero");
        for (int node = 1; node < 25; node++)
        {
            network.AddNode("n");
            network.Add(new Resistance("tree", random.Next(node), node, 0.01 * Math.Pow(1e4, random.NextDouble())));
            int other = random.Next(node);
            network.Add(new Resistance("loop", other, node, 0.1 * Math.Pow(1e3, random.NextDouble())));
        }

        return (network, network.Add(new Source("first", 1, zero, first, 0.02)), network.Add(new Source("second", 24, zero, second, 0.3)));
    }
}
