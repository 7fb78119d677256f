using WireCheck.Description;
using WireCheck.Facts;
using WireCheck.Facts.Gather;
using WireCheck.Findings;

namespace WireCheck.Sheets;

/// <summary>Makes all sheets of a solved box.</summary>
internal static class SheetMaker
{
    internal static SheetBook Make(string file, GatherContext context, FactTable facts, FindingList findings, IReadOnlyList<string> cautions)
    {
        Pack pack = context.Pack;
        BenchBox bench = new(pack, context.Library);
        return new SheetBook(
            file,
            pack.Title.Value,
            [
                VerdictSheet.Of(findings),
                CutList.Pieces(pack),
                CutList.Needed(pack),
                PartsList.Ends(pack),
                FuseSchedule.Of(context, facts),
                new PartsList(pack, context.Library).Parts(),
                WiringList.Of(pack),
                Labels.Sheet(pack),
            ],
            [
                new Sheet("cautions", "Cautions", [], ["before you touch it"], [.. cautions.Select(c => (IReadOnlyList<string>)[c])]),
                new ChecksBeforePower(pack, context.Library).Make(),
                new FirstConnection(context, bench).Make(),
                ExpectedStandby.Of(bench),
                ExpectedVoltages.Of(bench),
                JointMillivolts.Of(bench, context),
            ])
        {
            Banner = VerdictSheet.Banner(findings.Counts),
            NotToBeBuilt = findings.Counts.Verdict is Verdict.Dangerous or Verdict.Faulty,
        };
    }
}
