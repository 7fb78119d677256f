using WireCheck.Circuit.Wiring;
using WireCheck.Description.Kinds;
using WireCheck.Facts.Catalogue;
using WireCheck.Heat;
using WireCheck.Knowledge;
using WireCheck.Physics;
using WireCheck.States;

namespace WireCheck.Facts.Gather;

/// <summary>Gathers how warm a conductor gets by its own heat balance, lasting and at the end of a surge.</summary>
internal static class ConductorHeatGathering
{
    internal static void Add(WiredConductor wire, FactSubject subject, GatherContext context)
    {
        subject.Set(ConductorHeatFacts.TemperatureLimit, context.Library.Insulation[wire.Conductor.Insulation.Value].RatedCelsius);
        int place = PlaceOf(wire, context);
        subject.SetNumber(ConductorHeatFacts.TimeConstant, context.Heat.TimeConstants[place]);
        foreach (HeatedMode mode in context.Heat.Modes)
        {
            // The air of a state that cannot last is none: only what the conductor itself adds to it counts.
            double celsius = mode.PeakCelsius[place];
            subject.Largest(
                ConductorHeatFacts.Temperature,
                mode.Lasts ? celsius : celsius - mode.InsideCelsius + context.Heat.HottestInsideCelsius,
                mode.Point);
        }

        if (context.Heat.In(Modes.Everything) is { } warm)
        {
            AddSurges(wire, warm, place, subject, context);
        }
    }

    /// <summary>Place of a conductor among the wired ones.</summary>
    internal static int PlaceOf(WiredConductor wire, GatherContext context)
    {
        int place = 0;
        foreach (WiredConductor other in context.Wiring.Of<WiredConductor>())
        {
            if (other == wire)
            {
                return place;
            }

            place++;
        }

        return -1;
    }

    /// <summary>
    /// A surge begins with everything on. While it lasts only the metal stores heat, and the loss is what holds the conductor at its
    /// warmth before, in proportion to the rise: both on the safe side.
    /// </summary>
    private static void AddSurges(WiredConductor wire, HeatedMode warm, int place, FactSubject subject, GatherContext context)
    {
        WireShape shape = WireShape.Of(wire.Conductor, context.Library);
        double start = warm.ConductorCelsius[place];
        double air = wire.Conductor.Place?.Value == PartPlace.Outside ? warm.AmbientCelsius : warm.InsideCelsius;
        double steady = warm.ConductorAmps[place];
        double ohms = context.Data.OhmsPerMetre(wire.Conductor, 20);
        double ohmsWarm = context.Data.OhmsPerMetre(wire.Conductor, start);
        double loss = start - air > 1 ? steady * steady * ohmsWarm / (start - air) : 0;
        ConductorHeating heating = new(ohms, shape.Zero, shape.MetalHeat, loss, air);
        foreach (OperatingPoint point in context.SolvedPoints())
        {
            if (!point.Mode.Steady)
            {
                double seconds = Surges.Seconds(point.Mode.Id, context.Pack);
                double celsius = heating.Celsius(start, point.Amps(wire.Element), seconds);
                subject.Largest(ConductorHeatFacts.SurgeTemperature, Math.Min(celsius, WiresInAir.MeltingCelsius), point);
            }
        }
    }
}
