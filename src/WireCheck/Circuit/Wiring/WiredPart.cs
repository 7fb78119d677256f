using WireCheck.Circuit.Elements;
using WireCheck.Description;

namespace WireCheck.Circuit.Wiring;

/// <summary>A part with the elements it contributes to the network.</summary>
public abstract class WiredPart(Part part)
{
    /// <summary>The part as described.</summary>
    public Part Part { get; } = part;

    /// <summary>Every element of the part, in a fixed order.</summary>
    public abstract IEnumerable<Element> Elements { get; }

    /// <summary>Sets the values that depend on the corner.</summary>
    public virtual void SetConditions(Conditions conditions)
    {
    }
}

/// <summary>Turns parts of one kind into elements. There is one for each kind.</summary>
public interface IKindWiring
{
    /// <summary>The kind of part it wires.</summary>
    Type PartType { get; }

    /// <summary>Adds the part's nodes to the network, before any element is added.</summary>
    void AddNodes(Part part, WiringBuilder builder);

    /// <summary>Adds the part's elements.</summary>
    WiredPart AddElements(Part part, WiringBuilder builder);
}

/// <summary>The typed form of <see cref="IKindWiring"/>.</summary>
public abstract class KindWiring<T> : IKindWiring
    where T : Part
{
    public Type PartType => typeof(T);

    /// <summary>One node per terminal, unless a kind needs others.</summary>
    public virtual void AddNodes(T part, WiringBuilder builder)
    {
        foreach (string terminal in part.Terminals)
        {
            builder.AddNode(part.Id, terminal);
        }
    }

    public abstract WiredPart AddElements(T part, WiringBuilder builder);

    void IKindWiring.AddNodes(Part part, WiringBuilder builder) => AddNodes((T)part, builder);

    WiredPart IKindWiring.AddElements(Part part, WiringBuilder builder) => AddElements((T)part, builder);
}
