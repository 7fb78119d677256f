using WireCheck.Physics;

namespace WireCheck.Faults.Inrush;

/// <summary>The part of an inrush that flows through one fuse.</summary>
/// <param name="FuseId">The fuse or breaker.</param>
/// <param name="Share">Its current over the whole, 0 to 1.</param>
public sealed record InrushShare(string FuseId, double Share);

/// <summary>The loop that a closing contact makes.</summary>
/// <param name="Ohms">Resistance of the whole loop with the capacitors' own, Ω.</param>
/// <param name="Henries">Its inductance, H.</param>
public sealed record InrushLoop(double Ohms, double Henries);

/// <summary>
/// What flows when something joins discharged capacitors to the bank. Capacitors behind one contact are taken as one: their
/// sum, behind the resistance that the whole network shows at the first moment, with the inductance of its conductors
/// weighted by the squares of their shares of the current.
/// </summary>
public sealed class InrushEvent
{
    /// <summary>Works out one event.</summary>
    /// <param name="contactId">What closes: a switch, a relay, a port that is plugged, a fuse that is put in.</param>
    /// <param name="stepVolts">Voltage that appears across the loop, V.</param>
    /// <param name="loop">The loop of those without a soft start; null when all have one.</param>
    /// <param name="capacitors">What is charged.</param>
    public InrushEvent(string contactId, double stepVolts, InrushLoop? loop, IReadOnlyList<InrushCapacitor> capacitors)
    {
        ContactId = contactId;
        StepVolts = stepVolts;
        Loop = loop;
        Capacitors = capacitors;
        double free = 0;
        foreach (InrushCapacitor capacitor in capacitors)
        {
            Farads += capacitor.Farads;
            if (capacitor.LimitAmps is not { } limit)
            {
                free += capacitor.Farads;
                continue;
            }

            // A soft start holds its current until the charge C V is in.
            double amps = Math.Min(limit, stepVolts / capacitor.Ohms);
            PeakAmps += amps;
            JouleIntegral += amps * capacitor.Farads * stepVolts;
        }

        if (loop is not null && free > 0)
        {
            PeakAmps += SeriesCharge.Peak(stepVolts, loop.Ohms, loop.Henries, free);
            JouleIntegral += SeriesCharge.JouleIntegral(stepVolts, loop.Ohms, free);
            TimeConstant = CapacitorCharge.TimeConstant(loop.Ohms, free);
            DampingRatio = SeriesCharge.DampingRatio(loop.Ohms, loop.Henries, free);
        }
    }

    public string ContactId { get; }

    public double StepVolts { get; }

    public InrushLoop? Loop { get; }

    public IReadOnlyList<InrushCapacitor> Capacitors { get; }

    /// <summary>Sum of the capacitances, F.</summary>
    public double Farads { get; }

    /// <summary>Largest current through the contact, A.</summary>
    public double PeakAmps { get; }

    /// <summary>Energy burnt in the loop, as much as the capacitors take, J: ½ C ΔV².</summary>
    public double EnergyJoules => CapacitorCharge.Energy(StepVolts, Farads);

    /// <summary>Joule integral through the contact, A²s.</summary>
    public double JouleIntegral { get; }

    /// <summary>R C, s; null when every capacitor has a soft start.</summary>
    public double? TimeConstant { get; }

    /// <summary>Below 1 the current swings; null as for <see cref="TimeConstant"/>.</summary>
    public double? DampingRatio { get; }

    /// <summary>Id of the resistor that precharges what is behind; null when none does.</summary>
    public string? PrechargedBy { get; init; }

    /// <summary>Shares of the fuses that it flows through.</summary>
    public IReadOnlyList<InrushShare> Fuses { get; init; } = [];

    /// <summary>What was not written and was taken from the library, in words with the part's id.</summary>
    public IEnumerable<string> Assumed
    {
        get
        {
            foreach (InrushCapacitor capacitor in Capacitors)
            {
                foreach (string words in capacitor.Assumed)
                {
                    yield return $"{capacitor.PartId}: {words}";
                }
            }
        }
    }
}
