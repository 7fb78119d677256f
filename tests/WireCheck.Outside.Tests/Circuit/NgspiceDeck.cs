using System.Globalization;
using System.Text;
using WireCheck.Circuit.Elements;

namespace WireCheck.Outside.Tests.Circuit;

/// <summary>
/// Writes a circuit for ngspice. Sources are a current beside a resistance, so that the simulator has nodes alone to
/// solve for; with voltage sources between milliohms its answers break its own equations. Diodes are its own; what
/// else is not linear is a behavioural source with its formula written out anew here, not taken from the code under
/// test.
/// </summary>
internal sealed class NgspiceDeck(GeneratedCircuit circuit)
{
    /// <summary>k T / q at 27 °C as ngspice has it (CODATA 2014), V; emission coefficients are given so that n k T / q agrees.</summary>
    private const double ThermalVolts = 1.38064852e-23 * 300.15 / 1.6021766208e-19;

    private readonly StringBuilder _text = new();
    private readonly List<NgspiceProbe> _probes = [];

    /// <summary>What to print, known once the deck is written.</summary>
    internal IReadOnlyList<NgspiceProbe> Probes => _probes;

    internal string Write()
    {
        _text.AppendLine(Invariant($"* circuit {circuit.Number}"));
        foreach (Element element in circuit.Network.Elements)
        {
            Write(element);
        }

        foreach (int node in circuit.OtherIslands)
        {
            _text.AppendLine(Invariant($"Rfoot{node} {Name(node)} 0 1"));
        }

        // The answer to look near: constant power has two, and only the upper one is stable.
        foreach (int node in circuit.Nodes)
        {
            _text.AppendLine(Invariant($".nodeset v({Name(node)})={circuit.Voltage(node):R}"));
            _probes.Add(new NgspiceProbe($"node {node}", [Invariant($"v({Name(node)})")], circuit.Voltage(node), 0));
        }

        _text.AppendLine(".options reltol=1e-10 abstol=1e-13 vntol=1e-12 gmin=1e-16 itl1=1000 temp=27 tnom=27");
        _text.AppendLine(".end");
        return _text.ToString();
    }

    /// <summary>A simulator's zero is node 0: the reference of the network changes numbers with it.</summary>
    private int Name(int node) => node == circuit.Network.Reference ? 0 : node == 0 ? circuit.Network.Reference : node;

    private void Write(Element element)
    {
        int i = element.Index;
        string v = $"V({Name(element.A)},{Name(element.B)})";
        switch (element)
        {
            case Resistance part:
                Add(element, 0, Line($"r{i}", element, Invariant($"{part.Ohms:R}")));
                break;
            case Contact { Closed: true } part:
                Add(element, 0, Line($"r{i}", element, Invariant($"{part.Ohms:R}")));
                break;
            case Source { Connected: true } part:
                _text.AppendLine(Invariant($"I{i} {Name(part.B)} {Name(part.A)} {part.Emf / part.Ohms:R}"));
                Add(element, -part.Emf / part.Ohms, Line($"r{i}", element, Invariant($"{part.Ohms:R}")));
                break;
            case ConstantCurrentSink part:
                Behave(element, Knee(v, part.Amps, part.KneeVolts));
                break;
            case ConstantPowerSink part:
                Behave(element, part.On
                    ? PowerOver(v, Invariant($"{(part.Watts / part.Efficiency) + part.IdleWatts:R}"))
                    : Knee(v, part.OffLeakageAmps, 1));
                break;
            case Diode part:
                Add(element, 0, Junction(element, part.Model));
                break;
            case ChargerOutput { Connected: true } part:
                Behave(element, $"-({Output(v, part.Volts, part.LimitAmps, part.PowerLimitWatts, part.SlopeOhms)})");
                break;
            case PanelCurve { Connected: true } part:
                Panel(part, v);
                break;
            case ConverterStage part:
                Stage(part, v);
                break;
        }
    }

    private void Panel(PanelCurve part, string v)
    {
        if (part.Lit)
        {
            (double c1, double c2) = PanelFit.Constants(part.Points);
            Behave(part, Invariant(
                $"-{part.Points.ShortCircuitAmps:R} * (1 - {c1:R} * (exp({v} / {c2 * part.Points.OpenCircuitVolts:R}) - 1))"));
            return;
        }

        string leakage = Line($"b{part.Index}", part, $"I = {Knee(v, part.DarkLeakageAmps, 1)}");
        if (part.DarkDiodes is null)
        {
            Add(part, 0, leakage);
            return;
        }

        Add(part, 0, leakage, Junction(part, part.DarkDiodes), Line($"r{part.Index}", part, Invariant($"{part.DarkShuntOhms:R}")));
    }

    private void Stage(ConverterStage part, string v)
    {
        if (!part.On)
        {
            Behave(part, Knee(v, part.OffLeakageAmps, 1));
            return;
        }

        string output = $"V({Name(part.OutA)},{Name(part.OutB)})";
        string amps = Output(output, part.Volts, part.LimitAmps, part.PowerLimitWatts, part.SlopeOhms);
        _text.AppendLine($"bo{part.Index} {Name(part.OutB)} {Name(part.OutA)} I = {amps}");
        _probes.Add(new NgspiceProbe($"output of {part.Name}", [$"@bo{part.Index}[i]"], circuit.Solution.OutputCurrent(part), 0));
        Behave(part, PowerOver(v, Invariant($"(max(0, {output} * ({amps})) / {part.Efficiency:R} + {part.IdleWatts:R})")));
    }

    private void Behave(Element element, string amps) => Add(element, 0, Line($"b{element.Index}", element, $"I = {amps}"));

    /// <summary>
    /// ngspice's own diode; in reverse the formula instead, as its diode there leaves Shockley's equation for a cubic
    /// term that makes the approach to the saturation current smooth.
    /// </summary>
    private string Junction(Element element, DiodeModel model)
    {
        int i = element.Index;
        if (circuit.Solution.Voltage(element.A, element.B) < 0)
        {
            _text.AppendLine(Invariant($"rs{i} {Name(element.A)} j{i} {model.SeriesOhms:R}"));
            _text.AppendLine(Invariant(
                $"bj{i} j{i} {Name(element.B)} I = {model.SaturationAmps:R} * (exp(V(j{i},{Name(element.B)}) / {model.EmissionVolts:R}) - 1)"));
            return $"@bj{i}[i]";
        }

        _text.AppendLine(Invariant(
            $".model dm{i} d(is={model.SaturationAmps:R} n={model.EmissionVolts / ThermalVolts:R} rs={model.SeriesOhms:R})"));
        Line($"d{i}", element, $"dm{i}");
        return $"@d{i}[id]";
    }

    private string Line(string name, Element element, string value)
    {
        _text.AppendLine(Invariant($"{name} {Name(element.A)} {Name(element.B)} {value}"));
        return $"@{name}[i]";
    }

    private void Add(Element element, double offset, params string[] names) => _probes.Add(new NgspiceProbe(
        $"{element.GetType().Name} {element.Index}", names, circuit.Solution.Current(element), offset));

    private static string Knee(string v, double amps, double knee) =>
        Invariant($"{v} >= {knee} ? {amps:R} : ({v} >= 0 ? {v} * {amps / knee:R} : {v} * {amps / knee / 1000:R})");

    private static string PowerOver(string v, string watts) => $"{watts} / max({v}, 0.25)";

    private static string Output(string v, double volts, double amps, double watts, double slope)
    {
        string limit = double.IsFinite(watts) ? Invariant($"min({amps:R}, {watts:R} / max({v}, 0.01))") : Invariant($"{amps:R}");
        double knee = volts * (1 + 1e-12);
        return Invariant(
            $"{v} > {knee:R} ? {(volts - knee) / slope:R} + ({knee:R} - {v}) * 1e-7 : min({limit}, ({volts:R} - {v}) / {slope:R})");
    }

    private static string Invariant(FormattableString text) => text.ToString(CultureInfo.InvariantCulture);
}
