using WireCheck.Circuit.Wiring;
using WireCheck.Description;
using WireCheck.Facts.Catalogue;
using WireCheck.Knowledge;
using WireCheck.States;
using WireCheck.Switching;

namespace WireCheck.Facts.Gather;

/// <summary>Gathers everything that is known about a box once it is solved.</summary>
public static class BoxFacts
{
    /// <summary>Solves a box in every state and gathers its facts.</summary>
    public static FactTable Gather(Pack pack) => Gather(Solve(pack));

    /// <summary>Solves a box in every state, ready to gather from.</summary>
    public static GatherContext Solve(Pack pack) => Solve(pack, new WiringData(Library.Embedded));

    /// <summary>The same with other answers of the library, such as those for a box built at an end of its tolerances.</summary>
    public static GatherContext Solve(Pack pack, WiringData data)
    {
        // The states of the switches have a circuit of their own, so they are worked out on another thread meanwhile.
        Task<SwitchingStudy> switching = Task.Run(() => SwitchingStudy.Of(pack, data));
        return new GatherContext(SolvedBox.Solve(pack, data)) { BegunSwitching = switching };
    }

    /// <summary>Gathers the facts of a solved box: the pack, each part and conductor, each stud with several lugs, each reading.</summary>
    public static FactTable Gather(SolvedBox box) => Gather(new GatherContext(box));

    /// <summary>The same from a box that others gather from too.</summary>
    public static FactTable Gather(GatherContext context)
    {
        SolvedBox box = context.Box;
        List<FactSubject> subjects = [];
        foreach (Part part in box.Pack.Parts.Concat(box.Pack.Conductors))
        {
            FactSubject subject = new(part.Kind, part.Id, part.Position);
            if (Gatherers.ByType.TryGetValue(part.GetType(), out IGatherer? gatherer))
            {
                gatherer.Gather(part, subject, context);
            }

            ConnectionGathering.Gather(part, subject, context);
            StandbyGathering.Gather(part, subject, context);
            PolarityGathering.Gather(part, subject, context);
            ChargesBank.Gather(part, subject, context);
            FaultGathering.Gather(part, subject, context);
            SwitchingGathering.Gather(part, subject, context);

            subjects.Add(subject);
        }

        ConductorRuns.Add(subjects.GetRange(subjects.Count - box.Pack.Conductors.Count, box.Pack.Conductors.Count), context);
        subjects.AddRange(TerminalGatherer.Gather(context));
        subjects.AddRange(ReadingGatherer.Gather(context));
        FactSubject pack = new(FactCatalogue.PackKind, FactCatalogue.PackKind, box.Pack.Title.Position);
        PackGathering.Gather(pack, context);
        return new FactTable(pack, subjects);
    }
}
