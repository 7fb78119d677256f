using WireCheck.Circuit.Topology;
using WireCheck.Circuit.Wiring;
using WireCheck.Description;
using WireCheck.Description.Kinds;
using WireCheck.Knowledge;
using WireCheck.Physics;
using WireCheck.Quantities;
using WireCheck.States;

namespace WireCheck.Standby;

/// <summary>How long a full box keeps, in two stages.</summary>
/// <param name="ToCutOff">From full until the BMS opens or the cells reach the bottom of their window, s; infinite when nothing draws.</param>
/// <param name="ToDamage">From there until a cell is harmed for good, with only what draws past the open BMS, s.</param>
/// <param name="SelfDischargeAmps">What the cells lose by themselves, told as a current of the same effect, A.</param>
/// <param name="AmpsAfterCutOff">What still leaves the cells with the BMS open, A.</param>
/// <param name="UsableShare">Part of the capacity on the label that is counted on, 0 to 1.</param>
public sealed record ShelfLife(double ToCutOff, double ToDamage, double SelfDischargeAmps, double AmpsAfterCutOff, double UsableShare);

/// <summary>
/// Works out the shelf life: the usable charge above the cut-off over the state's current and self-discharge, then the charge
/// below it over what goes on drawing. Both currents are taken as steady, which for standby currents they are. Cells lose by
/// themselves as at the middle of the ambient, over a year between its ends.
/// </summary>
internal sealed class ShelfClock(BoxWiring wiring)
{
    private readonly StateSolver _solver = new(wiring);
    private readonly WiringGraph _graph = WiringGraph.Of(wiring);

    private Library Library => wiring.Data.Library;

    /// <summary>The bank that is down first decides each stage.</summary>
    internal ShelfLife Of(OperatingPoint point)
    {
        double toCutOff = double.PositiveInfinity;
        double toDamage = double.PositiveInfinity;
        double own = 0;
        double after = 0;
        double usableShare = wiring.Data.Assumed("usable_capacity");
        foreach (WiredBank bank in wiring.Of<WiredBank>())
        {
            Cells cells = bank.Cells;
            Chemistry chemistry = Library.Chemistries[cells.Chemistry.Value];
            double cutOff = (BankBms.Of(wiring, _graph, bank)?.Bms.CellCutoff.Value.From ?? cells.Window.Value.From).Volts;
            double left = chemistry.ChargeAt(cutOff);
            double full = Coulombs(cells);
            double usable = full * usableShare;
            double share = SelfShare(cells);
            toCutOff = Math.Min(toCutOff, SelfDischarge.Lasts((1 - left) * usable, AmpsOf(bank, point), share, full));
            OperatingPoint? open = AfterCutOff(point, left);
            double past = open is null ? 0 : AmpsOf(bank, open);
            toDamage = Math.Min(toDamage, SelfDischarge.Lasts(Reserve(chemistry, cutOff) * usable, past, share, full));
            own += share * full;
            after += past;
        }

        return new ShelfLife(toCutOff, toDamage, own, after, usableShare);
    }

    /// <summary>Charge of a full bank, C.</summary>
    private static double Coulombs(Cells cells) => cells.Capacity.Value.AmpereHours * 3600 * cells.Parallel.Value;

    /// <summary>Share of its charge that a cell loses by itself in a second, 1/s.</summary>
    private double SelfShare(Cells cells)
    {
        Quantities.Range<UnitsNet.Temperature> ambient = wiring.Pack.Surroundings.Ambient.Value;
        double celsius = (ambient.From.DegreesCelsius + ambient.To.DegreesCelsius) / 2;
        return cells.SelfDischarge.Value.PerDay / Durations.SecondsPerDay * SelfDischarge.Factor(
            celsius, wiring.Data.Assumed("self_discharge_reference"), wiring.Data.Assumed("self_discharge_doubling"));
    }

    /// <summary>
    /// Current of the group that is drawn from most, A. Strings side by side even out over weeks: each is taken to give by
    /// its charge.
    /// </summary>
    private double AmpsOf(WiredBank bank, OperatingPoint point)
    {
        bool[] beside = Reach.From(_graph, wiring.Node(bank.Part.Id, "+"), _ => true);
        double amps = 0;
        double charge = 0;
        foreach (WiredBank other in wiring.Of<WiredBank>())
        {
            if (beside[wiring.Node(other.Part.Id, "+")])
            {
                amps += GroupAmps.MostOut(other, point.Solution);
                charge += Coulombs(other.Cells);
            }
        }

        return Math.Max(0, amps) * Coulombs(bank.Cells) / charge;
    }

    private OperatingPoint? AfterCutOff(OperatingPoint point, double stateOfCharge)
    {
        Corner corner = point.Corner with { Conditions = point.Corner.Conditions with { StateOfCharge = stateOfCharge } };
        OperatingPoint open = _solver.Solve(point.Mode, corner, bmsConducts: false);
        return open.Solution.Outcome == Circuit.Solving.SolveOutcome.Solved ? open : null;
    }

    /// <summary>
    /// Part of the capacity between the cut-off and the voltage at which a cell is lost. The table of rested voltages ends
    /// where a cell counts as empty; what is below comes from an assumption of the library.
    /// </summary>
    private double Reserve(Chemistry chemistry, double cutOff)
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
            : wiring.Data.Assumed("charge_below_empty") * Math.Min(1, (Math.Min(cutOff, tableEnds) - lost) / (tableEnds - lost));
        return inTable + below;
    }
}
