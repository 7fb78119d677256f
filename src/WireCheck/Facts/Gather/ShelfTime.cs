using WireCheck.Circuit.Wiring;
using WireCheck.Description.Kinds;
using WireCheck.Facts.Catalogue;
using WireCheck.Knowledge;
using WireCheck.States;

namespace WireCheck.Facts.Gather;

/// <summary>
/// How long a full box keeps on the shelf: the charge above the cut-off over the largest current of the stored state and the
/// cells' self-discharge, then the charge below the cut-off over what goes on drawing past the open BMS. Both currents are
/// taken as steady, which for standby currents they are; the largest of all charges is taken.
/// </summary>
internal static class ShelfTime
{
    private const double SecondsPerDay = 86400;

    /// <summary>Sets the two times; the bank that is down first decides. Banks share the current by their charge.</summary>
    internal static void Add(FactSubject subject, GatherContext context)
    {
        if (context.States.Stored is not { } stored)
        {
            return;
        }

        double all = Banks.CoulombsOfAll(context);
        double before = Math.Max(0, Banks.AmpsLeavingAll(context.Wiring, stored));
        foreach (WiredBank bank in context.Wiring.Of<WiredBank>())
        {
            Cells cells = bank.Cells;
            WiredBms? bms = Banks.BmsOf(context, bank);
            double cutOff = (bms?.Bms.CellCutoff.Value.From ?? cells.Window.Value.From).Volts;
            double charge = Banks.Coulombs(cells);
            double ownLoss = cells.SelfDischarge.Value.PerDay / SecondsPerDay * charge;
            Chemistry chemistry = context.Library.Chemistries[cells.Chemistry.Value];
            double left = chemistry.ChargeAt(cutOff);
            double toCutOff = (1 - left) * charge / ((before * charge / all) + ownLoss);
            double after = AmpsAfterCutOff(left, context);
            double toDamage = Reserve(chemistry, cutOff, context) * charge / ((after * charge / all) + ownLoss);
            KeepShorter(subject, PackFacts.TimeToCutOff, toCutOff);
            KeepShorter(subject, PackFacts.TimeFromCutOffToDamage, toDamage);
        }
    }

    private static double AmpsAfterCutOff(double stateOfCharge, GatherContext context) =>
        context.States.StoredAt(stateOfCharge, bmsConducts: false) is { } point
            ? Math.Max(0, Banks.AmpsLeavingAll(context.Wiring, point))
            : 0;

    /// <summary>
    /// Part of the capacity between the cut-off and the voltage at which a cell is lost. The table of rested voltages ends
    /// where a cell counts as empty; what is below comes from an assumption of the library.
    /// </summary>
    private static double Reserve(Chemistry chemistry, double cutOff, GatherContext context)
    {
        double lost = chemistry.Voltages.AbsoluteLowest;
        if (cutOff <= lost)
        {
            return 0;
        }

        double inTable = Math.Max(0, chemistry.ChargeAt(cutOff) - chemistry.ChargeAt(lost));
        double tableEnds = chemistry.OpenCircuit.Points[0].Y;
        double below = lost >= tableEnds
            ? 0
            : context.Data.Assumed("charge_below_empty") * Math.Min(1, (Math.Min(cutOff, tableEnds) - lost) / (tableEnds - lost));
        return inTable + below;
    }

    private static void KeepShorter(FactSubject subject, Fact fact, double seconds)
    {
        if (double.IsFinite(seconds) && (subject.Find(fact.Name) is not { } held || seconds < (double)held.Value))
        {
            subject.Set(fact, seconds);
        }
    }
}
