using WireCheck.Circuit.Elements;

namespace WireCheck.Circuit.Wiring;

/// <summary>
/// The panels at the input of a controller that is drawn, and the way from each to it. A controller that seeks the best
/// voltage gets from a panel its maximum power less what the way takes at that current; asked for more, the panel's voltage
/// would break down.
/// </summary>
public sealed class PanelFeed
{
    /// <summary>Part of that power which is asked for: at the very top of the curve two answers meet and no solver can tell them apart.</summary>
    private const double ShareOfMost = 0.999;

    private readonly (PanelCurve Panel, Element[] Way)[] _panels;

    private PanelFeed((PanelCurve Panel, Element[] Way)[] panels) => _panels = panels;

    /// <summary>The panels, in the order they are met.</summary>
    public IEnumerable<PanelCurve> Panels => _panels.Select(p => p.Panel);

    /// <summary>Power that the panels in the sun bring to the controller's input as things stand, W.</summary>
    public double InputWatts()
    {
        double sum = 0;
        foreach ((PanelCurve panel, Element[] way) in _panels)
        {
            if (panel.Connected && panel.Lit)
            {
                double amps = panel.Points.MaximumPowerAmps;
                sum += amps * (panel.Points.MaximumPowerVolts - Drop(way, amps));
            }
        }

        return Math.Max(0, sum) * ShareOfMost;
    }

    /// <summary>The panels at a stage's input, of which those count that a way leads back to; null when none is there at all.</summary>
    internal static PanelFeed? Of(Network network, ConverterStage stage)
    {
        Dictionary<int, Element?> negative = Walk(network, [stage.B], null, out _);
        Walk(network, [stage.A], negative, out List<(PanelCurve Panel, Element[] Way)> panels);
        return panels.Count == 0 ? null : new PanelFeed([.. panels.Where(p => LeadsTo(negative, p.Panel.B, network))]);
    }

    /// <summary>Whether wire, contacts, diodes and panels in series lead from a node to the negative side.</summary>
    private static bool LeadsTo(Dictionary<int, Element?> negative, int start, Network network)
    {
        HashSet<int> reached = [start];
        Queue<int> open = new([start]);
        while (open.TryDequeue(out int node))
        {
            if (negative.ContainsKey(node))
            {
                return true;
            }

            foreach (Element element in network.Elements.Where(e => e.A == node || e.B == node))
            {
                bool passes = element is Resistance or Contact or Diode || (element is PanelCurve && element.A == node);
                int other = element.A == node ? element.B : element.A;
                if (passes && reached.Add(other))
                {
                    open.Enqueue(other);
                }
            }
        }

        return false;
    }

    private static double Drop(Element[] way, double amps)
    {
        double volts = 0;
        foreach (Element element in way)
        {
            volts += element switch
            {
                Resistance part => amps * part.Ohms,
                Contact part => amps * part.Ohms,
                Diode part => (part.Model.EmissionVolts * Math.Log((amps / part.Model.SaturationAmps) + 1)) + (amps * part.Model.SeriesOhms),
                _ => 0,
            };
        }

        return volts;
    }

    /// <summary>
    /// Nodes along wire, contacts and diodes, each with the element it was reached by. Without a negative side the walk ends
    /// there; with one, it does not enter that side, goes on behind panels in series, and notes each panel with its way.
    /// </summary>
    private static Dictionary<int, Element?> Walk(
        Network network, int[] starts, Dictionary<int, Element?>? negative, out List<(PanelCurve Panel, Element[] Way)> panels)
    {
        panels = [];
        Dictionary<int, Element?> reached = [];
        Queue<int> open = new();
        foreach (int start in starts)
        {
            reached[start] = null;
            open.Enqueue(start);
        }

        while (open.TryDequeue(out int node))
        {
            foreach (Element element in network.Elements)
            {
                if (element.A != node && element.B != node)
                {
                    continue;
                }

                int other = element.A == node ? element.B : element.A;
                bool isPanel = element is PanelCurve && element.A == node && negative is not null;
                if (isPanel)
                {
                    panels.Add(((PanelCurve)element, [.. WayTo(reached, node), .. WayTo(negative!, element.B)]));
                }

                bool passes = isPanel || element is Resistance or Contact or Diode;
                if (passes && !reached.ContainsKey(other) && negative?.ContainsKey(other) != true)
                {
                    reached[other] = element;
                    open.Enqueue(other);
                }
            }
        }

        return reached;
    }

    /// <summary>The elements by which a node was reached, from it back to the start; a panel in series is one of them and drops nothing.</summary>
    private static List<Element> WayTo(Dictionary<int, Element?> reached, int node)
    {
        List<Element> way = [];
        while (reached.TryGetValue(node, out Element? element) && element is not null)
        {
            way.Add(element);
            node = element.A == node ? element.B : element.A;
        }

        return way;
    }
}
