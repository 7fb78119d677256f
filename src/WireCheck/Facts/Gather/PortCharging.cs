using WireCheck.Charging;
using WireCheck.Circuit.Wiring;
using WireCheck.Facts.Catalogue;

namespace WireCheck.Facts.Gather;

/// <summary>Gathers what comes out of a port that takes charge, and what a plug the wrong way round does to the box.</summary>
internal static class PortCharging
{
    internal static void Add(WiredPort port, FactSubject subject, GatherContext context)
    {
        if (subject.Find(PortFacts.OpenVoltage.Name) is { Value: double volts } && volts > context.Data.Assumed("live_above"))
        {
            foreach (PortShort shorted in context.Charging.Shorts)
            {
                if (shorted.PortId == port.Part.Id)
                {
                    subject.SetNumber(PortChargeFacts.ShortCurrent, shorted.Amps);
                }
            }
        }

        if (Worst(port.Part.Id, context) is { } reversed)
        {
            subject.Set(PortChargeFacts.ReversedSource, reversed.SourceId);
            subject.SetNumber(PortChargeFacts.ReversedCurrent, reversed.Amps);
            subject.SetNames(PortChargeFacts.ReversedOpens, reversed.Opens);
            subject.SetNumber(PortChargeFacts.ReversedLeft, reversed.LeftAmps);
            subject.SetNames(PortChargeFacts.ReversedParts, reversed.Reversed);
            subject.SetNames(PortChargeFacts.ReversedUndecided, reversed.Undecided);
        }
    }

    /// <summary>
    /// Part of the voltage at a charge port's empty pins that is left under a tester's burden; 1 for a port that gives.
    /// </summary>
    internal static double ShareIntoBurden(WiredPort port, GatherContext context)
    {
        foreach (PortShort shorted in context.Charging.Shorts)
        {
            if (shorted.PortId == port.Part.Id)
            {
                return shorted.ShareInto(context.Data.Assumed("test_burden"));
            }
        }

        return 1;
    }

    /// <summary>Of several sources on one port, the one that reverses most and leaves most flowing.</summary>
    private static ReversedPlug? Worst(string portId, GatherContext context)
    {
        ReversedPlug? worst = null;
        foreach (ReversedPlug plug in context.Charging.Reversed)
        {
            if (plug.PortId == portId && !plug.Keyed
                && (worst is null || plug.Reversed.Count > worst.Reversed.Count
                    || (plug.Reversed.Count == worst.Reversed.Count && plug.LeftAmps > worst.LeftAmps)))
            {
                worst = plug;
            }
        }

        return worst;
    }
}
