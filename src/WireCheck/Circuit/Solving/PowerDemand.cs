using WireCheck.Circuit.Elements;

namespace WireCheck.Circuit.Solving;

/// <summary>The parts of a network that ask for power whatever their voltage, and what share of it they are given.</summary>
internal sealed class PowerDemand
{
    private readonly ConstantPowerSink[] _sinks;
    private readonly ConverterStage[] _stages;
    private readonly Element[] _parts;

    internal PowerDemand(ConstantPowerSink[] sinks, ConverterStage[] stages)
    {
        _sinks = sinks;
        _stages = stages;
        _parts = [.. sinks, .. stages];
    }

    /// <summary>True when nothing of the network is of that kind.</summary>
    internal bool IsEmpty => _parts.Length == 0;

    /// <summary>Those that ask for something at the moment.</summary>
    internal IEnumerable<Element> Asking => _parts.Where(Asks);

    /// <summary>Gives every part a share of its power, 0 to 1, and none to one of them.</summary>
    internal void SetShare(double share, Element? without = null)
    {
        foreach (ConstantPowerSink sink in _sinks)
        {
            sink.Share = sink == without ? 0 : share;
        }

        foreach (ConverterStage stage in _stages)
        {
            stage.Share = stage == without ? 0 : share;
        }
    }

    /// <summary>Voltage at the input of each part, V.</summary>
    internal double[] InputVolts(Solution solution) => [.. _parts.Select(p => solution.Voltage(p.A, p.B))];

    /// <summary>The parts whose voltage has fallen to the smallest share of its unloaded value.</summary>
    internal List<Element> Weakest(double[] unloaded, double[] loaded)
    {
        double[] share = new double[_parts.Length];
        for (int i = 0; i < _parts.Length; i++)
        {
            share[i] = Asks(_parts[i]) ? loaded[i] / Math.Max(unloaded[i], 1e-3) : double.PositiveInfinity;
        }

        double smallest = share.Min();
        return [.. _parts.Where((_, i) => share[i] <= smallest + 1e-3)];
    }

    /// <summary>Power a part asks of its input, W.</summary>
    internal static double Watts(Element part) => part switch
    {
        ConstantPowerSink sink => sink.InputWatts,
        ConverterStage stage => stage.InputWatts,
        _ => 0,
    };

    private static bool Asks(Element part) => part is ConstantPowerSink { On: true, InputWatts: > 0 } or ConverterStage { On: true };
}
