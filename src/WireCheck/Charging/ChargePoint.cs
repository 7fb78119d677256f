using WireCheck.Circuit.Elements;
using WireCheck.Circuit.Wiring;
using WireCheck.States;

namespace WireCheck.Charging;

/// <summary>A source at a solved point of a charge.</summary>
/// <param name="Id">The charger, vehicle or panel.</param>
/// <param name="Amps">What it gives, A.</param>
/// <param name="Volts">Between its poles, V.</param>
/// <param name="Limit">What keeps it from giving more.</param>
public sealed record SourceCharge(string Id, double Amps, double Volts, ChargeLimit Limit);

/// <summary>A bank at a solved point of a charge.</summary>
/// <param name="Id">The bank.</param>
/// <param name="Amps">Current into it, A; negative when it gives.</param>
/// <param name="Volts">Between its terminals, V.</param>
/// <param name="CellAmps">Largest current into one of its cells, A.</param>
/// <param name="CellVolts">Highest voltage of one of its cells, V.</param>
public sealed record BankCharge(string Id, double Amps, double Volts, double CellAmps, double CellVolts)
{
    /// <summary>A bank at a solved point.</summary>
    public static BankCharge Of(BoxWiring wiring, WiredBank bank, OperatingPoint point)
    {
        double cellAmps = double.NegativeInfinity;
        double cellVolts = double.NegativeInfinity;
        foreach (Source cell in bank.CellElements)
        {
            cellAmps = Math.Max(cellAmps, point.Amps(cell));
            cellVolts = Math.Max(cellVolts, point.Volts(cell.A, cell.B));
        }

        string id = bank.Part.Id;
        return new BankCharge(id, AmpsInto(bank, point), point.Volts(wiring.Node(id, "+"), wiring.Node(id, "-")), cellAmps, cellVolts);
    }

    /// <summary>Current into a bank, A; negative when it gives.</summary>
    public static double AmpsInto(WiredBank bank, OperatingPoint point) =>
        GroupAmps.Into(bank, bank.Cells.Series.Value - 1, point.Solution);

    /// <summary>Current into all banks together, A.</summary>
    public static double AmpsIntoAll(IReadOnlyList<WiredBank> banks, OperatingPoint point)
    {
        double sum = 0;
        foreach (WiredBank bank in banks)
        {
            sum += AmpsInto(bank, point);
        }

        return sum;
    }
}

/// <summary>A solved point in which something charges and no load runs.</summary>
/// <param name="Point">The point.</param>
/// <param name="Sources">The sources that are plugged or wired and give power in its mode.</param>
/// <param name="Banks">Every bank.</param>
public sealed record ChargePoint(OperatingPoint Point, IReadOnlyList<SourceCharge> Sources, IReadOnlyList<BankCharge> Banks);
