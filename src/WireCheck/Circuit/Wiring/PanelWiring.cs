using WireCheck.Circuit.Elements;
using WireCheck.Description.Kinds;

namespace WireCheck.Circuit.Wiring;

/// <summary>A solar panel as its curve in the sun and its leakage in the dark.</summary>
public sealed class WiredPanel(Panel panel, PanelCurve? element) : WiredPart(panel)
{
    public Panel Panel { get; } = panel;

    /// <summary>Null when the panel only feeds a controller by <c>from:</c>.</summary>
    public PanelCurve? Element { get; } = element;

    public override IEnumerable<Element> Elements => Element is null ? [] : [Element];

    /// <summary>Powered means full sun, unpowered dark.</summary>
    public void SetState(SourceState state)
    {
        if (Element is not null)
        {
            Element.Connected = state != SourceState.Absent;
            Element.Lit = state == SourceState.Powered;
        }
    }
}

/// <summary>How a panel becomes elements.</summary>
public sealed class PanelWiring : KindWiring<Panel>
{
    public override WiredPart AddElements(Panel part, WiringBuilder builder)
    {
        bool wired = part.At is not null || TerminalReferences.IsWired(builder.Pack, part.Id, "+");
        if (!wired)
        {
            return new WiredPanel(part, null);
        }

        (int plus, int minus) = Attachment.Nodes(part, part.At?.Value, builder);
        return new WiredPanel(part, builder.Add(SupplyModels.Curve(part, plus, minus)));
    }
}
