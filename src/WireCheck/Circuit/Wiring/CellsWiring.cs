using WireCheck.Circuit.Elements;
using WireCheck.Description.Kinds;

namespace WireCheck.Circuit.Wiring;

/// <summary>
/// A bank cell by cell. Each cell is a source behind its resistance. In every group, bars join the positive
/// terminals of neighbouring cells; from each cell a bar leads on to the next group.
/// </summary>
public sealed class WiredBank : WiredPart
{
    private readonly WiringData _data;
    private readonly Source[] _cells;
    private readonly Resistance[] _links;

    internal WiredBank(Cells cells, WiringData data, Source[] sources, Resistance[] links, int columns)
        : base(cells)
    {
        Cells = cells;
        _data = data;
        _cells = sources;
        _links = links;
        Columns = columns;
    }

    public Cells Cells { get; }

    /// <summary>Cells side by side.</summary>
    public int Columns { get; }

    /// <summary>All cells: group 1 first, column by column. Current is positive when a cell is charged.</summary>
    public IReadOnlyList<Source> CellElements => _cells;

    /// <summary>All bars.</summary>
    public IReadOnlyList<Resistance> LinkElements => _links;

    public override IEnumerable<Element> Elements => [.. _cells, .. _links];

    public override void SetConditions(Conditions conditions)
    {
        double openCircuit = _data.CellOpenCircuitVolts(Cells, conditions.StateOfCharge);
        for (int i = 0; i < _cells.Length; i++)
        {
            _cells[i].Emf = openCircuit;
            _cells[i].Ohms = _data.CellOhms(Cells, i, conditions);
        }

        if (_links.Length > 0)
        {
            double ohms = _data.LinkOhms(Cells, conditions);
            foreach (Resistance link in _links)
            {
                link.Ohms = ohms;
            }
        }
    }
}

/// <summary>How a bank becomes elements.</summary>
public sealed class CellsWiring : KindWiring<Cells>
{
    public override void AddNodes(Cells part, WiringBuilder builder)
    {
        int groups = part.Series.Value;
        builder.AddNode(part.Id, "-");
        for (int group = 1; group < groups; group++)
        {
            builder.AddNode(part.Id, FormattableString.Invariant($"t{group}"));
        }

        builder.AddNode(part.Id, "+");
    }

    public override WiredPart AddElements(Cells part, WiringBuilder builder)
    {
        int groups = part.Series.Value;
        int columns = part.Parallel.Value;
        int plusColumn = part.TakeOff?.Value == TakeOff.Diagonal ? columns - 1 : 0;
        List<Source> cells = [];
        List<Resistance> links = [];
        int[] below = new int[columns];
        for (int group = 0; group < groups; group++)
        {
            int[] negative = group == 0 ? BottomNodes(part, builder, columns) : NodesOf(part, builder, group, columns, "-");
            int[] positive = NodesOf(part, builder, group, columns, "+");
            positive[group == groups - 1 ? plusColumn : 0] = group == groups - 1
                ? builder.Node(part.Id, "+")
                : builder.Node(part.Id, FormattableString.Invariant($"t{group + 1}"));
            for (int column = 0; column < columns; column++)
            {
                string name = FormattableString.Invariant($"{part.Id}.cell{group + 1}{(columns > 1 ? $"/{column + 1}" : "")}");
                if (group > 0)
                {
                    links.Add(AddLink(builder, name + ".link", below[column], negative[column]));
                }

                cells.Add(builder.Add(new Source(name, positive[column], negative[column], 0, 1)));
                if (column > 0)
                {
                    links.Add(AddLink(builder, name + ".bar", positive[column - 1], positive[column]));
                    if (group == 0)
                    {
                        links.Add(AddLink(builder, name + ".bar-", negative[column - 1], negative[column]));
                    }
                }
            }

            below = positive;
        }

        return new WiredBank(part, builder.Data, [.. cells], [.. links], columns);
    }

    private static Resistance AddLink(WiringBuilder builder, string name, int a, int b) =>
        builder.Add(new Resistance(name, a, b, 1));

    private static int[] BottomNodes(Cells part, WiringBuilder builder, int columns)
    {
        int[] nodes = NodesOf(part, builder, 0, columns, "-");
        nodes[0] = builder.Node(part.Id, "-");
        return nodes;
    }

    /// <summary>Nodes of one side of a group; the ones that carry a terminal's name are put in by the caller.</summary>
    private static int[] NodesOf(Cells part, WiringBuilder builder, int group, int columns, string side)
    {
        int named = side == "-" ? (group == 0 ? 0 : -1)
            : group == part.Series.Value - 1 && part.TakeOff?.Value == TakeOff.Diagonal ? columns - 1 : 0;
        int[] nodes = new int[columns];
        for (int column = 0; column < columns; column++)
        {
            nodes[column] = column == named
                ? -1
                : builder.Network.AddNode(FormattableString.Invariant($"{part.Id}.{group + 1}/{column + 1}{side}"));
        }

        return nodes;
    }
}
