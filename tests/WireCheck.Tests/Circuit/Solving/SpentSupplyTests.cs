using WireCheck.Circuit;
using WireCheck.Circuit.Elements;
using WireCheck.Circuit.Solving;

namespace WireCheck.Tests.Circuit.Solving;

/// <summary>Who is blamed when not all can be served. Worked by hand: a supply of 5 V and 2 A gives 10 W and no more.</summary>
public class SpentSupplyTests
{
    private const double Emf = 13.2;

    [Fact]
    public void A_load_too_large_for_its_supply_is_blamed_and_not_one_on_a_longer_wire()
    {
        (OperatingPointSolver solver, ConstantPowerSink telephone, ConstantPowerSink lamp) = Box(telephoneWatts: 15, lampWatts: 40);
        Solution solution = solver.Solve();
        solution.Outcome.ShouldBe(SolveOutcome.Collapsed);
        solution.Collapsed.ShouldBe([telephone]);
        lamp.On.ShouldBeTrue();
    }

    [Fact]
    public void A_load_too_large_for_its_wire_is_blamed_and_not_one_on_a_supply()
    {
        // The most that 13.2 V brings through 1 Ω is 13.2² / 4 = 43.6 W.
        (OperatingPointSolver solver, _, ConstantPowerSink lamp) = Box(telephoneWatts: 9, lampWatts: 60);
        Solution solution = solver.Solve();
        solution.Outcome.ShouldBe(SolveOutcome.Collapsed);
        solution.Collapsed.ShouldBe([lamp]);
    }

    [Fact]
    public void One_after_the_other_is_blamed_where_both_ask_too_much()
    {
        (OperatingPointSolver solver, ConstantPowerSink telephone, ConstantPowerSink lamp) = Box(telephoneWatts: 15, lampWatts: 60);
        List<Element> blamed = [];
        Solution solution = solver.Solve();
        while (solution.Outcome == SolveOutcome.Collapsed)
        {
            foreach (ConstantPowerSink sink in solution.Collapsed.Cast<ConstantPowerSink>())
            {
                blamed.Add(sink);
                sink.On = false;
            }

            solution = solver.Solve();
        }

        blamed.ShouldBe([telephone, lamp], ignoreOrder: true);
    }

    [Fact]
    public void Of_two_on_one_spent_supply_the_larger_is_blamed()
    {
        (Network network, int plus, int zero, int output) = Supply();
        ConstantPowerSink large = network.Add(new ConstantPowerSink("large", output, zero) { Watts = 8, On = true });
        network.Add(new ConstantPowerSink("small", output, zero) { Watts = 4, On = true });
        network.Add(new ConstantPowerSink("lamp", plus, zero) { Watts = 10, On = true });
        new OperatingPointSolver(network).Solve().Collapsed.ShouldBe([large]);
    }

    [Fact]
    public void What_the_supply_can_give_is_served()
    {
        (OperatingPointSolver solver, ConstantPowerSink telephone, _) = Box(telephoneWatts: 9.9, lampWatts: 40);
        Solution solution = solver.Solve();
        solution.Outcome.ShouldBe(SolveOutcome.Solved);
        (solution.Voltage(telephone.A, telephone.B) * solution.Current(telephone)).ShouldBe(9.9, 1e-9);
    }

    /// <summary>A telephone on the supply and a lamp behind 1 Ω.</summary>
    private static (OperatingPointSolver Solver, ConstantPowerSink Telephone, ConstantPowerSink Lamp) Box(double telephoneWatts, double lampWatts)
    {
        (Network network, int plus, int zero, int output) = Supply();
        int far = network.AddNode("far");
        network.Add(new Resistance("wire", plus, far, 1));
        ConstantPowerSink telephone = network.Add(new ConstantPowerSink("telephone", output, zero) { Watts = telephoneWatts, On = true });
        ConstantPowerSink lamp = network.Add(new ConstantPowerSink("lamp", far, zero) { Watts = lampWatts, On = true });
        return (new OperatingPointSolver(network), telephone, lamp);
    }

    private static (Network Network, int Plus, int Zero, int Output) Supply()
    {
        Network network = new();
        (int zero, int plus, int output) = (network.AddNode("zero"), network.AddNode("plus"), network.AddNode("output"));
        network.Add(new Source("cell", plus, zero, Emf, 1e-3));
        network.Add(new ConverterStage("supply", plus, zero, output, zero) { Volts = 5, LimitAmps = 2, Efficiency = 0.9, On = true });
        return (network, plus, zero, output);
    }
}
