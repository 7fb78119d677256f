using WireCheck.Description.Kinds;
using WireCheck.Facts.Catalogue;

namespace WireCheck.Facts.Gather;

/// <summary>Gathers the open-circuit voltage of a panel.</summary>
public sealed class PanelGatherer : Gatherer<Panel>
{
    public override void Gather(Panel part, FactSubject subject, GatherContext context) =>
        subject.SetNumber(PanelFacts.OpenCircuit, part.OpenCircuit.Value.Volts);
}
