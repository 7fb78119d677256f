using WireCheck.Circuit;
using WireCheck.Circuit.Elements;
using WireCheck.Circuit.Solving;

namespace WireCheck.Tests.Circuit.Solving;

/// <summary>A short solved on the factor of the network as it stood, against the network solved anew with a short in it.</summary>
public class ShortedNetworkTests
{
    [Fact]
    public void A_bolted_short_behind_two_resistances_draws_voltage_over_their_sum()
    {
        Network network = new();
        int zero = network.AddNode("zero");
        int plus = network.AddNode("plus");
        int far = network.AddNode("far");
        network.Add(new Source("bank", plus, zero, 12, 0.004));
        network.Add(new Resistance("wire", plus, far, 0.002));
        network.Add(new Resistance("lamp", far, zero, 50));
        ShortedNetwork shorted = new(network);
        shorted.Prepare().ShouldBeTrue();

        shorted.Short(far, zero, 0).ShouldBeTrue();

        shorted.ShortAmps.ShouldBe(2000, 1e-9);
        shorted.Volts(plus, zero).ShouldBe(4, 1e-9);
        shorted.Amps[1].ShouldBe(2000, 1e-9);
    }

    [Fact]
    public void A_supply_with_a_limit_feeds_its_limit_and_the_bank_the_rest()
    {
        // 14 V behind 10 mΩ and a charger of 14.4 V, 8 A: shorted, the bank gives 1400 A and the charger its 8 A.
        Network network = new();
        int zero = network.AddNode("zero");
        int plus = network.AddNode("plus");
        network.Add(new Source("bank", plus, zero, 14, 0.01));
        network.Add(new ChargerOutput("charger", plus, zero) { Volts = 14.4, LimitAmps = 8, SlopeOhms = 0.01, Connected = true });
        ShortedNetwork shorted = new(network);
        shorted.Prepare().ShouldBeTrue();

        shorted.Short(plus, zero, 0).ShouldBeTrue();

        shorted.ShortAmps.ShouldBe(1408, 1e-9);
    }

    [Fact]
    public void An_opened_contact_ends_the_current_and_closes_again_with_the_next_short()
    {
        Network network = new();
        int zero = network.AddNode("zero");
        int plus = network.AddNode("plus");
        int far = network.AddNode("far");
        network.Add(new Source("bank", plus, zero, 12, 0.01));
        Contact fuse = network.Add(new Contact("fuse", plus, far, 0.005) { Closed = true });
        ShortedNetwork shorted = new(network);
        shorted.Prepare().ShouldBeTrue();
        shorted.Short(far, zero, 0).ShouldBeTrue();
        shorted.ShortAmps.ShouldBe(800, 1e-9);

        shorted.Open(fuse).ShouldBeTrue();
        Math.Abs(shorted.ShortAmps).ShouldBeLessThan(1e-4);

        shorted.End();
        fuse.Ohms.ShouldBe(0.005);
        shorted.Short(far, zero, 0).ShouldBeTrue();
        shorted.ShortAmps.ShouldBe(800, 1e-9);
    }

    [Fact]
    public void What_no_source_reaches_draws_nothing_when_it_is_shorted()
    {
        Network network = new();
        int zero = network.AddNode("zero");
        int plus = network.AddNode("plus");
        int loose = network.AddNode("loose");
        int end = network.AddNode("end");
        network.Add(new Source("bank", plus, zero, 12, 0.01));
        network.Add(new Resistance("loose wire", loose, end, 0.01));
        ShortedNetwork shorted = new(network);
        shorted.Prepare().ShouldBeTrue();

        shorted.Short(end, zero, 0).ShouldBeTrue();

        shorted.ShortAmps.ShouldBe(0, 1e-9);
    }

    [Theory]
    [InlineData(1)]
    [InlineData(2)]
    [InlineData(3)]
    [InlineData(4)]
    public void In_generated_boxes_it_is_what_a_full_solve_with_the_short_in_place_gives(int seed)
    {
        Random random = new(seed);
        for (int box = 0; box < 25; box++)
        {
            Network network = Box(random, out Contact placed, out Contact[] fuses);
            ShortedNetwork shorted = new(network);
            OperatingPointSolver whole = new(network);
            shorted.Prepare().ShouldBeTrue();
            Contact opened = fuses[random.Next(fuses.Length)];

            shorted.Short(placed.A, placed.B, placed.Ohms).ShouldBeTrue();
            placed.Closed = true;
            Same(shorted, whole.Solve(), network, placed, $"seed {seed}, box {box}, nothing opened");
            placed.Closed = false;

            shorted.Open(opened).ShouldBeTrue();
            placed.Closed = true;
            Same(shorted, whole.Solve(), network, placed, $"seed {seed}, box {box}, {opened.Name} opened");
            placed.Closed = false;
            shorted.End();
        }
    }

    private static void Same(ShortedNetwork shorted, Solution whole, Network network, Contact placed, string where)
    {
        whole.Outcome.ShouldBe(SolveOutcome.Solved, where);
        double scale = Math.Max(1, Math.Abs(whole.Current(placed)));
        Math.Abs(shorted.ShortAmps - whole.Current(placed)).ShouldBeLessThan(1e-9 * scale, where);
        foreach (Element element in network.Elements)
        {
            if (element != placed)
            {
                Math.Abs(shorted.Amps[element.Index] - whole.Current(element)).ShouldBeLessThan(1e-9 * scale, $"{where}, {element.Name}");
            }
        }
    }

    /// <summary>A bank, fused branches with loads, diodes and supplies, and an open contact where the short will be.</summary>
    private static Network Box(Random random, out Contact placed, out Contact[] fuses)
    {
        Network network = new();
        int zero = network.AddNode("zero");
        List<int> plus = [network.AddNode("plus")];
        List<int> minus = [zero];
        network.Add(new Source("bank", plus[0], zero, 26 + random.NextDouble(), 0.004 + (0.02 * random.NextDouble())));
        List<Contact> contacts = [];
        for (int i = 0; i < 12; i++)
        {
            int fused = network.AddNode($"fused{i}");
            int far = network.AddNode($"far{i}");
            contacts.Add(network.Add(new Contact($"fuse{i}", plus[random.Next(plus.Count)], fused, 1e-3 + (0.01 * random.NextDouble())) { Closed = true }));
            network.Add(new Resistance($"wire{i}", fused, far, 5e-4 + (0.02 * random.NextDouble())));
            plus.Add(far);
            int back = network.AddNode($"back{i}");
            network.Add(new Resistance($"return{i}", back, minus[random.Next(minus.Count)], 5e-4 + (0.02 * random.NextDouble())));
            minus.Add(back);
        }

        for (int i = 0; i < 6; i++)
        {
            int a = plus[random.Next(plus.Count)];
            int b = minus[random.Next(minus.Count)];
            network.Add(new Resistance($"lamp{i}", a, b, 20 + (100 * random.NextDouble())));
            if (i % 2 == 0)
            {
                int behind = network.AddNode($"behind{i}");
                network.Add(new Diode($"diode{i}", behind, a, DiodeModel.Fit(0.5, 10, 1.1, 0.3)));
                network.Add(new ChargerOutput($"charger{i}", behind, b)
                {
                    Volts = 25 + (5 * random.NextDouble()), LimitAmps = 2 + (10 * random.NextDouble()), SlopeOhms = 0.02, Connected = true,
                });
            }
        }

        placed = network.Add(new Contact("short", plus[random.Next(plus.Count)], minus[random.Next(minus.Count)], 1e-4));
        fuses = [.. contacts];
        return network;
    }
}
