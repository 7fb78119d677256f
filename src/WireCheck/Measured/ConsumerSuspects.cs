using WireCheck.Description;
using WireCheck.Description.Kinds;
using WireCheck.Standby;
using WireCheck.States;

namespace WireCheck.Measured;

/// <summary>
/// Which consumer would explain that a current is more or less than predicted: one that draws though it should not or draws
/// twice, or one that does not draw though it should.
/// </summary>
internal sealed class ConsumerSuspects(SolvedBox box, OperatingPoint point)
{
    /// <summary>The consumer whose draw is nearest to the difference in A; null when none is near enough to be likely.</summary>
    /// <param name="misfit">Reading less prediction, A.</param>
    internal ConsumerSuspect? Explaining(double misfit)
    {
        ConsumerSuspect? best = null;
        foreach (ConsumerSuspect suspect in misfit > 0 ? MayDraw() : Drawing(draws: false))
        {
            if (best is null || Distance(suspect, misfit) < Distance(best, misfit))
            {
                best = suspect;
            }
        }

        return best is not null && Distance(best, misfit) <= box.Wiring.Data.Assumed("consumer_fit") ? best : null;
    }

    private static double Distance(ConsumerSuspect suspect, double misfit) => Math.Abs(suspect.Amps - Math.Abs(misfit)) / Math.Abs(misfit);

    /// <summary>What the prediction counts.</summary>
    private IEnumerable<ConsumerSuspect> Drawing(bool draws) =>
        DrainFinder.At(box.Wiring, point).Select(d => new ConsumerSuspect(d.PartId, d.Amps, draws, Predicted: true));

    /// <summary>What could draw: everything with an idle current that the prediction does not count, then what it counts, drawing twice.</summary>
    private IEnumerable<ConsumerSuspect> MayDraw()
    {
        List<ConsumerSuspect> counted = [.. Drawing(draws: true)];
        foreach (Part part in box.Pack.Parts)
        {
            if (IdleAmps(part) is { } amps and > 0 && !counted.Exists(c => c.PartId == part.Id))
            {
                yield return new ConsumerSuspect(part.Id, amps, Draws: true, Predicted: false);
            }
        }

        foreach (ConsumerSuspect suspect in counted)
        {
            yield return suspect;
        }
    }

    private double? IdleAmps(Part part) => part switch
    {
        Inverter inverter => inverter.Idle.Value.Amperes,
        Converter converter => converter.Idle.Value.Amperes,
        Meter meter => meter.Standby.Value.Amperes,
        Load load => load.Standby?.Value.Amperes,
        Charger charger => charger.OwnUse?.Value.Amperes,
        Switch { Lamp: { } lamp } => lamp.Current.Value.Amperes,
        Relay { Coil.Economiser: { } economiser } => economiser.HoldCurrent.Value.Amperes,
        Relay relay => box.Wiring.Data.NominalBankVolts(box.Pack) / relay.Coil.Resistance.Value.Ohms,
        _ => null,
    };
}
