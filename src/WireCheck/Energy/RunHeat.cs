using WireCheck.Circuit.Wiring;
using WireCheck.States;

namespace WireCheck.Energy;

/// <summary>
/// How warm a box is while it runs in a mode: wires as warm as they settle, cells as warm as they are on the average over the run. They begin
/// as warm as the air around and follow that in the box, slowed by the heat they store. The charge counted on stays that of the
/// bank as it begins; what a bank that has warmed gives beyond it is left as a reserve.
/// </summary>
/// <param name="InsideCelsius">Air in the box once it has settled, °C.</param>
/// <param name="CellCelsius">Cells on the average over the run, °C.</param>
/// <param name="ConductorCelsius">Metal of each conductor, °C, in the order of the wired conductors.</param>
internal sealed record RunHeat(double InsideCelsius, double CellCelsius, double[] ConductorCelsius)
{
    /// <summary>Less heat than this warms nothing by a noticeable degree, W.</summary>
    private const double NoticeableWatts = 0.01;

    /// <summary>The warmth of a run; null when the mode has no solution half full.</summary>
    /// <param name="box">The box.</param>
    /// <param name="loop">Settles circuit and heat in the air of the condition.</param>
    /// <param name="condition">In what state the cells are.</param>
    /// <param name="mode">The mode.</param>
    /// <param name="seconds">How long it runs, s; 0 or more.</param>
    internal static RunHeat? Of(SolvedBox box, HeatLoop loop, EnergyCondition condition, BoxMode mode, double seconds)
    {
        if (loop.Settle(mode, condition.Corner) is not { Lasts: true } heated)
        {
            return null;
        }

        double rise = heated.InsideCelsius - heated.AmbientCelsius;
        double followed = rise <= 0 || heated.InsideWatts < NoticeableWatts
            ? 0
            : MeanFollowed(seconds, HeatStored(box.Wiring) * rise / heated.InsideWatts);
        return new RunHeat(heated.InsideCelsius, heated.AmbientCelsius + (followed * rise), heated.ConductorCelsius);
    }

    /// <summary>Part of a step that a body follows on the average over a time: 1 − (τ/t)(1 − e^(−t/τ)).</summary>
    /// <param name="seconds">t, s, 0 or more.</param>
    /// <param name="timeConstant">τ, s, 0 or more.</param>
    internal static double MeanFollowed(double seconds, double timeConstant)
    {
        if (seconds <= 0 || timeConstant <= 0)
        {
            return seconds <= 0 ? 0 : 1;
        }

        double part = seconds / timeConstant;
        return part < SmallPart ? part / 2 : 1 - ((1 - Math.Exp(-part)) / part);
    }

    /// <summary>Below this part the first term of the series is the whole to six digits.</summary>
    private const double SmallPart = 1e-6;

    /// <summary>Heat that all cells store, J/K, by their rated energy.</summary>
    private static double HeatStored(BoxWiring wiring)
    {
        double joules = 0;
        foreach (WiredBank bank in wiring.Of<WiredBank>())
        {
            joules += EnergyCondition.RatedCoulombs(bank) * wiring.Data.NominalVolts(bank.Cells);
        }

        return joules / SecondsPerHour * wiring.Data.Assumed("cell_heat_per_energy");
    }

    private const double SecondsPerHour = 3600;
}
