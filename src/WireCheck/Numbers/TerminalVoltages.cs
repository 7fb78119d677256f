using WireCheck.Circuit.Solving;
using WireCheck.Circuit.Wiring;
using WireCheck.States;

namespace WireCheck.Numbers;

/// <summary>The voltage of every terminal in one state, as a meter reads it.</summary>
internal sealed class TerminalVoltages
{
    private readonly BoxWiring _wiring;
    private readonly OperatingPoint _point;
    private readonly FirmNodes _firm;
    private readonly double _live;
    private readonly (string Name, int Node)[] _terminals;
    private readonly Dictionary<int, (string Name, int Node)> _zeros = [];
    private readonly HashSet<int> _joined = [];

    internal TerminalVoltages(BoxWiring wiring, OperatingPoint point)
    {
        _wiring = wiring;
        _point = point;
        _firm = new FirmNodes(wiring, point);
        _live = wiring.Data.Assumed("live_above");
        _terminals = [.. wiring.Nodes.Keys.Select(k => (
            k.Terminal.Length == 0 ? k.Part : $"{k.Part}.{k.Terminal}", wiring.NodeUnderProbe(k.Part, k.Terminal)))];
        Solution solution = point.Solution;
        foreach (Circuit.Elements.Element element in wiring.Network.Elements)
        {
            Mark(element.A, element.B);
            if (element is Circuit.Elements.ConverterStage stage)
            {
                Mark(stage.OutA, stage.OutB);
            }
        }

        foreach ((string name, int node) in _terminals.Where(t => solution.IsFloating(t.Node)))
        {
            // Of two negatives of an island the lower tells, of two alike the first.
            int group = solution.Group(node);
            bool better = !_zeros.TryGetValue(group, out (string Name, int Node) zero)
                || (IsNegative(name) && (!IsNegative(zero.Name) || solution.Voltage(node) < solution.Voltage(zero.Node)));
            if (better)
            {
                _zeros[group] = (name, node);
            }
        }
    }

    internal IReadOnlyList<TerminalNumbers> All() => [.. _terminals.Select(t => Of(t.Name, t.Node))];

    private TerminalNumbers Of(string name, int node)
    {
        Solution solution = _point.Solution;
        int reference = _wiring.Network.Reference;
        if (!solution.IsFloating(node))
        {
            double volts = _point.Volts(node, reference);
            return new TerminalNumbers(name, volts) { Stray = Math.Abs(volts) > _live && !_firm.Hold(node, reference) };
        }

        if (!_joined.Contains(solution.Group(node)))
        {
            return new TerminalNumbers(name, null);
        }

        (string above, int zero) = _zeros[solution.Group(node)];
        double apart = _point.Volts(node, zero);
        return new TerminalNumbers(name, apart) { Above = above, Stray = Math.Abs(apart) > _live && !_firm.Hold(node, zero) };
    }

    private void Mark(int first, int second)
    {
        if (_point.Solution.Group(first) == _point.Solution.Group(second))
        {
            _joined.Add(_point.Solution.Group(first));
        }
    }

    private static bool IsNegative(string name) => name.EndsWith('-');
}
