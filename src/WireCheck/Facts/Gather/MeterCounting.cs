using WireCheck.Circuit.Wiring;
using WireCheck.Description.Kinds;
using WireCheck.Facts.Catalogue;
using WireCheck.Quantities;
using WireCheck.Standby;

namespace WireCheck.Facts.Gather;

/// <summary>Gathers what passes a meter's shunt at rest, which it does not count when it is less than its smallest current.</summary>
internal static class MeterCounting
{
    private const double DaysOfMonth = 30;

    /// <summary>Sets the facts of one meter; none for one that reads no shunt.</summary>
    internal static void Add(Meter part, FactSubject subject, GatherContext context)
    {
        if (part.Shunt is not { } id || context.Wiring[id.Value] is not WiredShunt shunt)
        {
            return;
        }

        subject.SetNumber(MeterCountFacts.Smallest, part.Smallest?.Value.Amperes);
        foreach (StandbyState? state in new[] { context.Standby.Stored, context.Standby.LeftPlugged })
        {
            if (state is not null)
            {
                subject.Largest(MeterCountFacts.RestCurrent, Math.Abs(state.Point.Amps(shunt.Element)), state.Point);
            }
        }

        double capacity = Banks.CoulombsOfAll(context);
        if (capacity > 0 && subject.Find(MeterCountFacts.RestCurrent.Name)?.Value is double amps)
        {
            subject.SetNumber(MeterCountFacts.RestShareOfMonth, amps * DaysOfMonth * Durations.SecondsPerDay / capacity);
        }
    }
}
