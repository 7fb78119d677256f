using UnitsNet;
using WireCheck.Description.Kinds;
using WireCheck.Quantities;
using WireCheck.Text;

namespace WireCheck.Description.Reader;

/// <summary>
/// Finds values of a part that cannot both be true. They come of a swap in which one value was forgotten, and what is judged
/// by the forgotten one would be judged too well.
/// </summary>
internal static class Contradictions
{
    internal static void Check(ProblemList problems, Pack pack)
    {
        foreach (Inverter inverter in pack.Of<Inverter>())
        {
            CheckSurge(problems, inverter.Id, inverter.Power, inverter.Surge);
        }

        foreach (Load load in pack.Of<Load>().Where(l => l.Power is not null))
        {
            CheckSurge(problems, load.Id, load.Power!, load.Surge);
        }

        foreach (Panel panel in pack.Of<Panel>())
        {
            CheckCurve(problems, panel);
        }
    }

    /// <summary>The curve of a panel falls: at its maximum-power point it has less voltage than open and less current than shorted.</summary>
    private static void CheckCurve(ProblemList problems, Panel panel)
    {
        double volts = panel.MaximumPowerVoltage.Value.Volts / panel.OpenCircuit.Value.Volts;
        double amps = panel.MaximumPowerCurrent.Value.Amperes / panel.ShortCircuit.Value.Amperes;
        if (volts >= 1)
        {
            problems.Add(Written(panel.MaximumPowerVoltage, panel.OpenCircuit), InputMessages.PanelVoltage(panel));
        }

        if (amps >= 1)
        {
            problems.Add(Written(panel.MaximumPowerCurrent, panel.ShortCircuit), InputMessages.PanelCurrent(panel));
        }

        // Below the straight line between the two ends no cell is that poor.
        if (volts < 1 && amps < 1 && volts + amps <= 1)
        {
            problems.Add(Written(panel.MaximumPowerVoltage, panel.OpenCircuit), InputMessages.PanelPower(panel));
        }
    }

    /// <summary>Where the builder can mend it: at the first of two values that is written.</summary>
    private static Position Written<TFirst, TSecond>(Given<TFirst> first, Given<TSecond> second) => first.Assumed ? second.Position : first.Position;

    private static void CheckSurge(ProblemList problems, string id, Given<Power> steady, Surge? surge)
    {
        if (surge is null || surge.Power.Value >= steady.Value)
        {
            return;
        }

        problems.Add(
            Written(surge.Power, steady),
            InputMessages.SurgeBelowPower(id, surge.Power.Value.ToWatts(), steady.Value.ToWatts(), surge.Power.Assumed));
    }
}
