using WireCheck.Physics;

namespace WireCheck.Faults.Inrush;

/// <summary>A resistor that charges the capacitors behind a contact before the contact closes.</summary>
/// <param name="ResistorId">The resistor.</param>
/// <param name="ContactId">The relay or switch it goes round.</param>
/// <param name="WorkedBy">Switches and relays in its branch; empty when it lies across the contact at all times.</param>
/// <param name="Capacitors">What it charges.</param>
public sealed record Precharge(
    string ResistorId, string ContactId, IReadOnlyList<string> WorkedBy, IReadOnlyList<InrushCapacitor> Capacitors)
{
    /// <summary>Resistance, Ω.</summary>
    public required double Ohms { get; init; }

    /// <summary>Voltage that the contact will bring, V, at the corner in which the precharge comes least far.</summary>
    public required double SourceVolts { get; init; }

    /// <summary>The same at the corner in which it is highest, V.</summary>
    public required double HighestVolts { get; init; }

    /// <summary>Voltage the capacitors creep up to with what hangs behind idle, V.</summary>
    public required double FinalVolts { get; init; }

    /// <summary>
    /// Converter or inverter that starts meanwhile and takes the voltage down again, or the relay itself, whose coil the branch
    /// feeds and which closes at that voltage; null when there is none.
    /// </summary>
    public string? HeldDownBy { get; init; }

    /// <summary>False when the contact closes as soon as the branch has a feed, so that nothing is ever charged before.</summary>
    public bool ComesFirst { get; init; } = true;

    /// <summary>True when it lies across the contact at all times.</summary>
    public bool AlwaysAcross => WorkedBy.Count == 0;

    /// <summary>Sum of the capacitances, F.</summary>
    public double Farads
    {
        get
        {
            double farads = 0;
            foreach (InrushCapacitor capacitor in Capacitors)
            {
                farads += capacitor.Farads;
            }

            return farads;
        }
    }

    /// <summary>Share of the voltage it brings.</summary>
    public double FinalShare => SourceVolts > 0 ? FinalVolts / SourceVolts : 0;

    /// <summary>Energy the resistor burns while it charges, J: ½ C V².</summary>
    public double EnergyJoules => CapacitorCharge.Energy(HighestVolts, Farads);

    /// <summary>What it burns for as long as its branch is held closed onto a short or a working load, W: V²/R.</summary>
    public double HeldWatts => HighestVolts * HighestVolts / Ohms;

    /// <summary>Seconds until the capacitors stand at a share of the voltage; infinite when they never do.</summary>
    public double SecondsTo(double share) => CapacitorCharge.SecondsTo(Ohms, Farads, FinalVolts, share * SourceVolts);
}
