using WireCheck.Circuit.Wiring;
using WireCheck.Description.Kinds;

namespace WireCheck.Circuit.Topology;

/// <summary>Which BMS watches a bank.</summary>
public static class BankBms
{
    /// <summary>The BMS whose cell side reaches the bank's pole by wire and contacts, not through itself; null when there is none.</summary>
    public static WiredBms? Of(BoxWiring wiring, WiringGraph graph, WiredBank bank)
    {
        foreach (WiredBms bms in wiring.Of<WiredBms>())
        {
            string pole = bms.Bms.Side.Value == BmsSide.Low ? "-" : "+";
            if (Reach.From(graph, bms.Path.A, e => e.PartId != bms.Part.Id)[wiring.Node(bank.Part.Id, pole)])
            {
                return bms;
            }
        }

        return null;
    }
}
