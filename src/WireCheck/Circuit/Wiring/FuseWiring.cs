using WireCheck.Circuit.Elements;
using WireCheck.Description.Kinds;

namespace WireCheck.Circuit.Wiring;

/// <summary>A fuse or breaker with its holder, as one contact that opens when it has cleared.</summary>
public sealed class WiredFuse(Fuse fuse, WiringData data, Contact element) : WiredPart(fuse)
{
    public Fuse Fuse { get; } = fuse;

    /// <summary>Positive current flows from terminal 1 to terminal 2.</summary>
    public Contact Element { get; } = element;

    /// <summary>True while a study looks at the box without it: blown, or never put in.</summary>
    public bool LeftOpen { get; set; }

    public override IEnumerable<Element> Elements => [Element];

    public override void SetConditions(Conditions conditions) =>
        Element.Ohms = data.FuseOhms(Fuse, conditions.HighestResistance) + data.HolderOhms(Fuse, conditions.HighestResistance);
}

/// <summary>How a fuse becomes elements.</summary>
public sealed class FuseWiring : KindWiring<Fuse>
{
    public override WiredPart AddElements(Fuse part, WiringBuilder builder) =>
        new WiredFuse(part, builder.Data, builder.Add(new Contact(
            part.Id, builder.Node(part.Id, "1"), builder.Node(part.Id, "2"), 1) { Closed = true }));
}
