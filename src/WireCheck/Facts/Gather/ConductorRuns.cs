using WireCheck.Description.Kinds;
using WireCheck.Facts.Catalogue;

namespace WireCheck.Facts.Gather;

/// <summary>
/// Finds conductors that follow one another, or lie side by side, and are worth and bear the same, so that a mistake which all of them
/// share is told once: the first in the order of the description speaks for the others.
/// </summary>
internal static class ConductorRuns
{
    /// <summary>What must be the same to the word.</summary>
    private static readonly Fact[] Words =
    [
        ConductorFacts.Size, ConductorFacts.Insulation, ConductorFacts.IsReturn, ConductorFacts.IsSense, ConductorGuardFacts.ProtectionId,
    ];

    /// <summary>What must be nearly the same number.</summary>
    private static readonly Fact[] Numbers =
    [
        ConductorFacts.Ampacity, ConductorFacts.Current, ConductorGuardFacts.ProtectionRating, ConductorGuardFacts.CurrentWithReturnLost,
        ConductorHeatFacts.Temperature, ConductorHeatFacts.SurgeTemperature,
    ];

    /// <summary>Numbers count as the same within this part.</summary>
    private const double SameWithin = 1e-3;

    /// <summary>Sets who speaks for whom.</summary>
    /// <param name="conductors">The subjects of the conductors, in the order of the description.</param>
    /// <param name="context">Holds the conductors in the same order.</param>
    internal static void Add(IReadOnlyList<FactSubject> conductors, GatherContext context)
    {
        IReadOnlyList<Conductor> wires = context.Pack.Conductors;
        int[] first = new int[wires.Count];
        for (int i = 0; i < wires.Count; i++)
        {
            first[i] = i;
        }

        for (int i = 0; i < wires.Count; i++)
        {
            for (int j = i + 1; j < wires.Count; j++)
            {
                if (first[i] != first[j] && Meet(wires[i], wires[j]) && Alike(conductors[i], conductors[j]))
                {
                    Join(first, first[i], first[j]);
                }
            }
        }

        for (int i = 0; i < first.Length; i++)
        {
            if (first[i] != i)
            {
                conductors[i].Set(ConductorFacts.SameAs, conductors[first[i]].Id);
                continue;
            }

            List<string> others = [];
            for (int j = i + 1; j < first.Length; j++)
            {
                if (first[j] == i)
                {
                    others.Add(conductors[j].Id);
                }
            }

            conductors[i].SetNames(ConductorFacts.Alike, others);
        }
    }

    private static void Join(int[] first, int one, int other)
    {
        (int low, int high) = one < other ? (one, other) : (other, one);
        for (int i = 0; i < first.Length; i++)
        {
            first[i] = first[i] == high ? low : first[i];
        }
    }

    /// <summary>They end at the same part.</summary>
    private static bool Meet(Conductor a, Conductor b) =>
        a.To.PartId == b.From.PartId || a.From.PartId == b.To.PartId || a.From.PartId == b.From.PartId || a.To.PartId == b.To.PartId;

    private static bool Alike(FactSubject a, FactSubject b)
    {
        foreach (Fact fact in Words)
        {
            if (!Equals(a.Find(fact.Name)?.Value, b.Find(fact.Name)?.Value))
            {
                return false;
            }
        }

        foreach (Fact fact in Numbers)
        {
            double? x = (double?)a.Find(fact.Name)?.Value;
            double? y = (double?)b.Find(fact.Name)?.Value;
            if (x.HasValue != y.HasValue || (x is { } one && y is { } other && Math.Abs(one - other) > SameWithin * Math.Abs(one)))
            {
                return false;
            }
        }

        return true;
    }
}
