using WireCheck.Circuit.Elements;
using WireCheck.Description;

namespace WireCheck.Circuit.Wiring;

/// <summary>What the kinds use while a box is turned into a network: nodes by terminal name, and the library.</summary>
public sealed class WiringBuilder
{
    private readonly Dictionary<(string Part, string Terminal), int> _nodes = [];

    internal WiringBuilder(Pack pack, WiringData data, string? reversed)
    {
        Pack = pack;
        Data = data;
        Reversed = reversed;
        foreach (string everywhere in EverywhereNodes)
        {
            AddNode(everywhere, "");
        }
    }

    /// <summary>Nodes that exist in every box: the metal case, earth, a vehicle's chassis.</summary>
    public static IReadOnlyList<string> EverywhereNodes { get; } = ["case", "earth", "vehicle"];

    public Pack Pack { get; }

    /// <summary>Values from the library.</summary>
    public WiringData Data { get; }

    /// <summary>Id of the part whose plug is the wrong way round; null when none is.</summary>
    public string? Reversed { get; }

    public Network Network { get; } = new();

    /// <summary>All nodes that carry a terminal's name.</summary>
    public IReadOnlyDictionary<(string Part, string Terminal), int> Nodes => _nodes;

    /// <summary>Adds the node of a terminal.</summary>
    public int AddNode(string partId, string terminal)
    {
        int node = Network.AddNode(terminal.Length == 0 ? partId : $"{partId}.{terminal}");
        _nodes.Add((partId, terminal), node);
        return node;
    }

    /// <summary>Gives a second name to a node, such as the bare id of a bar with one node.</summary>
    public void AddName(string partId, string terminal, int node) => _nodes.Add((partId, terminal), node);

    /// <summary>The node of a terminal; the reader has checked that it exists.</summary>
    public int Node(string partId, string terminal) => _nodes[(partId, terminal)];

    /// <summary>The node at the end of a conductor or joint.</summary>
    public int Node(TerminalReference reference) => _nodes[(reference.PartId, reference.Terminal)];

    /// <summary>Adds an element.</summary>
    public T Add<T>(T element)
        where T : Element => Network.Add(element);
}
