using WireCheck.Circuit;
using WireCheck.Circuit.Elements;

namespace WireCheck.Bench;

/// <summary>A circuit of the size of a box: 80 nodes, about 120 elements, a handful of them not linear.</summary>
internal sealed class BoxCircuit
{
    private readonly Random _random = new(3);

    internal BoxCircuit()
    {
        int zero = Network.AddNode("zero");
        List<int> plus = [Network.AddNode("plus")];
        List<int> minus = [zero];
        Network.Add(new Source("bank", plus[0], zero, 26.4, 8e-3));
        Grow(plus, 39);
        Grow(minus, 35);
        for (int i = 0; i < 28; i++)
        {
            Network.Add(new Resistance("load", Any(plus), Any(minus), 40 + (400 * _random.NextDouble())));
        }

        for (int i = 0; i < 6; i++)
        {
            Network.Add(new ConstantCurrentSink("meter", Any(plus), Any(minus), 0.02));
        }

        Varied = Network.Add(new ConstantPowerSink("inverter", Any(plus), Any(minus)) { Watts = 150, Efficiency = 0.9, IdleWatts = 5, On = true });
        Network.Add(new ConstantPowerSink("port", Any(plus), Any(minus)) { Watts = 40, Efficiency = 0.9, On = true });
        Network.Add(new ChargerOutput("charger", Any(plus), Any(minus)) { Volts = 29.2, LimitAmps = 8, SlopeOhms = 0.01, Connected = true });
        Network.Add(new Diode("diode", Any(plus), NodeWithLoad(zero), DiodeModel.Fit(0.5, 10, 1.1, 0.2)));
        int output = Network.AddNode("out");
        Network.Add(new ConverterStage("converter", Any(plus), zero, output, zero)
        {
            Volts = 12, LimitAmps = 10, SlopeOhms = 0.01, Efficiency = 0.92, IdleWatts = 0.3, On = true,
        });
        Network.Add(new Resistance("lamp", output, zero, 6));
    }

    internal Network Network { get; } = new();

    /// <summary>The part whose power is changed between solves.</summary>
    internal ConstantPowerSink Varied { get; }

    private int NodeWithLoad(int zero)
    {
        int node = Network.AddNode("behind");
        Network.Add(new Resistance("behind", node, zero, 20));
        return node;
    }

    private void Grow(List<int> pole, int count)
    {
        for (int i = 0; i < count; i++)
        {
            int node = Network.AddNode("n");
            Network.Add(new Resistance("conductor", Any(pole), node, 1e-4 * Math.Pow(100, _random.NextDouble())));
            pole.Add(node);
        }
    }

    private int Any(List<int> nodes) => nodes[_random.Next(nodes.Count)];
}
