using WireCheck.Circuit.Wiring;
using WireCheck.Energy;
using WireCheck.Facts.Gather;
using WireCheck.States;

namespace WireCheck.Numbers;

/// <summary>Energy of one part over a run.</summary>
/// <param name="Id">Id of the part or conductor.</param>
/// <param name="Kind">Its kind.</param>
/// <param name="Given">From cells or a source, J; negative when it was stored.</param>
/// <param name="Used">Used by a load or at outlets, J.</param>
/// <param name="Lost">Turned to heat, J.</param>
public sealed record PartEnergy(string Id, string Kind, double Given, double Used, double Lost);

/// <summary>A mode from full to its end.</summary>
/// <param name="Run">The run.</param>
/// <param name="Given">All energy from cells and sources, J.</param>
/// <param name="Used">All energy used, J.</param>
/// <param name="Lost">All energy lost, J.</param>
/// <param name="Parts">By part, most first.</param>
public sealed record ModeEnergy(ModeRun Run, double Given, double Used, double Lost, IReadOnlyList<PartEnergy> Parts);

/// <summary>How long a box runs and charges, without judging it.</summary>
/// <param name="LabelJoules">Rated capacity times nominal voltage of all banks, J.</param>
/// <param name="CountedFresh">Charge counted on from fresh warm cells, C.</param>
/// <param name="CountedAged">The same from aged cold ones, C.</param>
/// <param name="Modes">Described modes and the idle one, fresh and warm, then aged and cold, each.</param>
/// <param name="Charges">Each source alone from empty to the end of its charge, with nothing else running.</param>
/// <param name="Days">Days in a row, by condition; none when no mode has a time of its own.</param>
public sealed record EnergyNumbers(
    double LabelJoules, double CountedFresh, double CountedAged, IReadOnlyList<ModeEnergy> Modes, IReadOnlyList<ModeEnergy> Charges,
    IReadOnlyList<DayMarch> Days)
{
    /// <summary>Energy below this is left out, as a share of what was given.</summary>
    private const double SmallestShare = 1e-4;

    /// <summary>The energy of a solved box; only one mode when it is named.</summary>
    public static EnergyNumbers Of(SolvedBox box, string? mode = null)
    {
        GatherContext context = new(box);
        EnergyStudy study = context.Energy;
        List<ModeEnergy> modes = [];
        List<ModeEnergy> charges = [];
        foreach (BoxMode each in box.Modes)
        {
            if (mode is not null && each.Id != mode)
            {
                continue;
            }

            bool charging = context.Charging.Modes.Contains(each);
            if (charging || !each.Added || each.Id == States.Modes.Idle || each.Id == mode)
            {
                Add(charging ? charges : modes, study, each, study.FreshAndWarm, box);
                Add(charging ? charges : modes, study, each, study.AgedAndCold, box);
            }
        }

        WiredBank[] banks = [.. box.Wiring.Of<WiredBank>()];
        return new EnergyNumbers(
            banks.Sum(b => EnergyCondition.RatedCoulombs(b) * box.Wiring.Data.NominalVolts(b.Cells)),
            banks.Sum(study.FreshAndWarm.CountedCoulombs), banks.Sum(study.AgedAndCold.CountedCoulombs),
            modes, charges, [.. new[] { study.FreshDays, study.AgedDays }.OfType<DayMarch>()]);
    }

    private static void Add(List<ModeEnergy> list, EnergyStudy study, BoxMode mode, EnergyCondition condition, SolvedBox box)
    {
        if (study.Run(mode, condition) is not { } run)
        {
            return;
        }

        PowerSplit? energy = run.Energy;
        double given = energy?.Given.Sum() ?? 0;
        double most = energy?.Given.Sum(Math.Abs) ?? 0;
        list.Add(new ModeEnergy(
            run, given, energy?.Used.Sum() ?? 0, energy?.Lost.Sum() ?? 0,
            energy is null ? [] :
            [
                .. box.Wiring.Parts.Select((p, i) => new PartEnergy(p.Part.Id, p.Part.Kind, energy.Given[i], energy.Used[i], energy.Lost[i]))
                    .Where(p => Math.Abs(p.Given) + p.Used + p.Lost > SmallestShare * most)
                    .OrderByDescending(p => p.Used + p.Lost).ThenBy(p => p.Id, StringComparer.Ordinal),
            ]));
    }
}
