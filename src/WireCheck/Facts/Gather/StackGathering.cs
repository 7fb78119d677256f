using WireCheck.Circuit.Topology;
using WireCheck.Circuit.Wiring;
using WireCheck.Facts.Catalogue;

namespace WireCheck.Facts.Gather;

/// <summary>Gathers how a bank's cells are held and joined.</summary>
internal static class StackGathering
{
    /// <summary>Sets the facts of one bank.</summary>
    internal static void Add(WiredBank bank, FactSubject subject, GatherContext context)
    {
        bool packaged = bank.Cells.Packaged?.Value == true;
        subject.Set(StackFacts.CellsInBank, (double)bank.Cells.Series.Value * bank.Columns);
        subject.Set(StackFacts.Packaged, packaged);
        subject.Set(StackFacts.HasBms, packaged || Banks.BmsOf(context, bank) is not null);
        if (!packaged && Banks.BmsOf(context, bank) is null)
        {
            subject.SetWord(StackFacts.TurnedBms, Banks.TurnedBmsAt(context, bank)?.Part.Id);
        }

        if (!packaged && WatchedCells.InsteadOf(bank, context) is { } instead)
        {
            subject.Set(StackFacts.WatchedInstead, instead.Part.Id);
            subject.SetWord(StackFacts.WatchingBms, Banks.BmsOf(context, instead)?.Part.Id);
        }

        if (bank.Cells.Separators is { } separators)
        {
            subject.Set(StackFacts.Separators, separators.Value);
        }

        if (bank.Cells.Clamp is { } clamp)
        {
            subject.Set(StackFacts.Clamp, clamp.Value);
        }

        subject.SetNumber(StackFacts.MaxSeries, bank.Cells.MaxSeries?.Value);
        subject.Set(StackFacts.BatteriesInSeries, (double)context.Stacks.BatteriesInSeries(bank));
        AddClashes(bank.Part.Id, subject, context.Stacks.Clashes);
    }

    private static void AddClashes(string id, FactSubject subject, IReadOnlyList<LevelClash> clashes)
    {
        List<string> own = [];
        List<string> others = [];
        foreach (LevelClash clash in clashes)
        {
            if (clash.Bank == id || clash.OtherBank == id)
            {
                (clash.Bank == clash.OtherBank ? own : others)
                    .Add($"{clash.Bank}.{clash.Terminal} with {clash.OtherBank}.{clash.OtherTerminal}");
            }
        }

        subject.SetNames(StackFacts.ShortedTerminals, own);
        subject.SetNames(StackFacts.JoinedAtOtherCount, others);
    }
}
