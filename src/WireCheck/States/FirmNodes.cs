using WireCheck.Circuit.Elements;
using WireCheck.Circuit.Solving;
using WireCheck.Circuit.Wiring;

namespace WireCheck.States;

/// <summary>
/// Which nodes hold their voltage into the test burden in a solved state, and which only show a stray one to a meter, as behind
/// the leakage of a diode. Firm is what hangs on a bank or on a source that gives power by wire and closed contacts; and what
/// is fed from there, by a diode or a large resistance, with no less than the burden takes at the voltage that counts as live.
/// </summary>
public sealed class FirmNodes
{
    /// <summary>A resistance of no more than this share of the burden counts as wire.</summary>
    private const double WireShare = 0.1;

    /// <summary>A contact with more than this across it is open, V.</summary>
    private const double MostAcrossContact = 0.5;

    private readonly int[] _leader;
    private readonly bool[] _firm;

    /// <summary>Finds the firm nodes of a state.</summary>
    public FirmNodes(BoxWiring wiring, OperatingPoint point)
    {
        double burden = wiring.Data.Assumed("test_burden");
        double live = wiring.Data.Assumed("live_above");
        _leader = [.. Enumerable.Range(0, wiring.Network.NodeCount)];
        _firm = new bool[_leader.Length];
        List<Element> weak = [];
        foreach (Element element in wiring.Network.Elements)
        {
            if (IsWire(element, point, burden))
            {
                Join(element.A, element.B);
            }
            else if (element is Diode or Resistance)
            {
                weak.Add(element);
            }
        }

        foreach ((int plus, int minus) in Giving(wiring, point))
        {
            _firm[Of(plus)] = true;
            _firm[Of(minus)] = true;
        }

        while (Spread(weak, point.Solution, live, live / burden))
        {
        }
    }

    /// <summary>True where the voltage between two nodes holds into the test burden.</summary>
    public bool Hold(int first, int second) => _firm[Of(first)] && _firm[Of(second)];

    private static bool IsWire(Element element, OperatingPoint point, double burden) => element switch
    {
        Source => point.Solution.Island(element.A) == point.Solution.Island(element.B),
        Resistance part => part.Ohms <= WireShare * burden,
        Contact => point.Solution.Island(element.A) == point.Solution.Island(element.B)
            && Math.Abs(point.Volts(element.A, element.B)) < MostAcrossContact,
        _ => false,
    };

    private static IEnumerable<(int Plus, int Minus)> Giving(BoxWiring wiring, OperatingPoint point)
    {
        foreach (WiredPart part in wiring.Parts)
        {
            string id = part.Part.Id;
            switch (part)
            {
                case WiredBank bank:
                    foreach (Source cell in bank.CellElements)
                    {
                        yield return (cell.A, cell.B);
                    }

                    break;
                case WiredVehicle vehicle when point.Mode.Source(id) != SourceState.Absent:
                    yield return (vehicle.Plus, vehicle.Minus);
                    break;
                case WiredPanel { Element: { } panel } when point.Mode.Source(id) == SourceState.Powered:
                    yield return (panel.A, panel.B);
                    break;
                case WiredCharger { Output: { } output } when point.Mode.Source(id) == SourceState.Powered:
                    yield return (output.A, output.B);
                    break;
                case WiredCharger { Stage: { } stage } when point.Mode.Source(id) == SourceState.Powered && point.Solution.OutputCurrent(stage) != 0:
                    yield return (stage.OutA, stage.OutB);
                    break;
                case WiredConverter converter when point.Inputs.Any(i => i.Id == id && i.On):
                    yield return (converter.Stage.OutA, converter.Stage.OutB);
                    break;
            }
        }
    }

    /// <summary>
    /// Makes firm what firm neighbours can push the burden's current into while it is held at the live voltage above the bank's
    /// negative, or, of what stands low, pull it out of while it is held that far below the highest; false when that is nothing more.
    /// </summary>
    private bool Spread(List<Element> weak, Solution solution, double live, double amps)
    {
        double highest = 0;
        for (int node = 0; node < _leader.Length; node++)
        {
            highest = _firm[Of(node)] && !solution.IsFloating(node) ? Math.Max(highest, solution.Voltage(node)) : highest;
        }

        Dictionary<int, (double Into, double OutOf)> reach = [];
        foreach (Element element in weak)
        {
            (int a, int b) = (Of(element.A), Of(element.B));
            if (_firm[a] == _firm[b] || solution.IsFloating(element.A) != solution.IsFloating(element.B))
            {
                continue;
            }

            int soft = _firm[a] ? b : a;
            double there = solution.Voltage(_firm[a] ? element.A : element.B);
            (double into, double outOf) = reach.GetValueOrDefault(soft);
            into += Math.Max(0, Into(element, fromA: _firm[a], there, live));
            outOf += Math.Max(0, -Into(element, fromA: _firm[a], there, highest - live));
            reach[soft] = (into, outOf);
        }

        bool any = false;
        foreach ((int node, (double into, double outOf)) in reach)
        {
            bool above = solution.Voltage(node) > live;
            if (above ? into >= amps : outOf >= amps)
            {
                _firm[node] = true;
                any = true;
            }
        }

        return any;
    }

    private static double Into(Element element, bool fromA, double firmVolts, double softVolts) =>
        fromA ? element.Current(firmVolts - softVolts, out _) : -element.Current(softVolts - firmVolts, out _);

    private int Of(int node)
    {
        while (_leader[node] != node)
        {
            _leader[node] = _leader[_leader[node]];
            node = _leader[node];
        }

        return node;
    }

    private void Join(int first, int second)
    {
        int a = Of(first);
        int b = Of(second);
        _leader[Math.Max(a, b)] = Math.Min(a, b);
    }
}
