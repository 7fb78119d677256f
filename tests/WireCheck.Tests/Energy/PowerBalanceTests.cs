using WireCheck.Circuit.Solving;
using WireCheck.Circuit.Wiring;
using WireCheck.Description.Kinds;
using WireCheck.Energy;
using WireCheck.States;

namespace WireCheck.Tests.Energy;

/// <summary>Power in equals heat plus power out, for every example in every mode at every corner.</summary>
public sealed class PowerBalanceTests
{
    /// <summary>Part of the power that may go astray in rounding.</summary>
    private const double Tolerance = 1e-9;

    /// <summary>A node that counts as solved may keep a nanoampere; at rest the bank gives a milliwatt, of which rounding is more than a part in 1e9, W.</summary>
    private const double LeastWatts = 1e-10;

    public static TheoryData<string> Names => ["market-stall-12v", "pump-house-24v", "bicycle-workshop-48v", "first-draft-12v"];

    [Theory]
    [MemberData(nameof(Names))]
    public void What_is_given_is_used_or_turned_to_heat_in_every_mode_and_corner(string name)
    {
        SolvedBox box = PackNumbers.Solve(name, File.ReadAllText(Path.Combine(Golden.Root, "examples", name + ".yaml"))).Box.ShouldNotBeNull();
        StateSolver solver = new(box.Wiring);
        int solved = 0;
        foreach (Corner corner in box.Corners)
        {
            foreach (BoxMode mode in box.Modes)
            {
                OperatingPoint point = solver.Solve(mode, corner);
                if (point.Solution.Outcome == SolveOutcome.Solved)
                {
                    Balances(box.Wiring, point);
                    solved++;
                }
            }
        }

        solved.ShouldBe(box.Points.Count(p => p.Solution.Outcome == SolveOutcome.Solved));
    }

    private static void Balances(BoxWiring wiring, OperatingPoint point)
    {
        PowerSplit split = PowerSplit.Of(wiring, point.Solution);
        double all = split.Given.Sum(Math.Abs);
        (split.Used.Sum() + split.Lost.Sum()).ShouldBe(split.Given.Sum(), (Tolerance * all) + LeastWatts, point.ToString());

        // What the heat study warms the box with is the same loss, reckoned by another way: of each part that lies inside.
        double[] heat = HeatOfParts.Of(wiring, point.Solution);
        for (int i = 0; i < heat.Length; i++)
        {
            if (LiesInside(wiring.Parts[i]))
            {
                heat[i].ShouldBe(split.Lost[i], (Tolerance * all) + LeastWatts, $"{wiring.Parts[i].Part.Id} {point}");
            }
        }
    }

    /// <summary>Parts of which all that they lose is heat in the box; a charger's efficiency adds what it takes from the wall.</summary>
    private static bool LiesInside(WiredPart part) => part switch
    {
        WiredConductor wire => wire.Conductor.Place?.Value != PartPlace.Outside,
        WiredInverter inverter => inverter.Inverter is { Place.Value: PartPlace.Inside, Heat: null },
        WiredConverter converter => converter.Converter.Place?.Value != PartPlace.Outside && converter.Converter.Heat is null,
        WiredLoad or WiredVehicle or WiredPanel or WiredCharger => false,
        _ => true,
    };
}
