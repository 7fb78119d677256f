using WireCheck.Description;
using WireCheck.Description.Kinds;
using WireCheck.Facts;
using WireCheck.Facts.Catalogue;
using WireCheck.Facts.Gather;
using WireCheck.Quantities;

namespace WireCheck.Sheets;

/// <summary>Every fuse and breaker, what it guards and what it carries.</summary>
internal static class FuseSchedule
{
    internal static Sheet Of(GatherContext context, FactTable facts) => new(
        "fuse-schedule",
        "Fuse schedule",
        ["Fit no other rating and no other class. The largest current is that of any lasting mode; what it must guard is the weakest conductor behind it."],
        ["fuse", "rating", "class", "volts", "breaking", "marked", "wires at it", "guards", "good for", "largest current", "in mode", "most that a short drives"],
        [.. context.Pack.Of<Fuse>().Select(f => Row(f, facts.Subjects.First(s => s.Id == f.Id && s.Kind == f.Kind), context))]);

    private static IReadOnlyList<string> Row(Fuse fuse, FactSubject subject, GatherContext context)
    {
        OvercurrentFacts names = OvercurrentFacts.Of(fuse.Kind);
        FactValue? current = subject.Find(names.Current.Name);
        return
        [
            fuse.Id,
            FormattableString.Invariant($"{fuse.Rating.Value.Amperes:0.##} A"),
            fuse.Class.Value,
            FormattableString.Invariant($"{fuse.Volts.Value.Volts:0.##} V"),
            subject.Find(names.BreakingCapacity.Name)?.Value is double breaking ? QuantityText.WithPrefix(breaking, "A") : "",
            fuse.Marked?.Value ?? "",
            string.Join(", ", At(fuse, context.Pack)),
            subject.Find(names.WeakestConductor.Name)?.Value as string ?? "",
            subject.Find(names.WeakestAmpacity.Name)?.Value is double ampacity ? SheetWords.Amps(ampacity) : "",
            current?.Value is double amps ? SheetWords.Amps(amps) : "",
            current?.Place?.Mode ?? "",
            subject.Find(names.FaultCurrent.Name)?.Value is double fault ? SheetWords.Amps(fault) : "",
        ];
    }

    /// <summary>Wires at its terminals.</summary>
    private static IEnumerable<string> At(Fuse fuse, Pack pack) =>
        pack.Conductors.Where(c => c.From.PartId == fuse.Id || c.To.PartId == fuse.Id).Select(c => $"{c.Id} ({c.Size.Value})");
}
