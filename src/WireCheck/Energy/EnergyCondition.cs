using WireCheck.Circuit.Wiring;
using WireCheck.Description.Kinds;
using WireCheck.Knowledge;
using WireCheck.States;

namespace WireCheck.Energy;

/// <summary>
/// In what state the cells are while a runtime is reckoned: fresh and warm with the lowest resistances, or aged and as cold
/// as the air around the box gets, with the highest. In use the box warms itself from there (<see cref="RunHeat"/>).
/// </summary>
public sealed class EnergyCondition
{
    private readonly BoxWiring _wiring;
    private readonly string _usable;
    private HeatLoop? _loop;

    private EnergyCondition(SolvedBox box, string words, bool agedAndCold, string usable)
    {
        _wiring = box.Wiring;
        _usable = usable;
        Words = words;
        IsAgedAndCold = agedAndCold;
        Corner = CornerOf(box, agedAndCold);
    }

    /// <summary>As it is printed.</summary>
    public string Words { get; }

    /// <summary>True for aged cold cells.</summary>
    public bool IsAgedAndCold { get; }

    /// <summary>The corner whose resistances and temperatures are taken.</summary>
    public Corner Corner { get; }

    /// <summary>Fresh warm cells, from which the larger usable part is taken.</summary>
    public static EnergyCondition FreshAndWarm(SolvedBox box) => new(box, "fresh and warm", false, "usable_capacity");

    /// <summary>Aged cells at the cold end of the ambient, from which the smaller usable part is taken.</summary>
    public static EnergyCondition AgedAndCold(SolvedBox box) => new(box, "aged and cold", true, "usable_capacity_aged");

    /// <summary>
    /// Charge that is counted on, C, from a full bank to an empty one: rated capacity of a group, times the usable part, times the
    /// part left at the cells' temperature; a heater keeps them from being colder than it is set to.
    /// </summary>
    public double CountedCoulombs(WiredBank bank)
    {
        Cells cells = bank.Cells;
        double celsius = Math.Max(Corner.Conditions.CellCelsius, cells.HeatedTo?.Value.DegreesCelsius ?? double.NegativeInfinity);
        Chemistry chemistry = _wiring.Data.Library.Chemistries[cells.Chemistry.Value];
        return RatedCoulombs(bank) * _wiring.Data.Assumed(_usable) * chemistry.CapacityByTemperature.At(celsius);
    }

    /// <summary>Rated charge of a group of parallel cells, C.</summary>
    public static double RatedCoulombs(WiredBank bank) => bank.Cells.Capacity.Value.AmpereHours * 3600 * bank.Columns;

    /// <summary>Settles circuit and heat of the box in the air of this condition, in which its cells begin.</summary>
    internal HeatLoop Loop(StateSolver solver) => _loop ??= new HeatLoop(_wiring, solver, Corner.Conditions.CellCelsius);

    private static Corner CornerOf(SolvedBox box, bool highest)
    {
        foreach (Corner corner in box.Corners)
        {
            if (corner.Charge == Charge.Nominal && corner.HighestResistance == highest)
            {
                return corner;
            }
        }

        return box.Corners[0];
    }
}
