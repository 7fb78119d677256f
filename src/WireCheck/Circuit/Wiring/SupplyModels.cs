using WireCheck.Circuit.Elements;
using WireCheck.Description;
using WireCheck.Description.Kinds;
using WireCheck.Quantities;

namespace WireCheck.Circuit.Wiring;

/// <summary>The models of semiconductors and supplies whose data sheets give two or three numbers: what fills in the rest.</summary>
public static class SupplyModels
{
    // What makes a curve a silicon rectifier's, a Schottky diode's or a transistor's driven as a diode, and the part of
    // the rated drop that is plain resistance: shapes of the models, fitted through the figures of the description.
    private const double SiliconIdeality = 1.8;
    private const double SchottkyIdeality = 1.05;
    private const double DrivenIdeality = 0.05;
    private const double SeriesShare = 0.3;
    private const double SmallestOhms = 1e-6;

    /// <summary>The diode across a relay coil: a small silicon rectifier.</summary>
    public static DiodeModel ClampDiode { get; } = DiodeModel.Fit(0.9, 1, SiliconIdeality, SeriesShare);

    /// <summary>A silicon rectifier of which only the drop, V, at a rated current, A, is known.</summary>
    public static DiodeModel Rectifier(double dropVolts, double ratedAmps) =>
        DiodeModel.Fit(dropVolts, ratedAmps, SiliconIdeality, SeriesShare);

    /// <summary>The junction of a described diode.</summary>
    public static DiodeModel Junction(Description.Kinds.Diode diode)
    {
        double ideality = diode.Style.Value switch
        {
            DiodeStyle.Schottky => SchottkyIdeality,
            DiodeStyle.Silicon => SiliconIdeality,
            _ => DrivenIdeality,
        };
        return DiodeModel.Fit(diode.Forward.Value.Volts, diode.Rated.Value.Amperes, ideality, SeriesShare);
    }

    /// <summary>Fall of a regulated output from no load to its limit, as a resistance, Ω.</summary>
    public static double SlopeOhms(double volts, double limitAmps, WiringData data) => data.Assumed("regulation") * volts / limitAmps;

    /// <summary>What a charger's input can give at its output, W; infinite for mains and for a drawn vehicle.</summary>
    public static double InputPowerLimitWatts(Charger charger, Pack pack)
    {
        double efficiency = charger.Efficiency?.Value.DecimalFractions ?? 1;
        Panel[] panels = charger.From is { } from && pack.Find(from.Value) is Panel named ? [named]
            : charger.ChargerKind.Value == ChargerKind.Solar ? [.. pack.Of<Panel>()]
            : [];
        if (panels.Length > 0)
        {
            return efficiency * panels.Sum(p => p.MaximumPowerVoltage.Value.Volts * p.MaximumPowerCurrent.Value.Amperes);
        }

        return charger.From is { } feeder && pack.Find(feeder.Value) is Vehicle vehicle
            ? efficiency * vehicle.Voltage.Value.To.Volts * vehicle.Fuse.Value.Amperes
            : double.PositiveInfinity;
    }

    /// <summary>The curve of a panel between two nodes.</summary>
    public static PanelCurve Curve(Panel panel, int plus, int minus) => new(panel.Id, plus, minus, new PanelPoints(
        panel.OpenCircuit.Value.Volts, panel.MaximumPowerVoltage.Value.Volts,
        panel.ShortCircuit.Value.Amperes, panel.MaximumPowerCurrent.Value.Amperes))
    {
        DarkLeakageAmps = panel.DarkLeakage?.Value.Amperes ?? 0,
        DarkDiodes = panel.DarkCells is not { } cells ? null : new DiodeModel(
            cells.DarkSaturation.Value.Amperes,
            cells.Cells.Value * cells.Ideality.Value * DiodeModel.ThermalVolts,
            SmallestOhms),
        DarkShuntOhms = panel.DarkCells?.ShuntResistance.Value.Ohms ?? double.PositiveInfinity,
    };
}
