using WireCheck.Circuit.Elements;
using WireCheck.Circuit.Wiring;
using WireCheck.States;

namespace WireCheck.Facts.Gather;

/// <summary>One current from node to node at a solved point.</summary>
/// <param name="PartId">The part it flows through.</param>
/// <param name="Element">The element it flows through; of a converter's output, its stage.</param>
/// <param name="From">Node it comes from.</param>
/// <param name="To">Node it flows to.</param>
/// <param name="Amps">Size, A, above 0.</param>
public sealed record FlowBranch(string PartId, Element Element, int From, int To, double Amps)
{
    /// <summary>It comes out of a source: a cell, a charger, a panel, a converter's output.</summary>
    public bool Gives { get; init; }

    /// <summary>It is taken by a consumer: a load, a coil, a lamp, a meter, a converter's input, a cell under charge.</summary>
    public bool Takes { get; init; }
}

/// <summary>The currents of a solved point as directed branches between nodes.</summary>
public sealed class CurrentFlow
{
    /// <summary>A current below this is rounding, A.</summary>
    private const double SmallestAmps = 1e-9;

    private readonly Dictionary<int, List<FlowBranch>> _into = [];
    private readonly Dictionary<int, List<FlowBranch>> _outOf = [];

    /// <summary>Sorts the currents of one point.</summary>
    public CurrentFlow(BoxWiring wiring, OperatingPoint point)
    {
        Wiring = wiring;
        Point = point;
        foreach (WiredPart part in wiring.Parts)
        {
            foreach (Element element in part.Elements)
            {
                Add(part, element, point.Amps(element));
            }
        }
    }

    public BoxWiring Wiring { get; }

    public OperatingPoint Point { get; }

    /// <summary>Currents that flow to a node.</summary>
    public IReadOnlyList<FlowBranch> Into(int node) => _into.GetValueOrDefault(node) ?? [];

    /// <summary>Currents that flow away from a node.</summary>
    public IReadOnlyList<FlowBranch> OutOf(int node) => _outOf.GetValueOrDefault(node) ?? [];

    private void Add(WiredPart part, Element element, double amps)
    {
        if (element is ConverterStage stage)
        {
            Add(new FlowBranch(part.Part.Id, stage, stage.OutB, stage.OutA, Point.Solution.OutputCurrent(stage)) { Gives = true });
        }

        (int from, int to) = amps >= 0 ? (element.A, element.B) : (element.B, element.A);
        bool source = element is Source or ChargerOutput or PanelCurve;
        Add(new FlowBranch(part.Part.Id, element, from, to, Math.Abs(amps))
        {
            Gives = source && amps < 0,
            Takes = (source && amps >= 0) || IsSink(part, element),
        });
    }

    private static bool IsSink(WiredPart part, Element element) =>
        element is ConstantCurrentSink or ConstantPowerSink or ConverterStage
        || part switch
        {
            WiredRelay relay => element == relay.Coil,
            WiredSwitch wired => element == wired.Lamp,
            WiredLoad load => element == load.ResistanceElement,
            _ => false,
        };

    private void Add(FlowBranch branch)
    {
        if (!(branch.Amps > SmallestAmps))
        {
            return;
        }

        ListAt(_into, branch.To).Add(branch);
        ListAt(_outOf, branch.From).Add(branch);
    }

    private static List<FlowBranch> ListAt(Dictionary<int, List<FlowBranch>> lists, int node)
    {
        if (!lists.TryGetValue(node, out List<FlowBranch>? list))
        {
            list = [];
            lists.Add(node, list);
        }

        return list;
    }
}
