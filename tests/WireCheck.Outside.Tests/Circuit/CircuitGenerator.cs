using WireCheck.Circuit;
using WireCheck.Circuit.Elements;
using WireCheck.Circuit.Solving;

namespace WireCheck.Outside.Tests.Circuit;

/// <summary>
/// Makes circuits like those of a box: a bank, a tree of conductors for either pole with some loops, and parts of
/// every kind between them. The loads stay well below what the bank can give, so that each circuit has an answer.
/// </summary>
internal sealed class CircuitGenerator(int seed, bool onlyPiecewise)
{
    private readonly Random _random = new(seed);
    private Network _network = new();
    private List<int> _plus = [];
    private List<int> _minus = [];
    private double _emf;
    private int _made;

    /// <summary>Makes circuits until so many have an answer; a circuit without one is dropped and counted.</summary>
    internal List<GeneratedCircuit> Make(int count, out int dropped)
    {
        List<GeneratedCircuit> circuits = [];
        dropped = 0;
        while (circuits.Count < count)
        {
            Build();
            Solution solution = new OperatingPointSolver(_network).Solve().Snapshot();
            if (solution.Outcome == SolveOutcome.Solved)
            {
                circuits.Add(new GeneratedCircuit(_made, _network, solution));
            }
            else
            {
                dropped++;
            }

            _made++;
        }

        return circuits;
    }

    private void Build()
    {
        _network = new Network();
        _emf = Pick(12.8, 25.6, 51.2) * Between(0.9, 1.1);
        _minus = [_network.AddNode("zero")];
        _plus = [_network.AddNode("plus")];
        _network.Add(new Source("bank", _plus[0], 0, _emf, Spread(5e-3, 5e-2)));
        Grow(_plus, _random.Next(1, 10));
        Grow(_minus, _random.Next(1, 6));
        Action<string>[] kinds = onlyPiecewise
            ? [Lamp, Lamp, Switched, Steady, SecondSource, BehindDiode, Charger, DarkPanel]
            : [Lamp, Switched, Steady, Powered, Powered, SecondSource, BehindDiode, Charger, DarkPanel, LitPanel, Converter];
        int parts = _random.Next(3, 14);
        for (int i = 0; i < parts; i++)
        {
            kinds[_random.Next(kinds.Length)]($"part{i}");
        }
    }

    private void Grow(List<int> pole, int count)
    {
        for (int i = 0; i < count; i++)
        {
            int from = Any(pole);
            int node = Node();
            Add(new Resistance("conductor", from, node, Spread(3e-4, 3e-2)));
            pole.Add(node);
            int other = Any(pole);
            if (_random.Next(4) == 0 && other != node)
            {
                Add(new Resistance("loop", other, node, Spread(3e-4, 3e-2)));
            }
        }
    }

    private void Lamp(string name) => Add(new Resistance(name, Any(_plus), Any(_minus), Spread(5, 1e5)));

    private void Switched(string name)
    {
        int after = Node();
        Add(new Contact(name, Any(_plus), after, Spread(3e-4, 1e-2)) { Closed = _random.Next(2) == 0 });
        Add(new Resistance(name, after, Any(_minus), Spread(5, 1e3)));
    }

    private void Steady(string name) => Add(new ConstantCurrentSink(name, Any(_plus), Any(_minus), Spread(1e-3, 3)));

    private void Powered(string name) => Add(new ConstantPowerSink(name, Any(_plus), Any(_minus))
    {
        Watts = Spread(0.5, 30), IdleWatts = Between(0, 1), Efficiency = Between(0.7, 1), On = _random.Next(5) > 0,
        OffLeakageAmps = Spread(1e-5, 1e-3),
    });

    private void SecondSource(string name)
    {
        int node = Node();
        Add(new Source(name, node, Any(_minus), _emf * Between(0.97, 1.03), Spread(2e-2, 0.5)) { Connected = _random.Next(4) > 0 });
        Add(new Resistance(name, node, Any(_plus), Spread(1e-3, 0.1)));
    }

    private void BehindDiode(string name)
    {
        int node = Node();
        DiodeModel model = DiodeModel.Fit(Between(0.3, 0.8), Spread(1, 30), Between(1, 2), Between(0.05, 0.4));
        bool forward = _random.Next(3) > 0;
        int plus = Any(_plus);
        Add(new Diode(name, forward ? plus : node, forward ? node : plus, model));
        Add(new Resistance(name, node, Any(_minus), Spread(3, 1e4)));
    }

    private void Charger(string name) => Add(new ChargerOutput(name, Any(_plus), Any(_minus))
    {
        Volts = _emf * Between(0.95, 1.15), LimitAmps = Spread(1, 20), SlopeOhms = Spread(5e-3, 5e-2),
        PowerLimitWatts = onlyPiecewise || _random.Next(2) == 0 ? double.PositiveInfinity : Spread(20, 300),
        Connected = _random.Next(5) > 0,
    });

    private void DarkPanel(string name) => Add(NewPanel(name, lit: false));

    private void LitPanel(string name) => Add(NewPanel(name, lit: true));

    private PanelCurve NewPanel(string name, bool lit)
    {
        double open = _emf * Between(1.2, 1.8);
        double amps = Spread(0.5, 10);
        PanelPoints points = new(open, open * Between(0.78, 0.84), amps, amps * Between(0.9, 0.95));
        return new PanelCurve(name, Any(_plus), Any(_minus), points)
        {
            Connected = _random.Next(5) > 0, Lit = lit, DarkLeakageAmps = Spread(1e-5, 1e-3),
            DarkDiodes = onlyPiecewise ? null : new DiodeModel(Spread(1e-10, 1e-7), 36 * 1.2 * 0.0259 * _emf / 12.8, 0.05),
            DarkShuntOhms = Spread(50, 5000),
        };
    }

    private void Converter(string name)
    {
        int output = Node();
        int back = _random.Next(2) == 0 ? Node() : Any(_minus);
        Add(new ConverterStage(name, Any(_plus), Any(_minus), output, back)
        {
            Volts = Pick(5, 12, 19), LimitAmps = Spread(1, 5), SlopeOhms = Spread(2e-3, 5e-2),
            PowerLimitWatts = _random.Next(2) == 0 ? double.PositiveInfinity : Spread(10, 60),
            Efficiency = Between(0.75, 0.97), IdleWatts = Between(0, 1), OffLeakageAmps = Spread(1e-5, 1e-3),
            On = _random.Next(6) > 0,
        });
        Add(new Resistance(name, output, back, Spread(2, 500)));
    }

    private void Add(Element element) => _network.Add(element);

    private int Node() => _network.AddNode("n");

    private int Any(List<int> nodes) => nodes[_random.Next(nodes.Count)];

    private double Pick(params double[] values) => values[_random.Next(values.Length)];

    private double Between(double low, double high) => low + ((high - low) * _random.NextDouble());

    /// <summary>Evenly over the orders of magnitude.</summary>
    private double Spread(double low, double high) => low * Math.Pow(high / low, _random.NextDouble());
}
