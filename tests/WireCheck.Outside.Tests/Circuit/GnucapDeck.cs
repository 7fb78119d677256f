using System.Globalization;
using System.Text;
using WireCheck.Circuit.Elements;

namespace WireCheck.Outside.Tests.Circuit;

/// <summary>
/// Writes a circuit for gnucap, which has straight lines, broken lines and its own diode, but no formulas: constant
/// power, a lit panel and a converter cannot be told to it.
/// </summary>
internal sealed class GnucapDeck(GeneratedCircuit circuit)
{
    /// <summary>
    /// k T / q as gnucap has it, V: k = 1.3806226e-23 J/K and q = 1.6021918e-19 C, older than the SI of 2019, at 27 °C.
    /// The emission coefficient is given so that n k T / q is the same on both sides.
    /// </summary>
    private const double ThermalVolts = 1.3806226e-23 * 300.15 / 1.6021918e-19;

    private readonly StringBuilder _text = new();

    internal string Write()
    {
        _text.AppendLine(Invariant($"circuit {circuit.Number}"));
        StringBuilder probes = new();
        foreach (int node in circuit.Nodes)
        {
            probes.Append(Invariant($" v({node})"));
        }

        foreach (Element element in circuit.Network.Elements)
        {
            probes.Append(Invariant($" i({Write(element)})"));
        }

        _text.AppendLine(".options reltol=1e-11 abstol=1e-14 vntol=1e-13 gmin=1e-16 itl1=100 numdgt=16");
        _text.AppendLine($".print op{probes}");
        _text.AppendLine(".op 27");
        _text.AppendLine(".end");
        return _text.ToString();
    }

    /// <summary>The current of an element from what gnucap reports; its sources are a resistance beside a current.</summary>
    internal static double Amps(Element element, double reported) =>
        element is Source { Connected: true } source ? reported - (source.Emf / source.Ohms) : reported;

    /// <summary>Writes an element; returns the name whose current stands for it.</summary>
    private string Write(Element element)
    {
        int i = element.Index;
        string ends = Invariant($"{element.A} {element.B}");
        switch (element)
        {
            case Resistance part:
                return Line($"R{i}", ends, Invariant($"{part.Ohms:R}"));
            case Contact { Closed: true } part:
                return Line($"R{i}", ends, Invariant($"{part.Ohms:R}"));
            case Source { Connected: true } part:
                Line($"I{i}", Invariant($"{part.B} {part.A}"), Invariant($"{part.Emf / part.Ohms:R}"));
                return Line($"R{i}", ends, Invariant($"{part.Ohms:R}"));
            case ConstantCurrentSink part:
                return Broken(element, Knee(part.Amps, part.KneeVolts));
            case PanelCurve { Connected: true, Lit: false } part:
                return Broken(element, Knee(part.DarkLeakageAmps, 1));
            case ChargerOutput { Connected: true } part:
                double corner = part.Volts - (part.LimitAmps * part.SlopeOhms);
                double knee = part.Volts * (1 + 1e-12);
                double reverse = (knee - part.Volts) / part.SlopeOhms;
                return Broken(element, Invariant(
                    $"-1000,{-part.LimitAmps:R} {corner:R},{-part.LimitAmps:R} {knee:R},{reverse:R} 1000,{reverse + ((1000 - knee) * 1e-7):R}"));
            case Diode part:
                _text.AppendLine(Invariant(
                    $".model dm{i} d(is={part.Model.SaturationAmps:R} n={part.Model.EmissionVolts / ThermalVolts:R} rs={part.Model.SeriesOhms:R})"));
                return Line($"D{i}", ends, $"dm{i}");
            case Contact or Source or ChargerOutput or PanelCurve { Connected: false }:
                return Line($"I{i}", ends, "0");
            default:
                throw new InvalidOperationException($"{element.GetType().Name} cannot be told to gnucap");
        }
    }

    private string Broken(Element element, string points) =>
        Line($"G{element.Index}", Invariant($"{element.A} {element.B} {element.A} {element.B}"), $"pwl({points})");

    private string Line(string name, string ends, string value)
    {
        _text.AppendLine($"{name} {ends} {value}");
        return name;
    }

    private static string Knee(double amps, double knee) =>
        Invariant($"-1000,{-amps / knee:R} 0,0 {knee:R},{amps:R} 1000,{amps:R}");

    private static string Invariant(FormattableString text) => text.ToString(CultureInfo.InvariantCulture);
}
