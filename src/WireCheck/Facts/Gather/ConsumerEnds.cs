using WireCheck.Circuit.Topology;
using WireCheck.Circuit.Wiring;

namespace WireCheck.Facts.Gather;

/// <summary>Where a consumer takes its power.</summary>
/// <param name="Plus">Positive node at its own terminals.</param>
/// <param name="Minus">Negative node.</param>
/// <param name="FeedPlus">Where its plug or wires begin: ahead of a lead of its own, so that it has a voltage when unplugged too.</param>
/// <param name="FeedMinus">The same of its negative.</param>
internal sealed record ConsumerEnds(int Plus, int Minus, int FeedPlus, int FeedMinus)
{
    /// <summary>The ends of a consumer; null for a load on an alternating-current outlet.</summary>
    internal static ConsumerEnds? Of(WiredPart part, GatherContext context) => part switch
    {
        IPoweredInput input => new ConsumerEnds(input.InputPlus, input.InputMinus, input.InputPlus, input.InputMinus),
        WiredMeter meter => new ConsumerEnds(meter.Element.A, meter.Element.B, meter.Element.A, meter.Element.B),
        WiredLoad { LeadPlus: { } plus, LeadMinus: { } minus } => new ConsumerEnds(plus.B, minus.A, plus.A, minus.B),
        WiredLoad { PowerElement: { } element } => new ConsumerEnds(element.A, element.B, element.A, element.B),
        _ => null,
    };

    /// <summary>The bank that feeds it, contacts counted as closed; null behind a converter or without a feed.</summary>
    internal WiredBank? Bank(GatherContext context) => Banks.Feeding(context, FeedPlus);

    /// <summary>The converter whose output feeds it; null when none does.</summary>
    internal WiredConverter? FeedingConverter(GatherContext context)
    {
        foreach (SourcePoint source in context.Sources)
        {
            if (context.Wiring[source.PartId] is WiredConverter converter && context.Guards.Against(source)[FeedPlus].Reached)
            {
                return converter;
            }
        }

        return null;
    }
}
