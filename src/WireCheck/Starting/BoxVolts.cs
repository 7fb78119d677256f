using WireCheck.Knowledge;

namespace WireCheck.Starting;

/// <summary>Voltages of the bank, and the assumptions a new box is reckoned with.</summary>
internal sealed class BoxVolts(StartingAnswers answers, Library library)
{
    /// <summary>Nominal voltage of the outlets.</summary>
    internal const int Outlets = 12;

    private readonly CellVoltages _cell = library.Chemistries["lfp"].Voltages;

    /// <summary>Voltage at which currents are reckoned and the inverter cuts off.</summary>
    internal double Low => Of("starting_cell_low");

    /// <summary>Voltage at which the BMS opens.</summary>
    internal double Empty => answers.Series * _cell.Lowest;

    /// <summary>End of the charge.</summary>
    internal double Full => answers.Series * _cell.Highest;

    /// <summary>A/m² of copper bars in a closed box.</summary>
    internal double BarDensity => library.Busbars.BoxedIn;

    /// <summary>The bank's voltage for an assumed voltage of a cell.</summary>
    internal double Of(string name) => answers.Series * Assume(name);

    /// <summary>An assumption by its name.</summary>
    internal double Assume(string name) => library.Assumptions[name].Value;
}
