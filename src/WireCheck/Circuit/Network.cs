using WireCheck.Circuit.Elements;

namespace WireCheck.Circuit;

/// <summary>Nodes and the elements between them. It knows nothing of parts.</summary>
public sealed class Network
{
    private readonly List<string> _names = [];
    private readonly List<Element> _elements = [];

    /// <summary>Number of nodes; they are numbered from 0 in the order they were added.</summary>
    public int NodeCount => _names.Count;

    /// <summary>All elements in the order they were added.</summary>
    public IReadOnlyList<Element> Elements => _elements;

    /// <summary>The node that is 0 V by definition wherever it is joined to.</summary>
    public int Reference { get; set; }

    /// <summary>Adds a node.</summary>
    public int AddNode(string name)
    {
        _names.Add(name);
        return _names.Count - 1;
    }

    /// <summary>The name a node was added with.</summary>
    public string NodeName(int node) => _names[node];

    /// <summary>
    /// A network of the same nodes and elements with more elements after them, for a study that adds something to a box. The
    /// elements are shared: their values and their numbers are the same in both.
    /// </summary>
    /// <exception cref="ArgumentException">As for <see cref="Add"/>.</exception>
    public Network With(IEnumerable<Element> more)
    {
        ArgumentNullException.ThrowIfNull(more);
        Network network = new() { Reference = Reference };
        network._names.AddRange(_names);
        network._elements.AddRange(_elements);
        foreach (Element element in more)
        {
            network.Add(element);
        }

        return network;
    }

    /// <summary>Adds an element between nodes that exist already.</summary>
    /// <exception cref="ArgumentException">A node does not exist, or both ends are the same node.</exception>
    public T Add<T>(T element)
        where T : Element
    {
        ArgumentNullException.ThrowIfNull(element);
        if (element.A == element.B || (uint)element.A >= (uint)NodeCount || (uint)element.B >= (uint)NodeCount)
        {
            throw new ArgumentException($"{element.Name} does not lie between two nodes of the network", nameof(element));
        }

        element.Index = _elements.Count;
        _elements.Add(element);
        return element;
    }
}
