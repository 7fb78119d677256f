using WireCheck.Circuit.Topology;
using WireCheck.Circuit.Wiring;
using WireCheck.Description.Kinds;
using WireCheck.Facts.Catalogue;

namespace WireCheck.Facts.Gather;

/// <summary>Gathers what hangs on which terminal of a BMS with separate ports for charging and discharging.</summary>
internal static class BmsPortGathering
{
    /// <summary>Sets the facts of one BMS.</summary>
    internal static void Add(WiredBms bms, FactSubject subject, GatherContext context)
    {
        subject.Set(SenseFacts.SeparatePort, bms.ChargePath is not null);
        if (bms.ChargePath is not { } chargePath)
        {
            return;
        }

        bool[] charge = Beyond(chargePath.B, bms, context);
        bool[] discharge = Beyond(bms.Path.B, bms, context);
        bool low = bms.Bms.Side.Value == BmsSide.Low;
        List<string> loads = [];
        List<string> chargers = [];
        foreach (WiredPart part in context.Wiring.Parts)
        {
            if (part is not WiredMeter && ConsumerEnds.Of(part, context) is { } ends)
            {
                int node = low ? ends.FeedMinus : ends.FeedPlus;
                AddWhen(charge[node] && !discharge[node], part, loads);
            }
            else if (Output(part) is { } output)
            {
                int node = low ? output.Minus : output.Plus;
                AddWhen(discharge[node] && !charge[node], part, chargers);
            }
        }

        subject.SetNames(SenseFacts.LoadsOnChargePort, loads);
        subject.SetNames(SenseFacts.ChargersOnDischargePort, chargers);
        subject.Set(SenseFacts.PortsJoined, charge[bms.Path.B]);
    }

    private static void AddWhen(bool crossed, WiredPart part, List<string> names)
    {
        if (crossed)
        {
            names.Add(part.Part.Id);
        }
    }

    /// <summary>Nodes joined to one terminal of the BMS without passing through it, diodes either way.</summary>
    private static bool[] Beyond(int start, WiredBms bms, GatherContext context)
    {
        bool[] forward = Reach.From(context.Graph, start, e => e.PartId != bms.Part.Id);
        bool[] back = Reach.From(context.Graph, start, e => e.PartId != bms.Part.Id, against: true);
        for (int node = 0; node < forward.Length; node++)
        {
            forward[node] |= back[node];
        }

        return forward;
    }

    private static (int Plus, int Minus)? Output(WiredPart part) => part switch
    {
        WiredCharger { Output: { } output } => (output.A, output.B),
        WiredCharger { Stage: { } stage } => (stage.OutA, stage.OutB),
        WiredVehicle vehicle => (vehicle.Plus, vehicle.Minus),
        _ => null,
    };
}
