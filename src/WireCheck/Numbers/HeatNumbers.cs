using WireCheck.Circuit.Wiring;
using WireCheck.Facts.Gather;
using WireCheck.States;

namespace WireCheck.Numbers;

/// <summary>Heat that one part leaves in the box.</summary>
/// <param name="Id">Id of the part or conductor.</param>
/// <param name="Kind">Its kind.</param>
/// <param name="Watts">W.</param>
public sealed record PartHeat(string Id, string Kind, double Watts);

/// <summary>A box warm in one mode.</summary>
/// <param name="Mode">Id of the mode.</param>
/// <param name="Corner">How full the cells are; resistances are the highest.</param>
/// <param name="Lasts">False when a conductor would be too hot for its insulation within seconds.</param>
/// <param name="Charging">The cells take charge.</param>
/// <param name="AmbientCelsius">Air around the box, °C.</param>
/// <param name="InsideCelsius">Air in the box by the heat balance of its walls, °C.</param>
/// <param name="SimpleInsideCelsius">The same by the simple rule, °C.</param>
/// <param name="Watts">Heat made in the box, W.</param>
/// <param name="Parts">What makes it, most first.</param>
public sealed record ModeHeat(
    string Mode, string Corner, bool Lasts, bool Charging, double AmbientCelsius, double InsideCelsius, double SimpleInsideCelsius,
    double Watts, IReadOnlyList<PartHeat> Parts);

/// <summary>A conductor at its warmest.</summary>
/// <param name="Id">Id of the conductor.</param>
/// <param name="Mode">The mode.</param>
/// <param name="Amps">Its largest current there, A.</param>
/// <param name="HeatingAmps">Steady current that heats it as much, A: less where loads pause.</param>
/// <param name="Celsius">Its metal, °C.</param>
/// <param name="LimitCelsius">What its insulation stands, °C.</param>
/// <param name="Ampacity">What the table allows, A; 0 where no table has it.</param>
/// <param name="TimeConstant">Time constant of its warming, s.</param>
public sealed record ConductorWarmth(
    string Id, string Mode, double Amps, double HeatingAmps, double Celsius, double LimitCelsius, double Ampacity, double TimeConstant);

/// <summary>How warm a box gets, without judging it.</summary>
/// <param name="Modes">Lasting modes, in the order of the box.</param>
/// <param name="Conductors">Hottest first.</param>
/// <param name="Joints">Most heat first.</param>
public sealed record HeatNumbers(
    IReadOnlyList<ModeHeat> Modes, IReadOnlyList<ConductorWarmth> Conductors, IReadOnlyList<JointNumbers> Joints)
{
    /// <summary>Heat below this is left out, W.</summary>
    private const double SmallestWatts = 0.01;

    /// <summary>The heat of a solved box; only one mode's air when it is named.</summary>
    public static HeatNumbers Of(SolvedBox box, string? mode = null)
    {
        GatherContext context = new(box);
        return new HeatNumbers(
            [.. context.Heat.Modes.Where(m => mode is null || m.Mode.Id == mode).Select(m => OfMode(m, box.Wiring))],
            [.. box.Wiring.Of<WiredConductor>().Select((w, i) => Warmest(w, i, context))
                .OfType<ConductorWarmth>().OrderByDescending(c => c.Celsius).ThenBy(c => c.Id, StringComparer.Ordinal)],
            JointNumbers.Of(context));
    }

    private static ModeHeat OfMode(HeatedMode mode, BoxWiring wiring) => new(
        mode.Mode.Id, mode.Point.Corner.Words, mode.Lasts, mode.Charging, mode.AmbientCelsius, mode.InsideCelsius, mode.SimpleInsideCelsius,
        mode.InsideWatts,
        [.. wiring.Parts.Select((p, i) => new PartHeat(p.Part.Id, p.Part.Kind, mode.PartWatts[i]))
            .Where(p => p.Watts >= SmallestWatts)
            .OrderByDescending(p => p.Watts).ThenBy(p => p.Id, StringComparer.Ordinal)]);

    private static ConductorWarmth? Warmest(WiredConductor wire, int place, GatherContext context)
    {
        HeatedMode? warmest = null;
        foreach (HeatedMode mode in context.Heat.Modes)
        {
            if (warmest is null || mode.ConductorCelsius[place] > warmest.ConductorCelsius[place])
            {
                warmest = mode;
            }
        }

        return warmest is null ? null : new ConductorWarmth(
            wire.Part.Id, warmest.Mode.Id, Math.Abs(warmest.Point.Amps(wire.Element)), warmest.ConductorAmps[place], warmest.ConductorCelsius[place],
            context.Library.Insulation[wire.Conductor.Insulation.Value].RatedCelsius, context.Ampacities.Amps(wire.Conductor),
            context.Heat.TimeConstants[place]);
    }
}
