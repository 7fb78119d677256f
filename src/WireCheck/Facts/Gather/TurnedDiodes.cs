using WireCheck.Circuit.Elements;
using WireCheck.Circuit.Wiring;
using WireCheck.States;

namespace WireCheck.Facts.Gather;

/// <summary>
/// Diodes that conduct steadily from a positive to a negative pole: one inside a relay of which 85 and 86 are changed over,
/// or a drawn one that is turned round.
/// </summary>
internal static class TurnedDiodes
{
    /// <summary>Part of a current from which a turned diode is what draws it.</summary>
    private const double MainShare = 0.5;

    /// <summary>Current through the diode inside a relay, A, positive where it conducts; null for one without.</summary>
    internal static double? AmpsInside(WiredRelay relay, OperatingPoint point) => relay.Clamp is Diode inside ? point.Amps(inside) : null;

    /// <summary>The part through which most of a current flows for that reason in a state; null when none does.</summary>
    /// <param name="amps">That current, A.</param>
    /// <param name="point">The state.</param>
    /// <param name="context">The box.</param>
    internal static string? Drawing(double amps, OperatingPoint point, GatherContext context)
    {
        if (amps <= 0)
        {
            return null;
        }

        foreach (WiredPart part in context.Wiring.Parts)
        {
            double through = part switch
            {
                WiredRelay relay => AmpsInside(relay, point) ?? 0,
                WiredDiode diode when PolarityGathering.ShortsPoles(diode, context) => point.Amps(diode.Element),
                _ => 0,
            };
            if (through >= MainShare * amps)
            {
                return part.Part.Id;
            }
        }

        return null;
    }
}
