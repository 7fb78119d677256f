using WireCheck.Circuit.Wiring;
using WireCheck.Knowledge;

namespace WireCheck.Energy;

/// <summary>
/// Open-circuit voltage of a cell by its charge, a little beyond both ends of the table of rested cells: below empty it falls on a
/// straight line to the voltage that harms it, above full it rises to the top of its window. How much charge lies there comes
/// from two assumptions of the library.
/// </summary>
internal sealed class CellVoltage
{
    private readonly double[] _charge;
    private readonly double[] _volts;

    internal CellVoltage(WiredBank bank, WiringData data)
    {
        Chemistry chemistry = data.Library.Chemistries[bank.Cells.Chemistry.Value];
        IReadOnlyList<(double X, double Y)> points = chemistry.OpenCircuit.Points;
        int count = points.Count + 2;
        _charge = new double[count];
        _volts = new double[count];
        for (int i = 0; i < points.Count; i++)
        {
            (double percent, double volts) = points[i];
            (_charge[i + 1], _volts[i + 1]) = (percent / 100, volts);
        }

        _charge[0] = _charge[1] - data.Assumed("charge_below_empty");
        _volts[0] = Math.Min(chemistry.Voltages.AbsoluteLowest, _volts[1]);
        _charge[^1] = _charge[^2] + data.Assumed("charge_above_full");
        _volts[^1] = Math.Max(bank.Cells.Window.Value.To.Volts, _volts[^2]);
    }

    /// <summary>Charge at which the straight pieces meet, rising; 0 is empty and 1 full.</summary>
    internal IReadOnlyList<double> Corners => _charge;

    /// <summary>Lowest charge of the line, a little below 0.</summary>
    internal double Lowest => _charge[0];

    /// <summary>Highest charge of the line, a little above 1.</summary>
    internal double Highest => _charge[^1];

    /// <summary>Volts at a charge; held at both ends.</summary>
    internal double At(double charge)
    {
        int i = PieceOf(charge, _charge);
        double part = Math.Clamp((charge - _charge[i]) / (_charge[i + 1] - _charge[i]), 0, 1);
        return _volts[i] + (part * (_volts[i + 1] - _volts[i]));
    }

    /// <summary>The charge at which a rested cell has that voltage; an end where it never has.</summary>
    internal double ChargeAt(double volts)
    {
        int i = PieceOf(volts, _volts);
        double rise = _volts[i + 1] - _volts[i];
        return rise > 0
            ? _charge[i] + (Math.Clamp((volts - _volts[i]) / rise, 0, 1) * (_charge[i + 1] - _charge[i]))
            : _charge[i];
    }

    private static int PieceOf(double x, double[] rising)
    {
        int i = 0;
        while (i < rising.Length - 2 && x > rising[i + 1])
        {
            i++;
        }

        return i;
    }
}
