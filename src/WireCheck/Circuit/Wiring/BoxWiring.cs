using WireCheck.Circuit.Elements;
using WireCheck.Description;
using WireCheck.Description.Kinds;

namespace WireCheck.Circuit.Wiring;

/// <summary>A box as a network: which element belongs to which part, which node to which terminal.</summary>
public sealed class BoxWiring
{
    private readonly Dictionary<string, WiredPart> _byId;
    private readonly IReadOnlyDictionary<(string Part, string Terminal), int> _nodes;

    private BoxWiring(WiringBuilder builder, IReadOnlyList<WiredPart> parts, IReadOnlyList<Element> outside)
    {
        Pack = builder.Pack;
        Data = builder.Data;
        Network = builder.Network;
        Parts = parts;
        OutsideLinks = outside;
        _nodes = builder.Nodes;
        _byId = parts.ToDictionary(p => p.Part.Id, StringComparer.Ordinal);
    }

    public Pack Pack { get; }

    /// <summary>Values from the library that the wiring used.</summary>
    public WiringData Data { get; }

    public Network Network { get; }

    /// <summary>Every part and conductor leg, in the order of the description; conductors last.</summary>
    public IReadOnlyList<WiredPart> Parts { get; }

    /// <summary>What joins nodes outside the drawn wiring: the bond of a metal case, links the builder declares.</summary>
    public IReadOnlyList<Element> OutsideLinks { get; }

    /// <summary>Terminal names and their nodes.</summary>
    public IReadOnlyDictionary<(string Part, string Terminal), int> Nodes => _nodes;

    /// <summary>Builds the network of a box. Never fails on a description that the reader accepted.</summary>
    /// <param name="pack">The box.</param>
    /// <param name="data">Values from the library.</param>
    /// <param name="reversed">Id of a part on a port whose plug is the wrong way round; null for none.</param>
    public static BoxWiring Build(Pack pack, WiringData data, string? reversed = null)
    {
        WiringBuilder builder = new(pack, data, reversed);
        Part[] parts = [.. pack.Parts, .. pack.Conductors];
        foreach (Part part in parts)
        {
            KindWirings.For(part).AddNodes(part, builder);
        }

        List<WiredPart> wired = [];
        foreach (Part part in parts)
        {
            wired.Add(KindWirings.For(part).AddElements(part, builder));
        }

        foreach (WiredPart part in wired)
        {
            if (part is WiredCharger { Stage: { } stage, Charger.ChargerKind.Value: ChargerKind.Solar } controller)
            {
                controller.Feed = PanelFeed.Of(builder.Network, stage);
            }
        }

        int inside = builder.Network.Elements.Count;
        SurroundingsWiring.AddElements(builder);
        Element[] outside = [.. builder.Network.Elements.Skip(inside)];
        Cells? first = pack.Of<Cells>().FirstOrDefault();
        if (first is not null)
        {
            builder.Network.Reference = builder.Node(first.Id, "-");
        }

        return new BoxWiring(builder, wired, outside);
    }

    /// <summary>The wired form of a part.</summary>
    public WiredPart this[string id] => _byId[id];

    /// <summary>All wired parts of one type, in the order of the description.</summary>
    public IEnumerable<T> Of<T>()
        where T : WiredPart => Parts.OfType<T>();

    /// <summary>The wired part, or null when the id names none or another type.</summary>
    public T? Find<T>(string? id)
        where T : WiredPart => id is null ? null : _byId.GetValueOrDefault(id) as T;

    /// <summary>The node of a terminal.</summary>
    public int Node(string partId, string terminal) => _nodes[(partId, terminal)];

    /// <summary>The node a reference names.</summary>
    public int Node(TerminalReference reference) => _nodes[(reference.PartId, reference.Terminal)];

    /// <summary>Sets every part to a corner.</summary>
    public void SetConditions(Conditions conditions)
    {
        foreach (WiredPart part in Parts)
        {
            part.SetConditions(conditions);
        }
    }
}
