using WireCheck.Description;
using WireCheck.Description.Kinds;

namespace WireCheck.Circuit.Wiring;

/// <summary>Finds the nodes that a part hangs on when it is written with <c>at:</c>.</summary>
internal static class Attachment
{
    /// <summary>
    /// The positive and negative node at a port's plug or a converter's output; the part's own terminals when
    /// <paramref name="at"/> is null. A plug that is the wrong way round has them swapped.
    /// </summary>
    internal static (int Plus, int Minus) Nodes(Part part, string? at, WiringBuilder builder, string own = "") =>
        (at is null ? null : builder.Pack.Find(at)) switch
        {
            Port port when builder.Reversed == part.Id =>
                (builder.Node(port.Id, WiredPort.PlugMinus), builder.Node(port.Id, WiredPort.PlugPlus)),
            Port port => (builder.Node(port.Id, WiredPort.PlugPlus), builder.Node(port.Id, WiredPort.PlugMinus)),
            Converter converter => (builder.Node(converter.Id, "out+"), builder.Node(converter.Id, "out-")),
            _ => (builder.Node(part.Id, own + "+"), builder.Node(part.Id, own + "-")),
        };
}
