using WireCheck.Circuit.Elements;
using WireCheck.Circuit.Solving;
using WireCheck.Circuit.Wiring;

namespace WireCheck.Energy;

/// <summary>
/// Where the power of a solved state goes: what cells and sources give, what loads and outlets use, what each part loses. What is
/// given is the sum of what is used and lost, since charge is kept at every node.
/// </summary>
public sealed class PowerSplit
{
    private PowerSplit(int parts)
    {
        Given = new double[parts];
        Used = new double[parts];
        Lost = new double[parts];
    }

    /// <summary>W from the cells' chemistry or from a source, by wired part; negative while cells are charged.</summary>
    public double[] Given { get; }

    /// <summary>W used by a load or at the outlets of an inverter or converter, by wired part.</summary>
    public double[] Used { get; }

    /// <summary>W turned into heat in the box or a lead, by wired part.</summary>
    public double[] Lost { get; }

    /// <summary>The split of a solution; the wiring must stand as it was solved.</summary>
    internal static PowerSplit Of(BoxWiring wiring, Solution solution)
    {
        PowerSplit split = new(wiring.Parts.Count);
        for (int i = 0; i < wiring.Parts.Count; i++)
        {
            split.Add(i, wiring.Parts[i], solution);
        }

        return split;
    }

    /// <summary>A mix of two splits: this one for a share of the time and the other for the rest.</summary>
    internal PowerSplit Mixed(double share, PowerSplit other)
    {
        PowerSplit mixed = new(Given.Length);
        for (int i = 0; i < Given.Length; i++)
        {
            mixed.Given[i] = (share * Given[i]) + ((1 - share) * other.Given[i]);
            mixed.Used[i] = (share * Used[i]) + ((1 - share) * other.Used[i]);
            mixed.Lost[i] = (share * Lost[i]) + ((1 - share) * other.Lost[i]);
        }

        return mixed;
    }

    /// <summary>Everything by a factor.</summary>
    internal PowerSplit Times(double factor)
    {
        PowerSplit scaled = new(Given.Length);
        for (int i = 0; i < Given.Length; i++)
        {
            (scaled.Given[i], scaled.Used[i], scaled.Lost[i]) = (factor * Given[i], factor * Used[i], factor * Lost[i]);
        }

        return scaled;
    }

    /// <summary>Energy over a stretch of a trail, J.</summary>
    internal static PowerSplit Over(Trail trail, double low, double high)
    {
        PowerSplit sum = new(trail.Points[0].Joules.Given.Length);
        for (int i = 0; i < sum.Given.Length; i++)
        {
            int part = i;
            sum.Given[i] = trail.Sum(low, high, p => p.Joules.Given[part]);
            sum.Used[i] = trail.Sum(low, high, p => p.Joules.Used[part]);
            sum.Lost[i] = trail.Sum(low, high, p => p.Joules.Lost[part]);
        }

        return sum;
    }

    private void Add(int i, WiredPart part, Solution solution)
    {
        double all = 0;
        foreach (Element element in part.Elements)
        {
            all += solution.Power(element);
        }

        switch (part)
        {
            case WiredBank bank:
                foreach (Source cell in bank.CellElements)
                {
                    Given[i] -= cell.Emf * solution.Current(cell);
                }

                Lost[i] = all + Given[i];
                break;
            case WiredLoad load:
                Lost[i] = Power(load.LeadPlus, solution) + Power(load.LeadMinus, solution);
                Used[i] = all - Lost[i];
                break;
            case WiredInverter inverter:
                Used[i] = inverter.Element.On ? inverter.Element.Watts : 0;
                Lost[i] = all - Used[i];
                break;
            case WiredConverter converter:
                Used[i] = converter.Outlet.On ? converter.Outlet.Watts : 0;
                Lost[i] = all - Output(converter.Stage, solution) - Used[i];
                break;
            case WiredCharger { Output: { } output }:
                Given[i] = -solution.Power(output);
                Lost[i] = all + Given[i];
                break;
            case WiredCharger { Stage: { } stage }:
                Lost[i] = all - Output(stage, solution);
                break;
            case WiredVehicle or WiredPanel:
                Given[i] = -all;
                break;
            default:
                Lost[i] = all;
                break;
        }
    }

    private static double Power(Element? element, Solution solution) => element is null ? 0 : solution.Power(element);

    private static double Output(ConverterStage stage, Solution solution) =>
        solution.OutputCurrent(stage) * solution.Voltage(stage.OutA, stage.OutB);
}
