using WireCheck.Circuit.Elements;
using WireCheck.Circuit.Solving;
using WireCheck.Circuit.Wiring;
using WireCheck.Description.Kinds;

namespace WireCheck.States;

/// <summary>
/// Heat that each part leaves in the box at a solution, W. Bars, wires, joints, contacts, coils, shunts and the BMS make what they take;
/// cells their current squared times their resistance; inverters, converters and chargers what they take and do not give on. What
/// is plugged in, loads and what lies outside leave none; a port's contacts count as inside.
/// </summary>
internal static class HeatOfParts
{
    /// <summary>Watts by part, in the order of <see cref="BoxWiring.Parts"/>. The wiring must stand as it was solved.</summary>
    internal static double[] Of(BoxWiring wiring, Solution solution)
    {
        double[] watts = new double[wiring.Parts.Count];
        for (int i = 0; i < watts.Length; i++)
        {
            watts[i] = Math.Max(0, Of(wiring.Parts[i], wiring, solution));
        }

        return watts;
    }

    private static double Of(WiredPart part, BoxWiring wiring, Solution solution) => part switch
    {
        WiredConductor wire => wire.Conductor.Place?.Value == PartPlace.Outside ? 0 : solution.Power(wire.Element),
        WiredBank bank => OfBank(bank, solution),
        WiredInverter inverter => Share(inverter.Inverter.Place, inverter.Inverter.Heat)
            * Lost(solution.Power(inverter.Element), inverter.Element.IdleWatts, inverter.Element.Efficiency),
        WiredConverter converter => OfConverter(converter, solution),
        WiredCharger charger => OfCharger(charger, wiring, solution),
        WiredLoad or WiredVehicle or WiredPanel => 0,
        _ => OfAll(part, solution),
    };

    private static double OfAll(WiredPart part, Solution solution)
    {
        double sum = 0;
        foreach (Element element in part.Elements)
        {
            sum += solution.Power(element);
        }

        return sum;
    }

    private static double OfBank(WiredBank bank, Solution solution)
    {
        double sum = 0;
        foreach (Source cell in bank.CellElements)
        {
            double amps = solution.Current(cell);
            sum += amps * amps * cell.Ohms;
        }

        foreach (Circuit.Elements.Resistance link in bank.LinkElements)
        {
            sum += solution.Power(link);
        }

        return sum;
    }

    private static double OfConverter(WiredConverter converter, Solution solution)
    {
        ConverterStage stage = converter.Stage;
        double taken = solution.Power(stage) + solution.Power(converter.Outlet);
        double tie = converter.NegativeTie is { } negative ? solution.Power(negative) : 0;
        return Share(converter.Converter.Place, converter.Converter.Heat) * (Lost(taken, stage.IdleWatts, stage.Efficiency) + tie);
    }

    /// <summary>A charger that is plugged in stands outside.</summary>
    private static double OfCharger(WiredCharger charger, BoxWiring wiring, Solution solution)
    {
        if (charger.Pluggable)
        {
            return 0;
        }

        double efficiency = charger.Charger.Efficiency?.Value.DecimalFractions ?? wiring.Data.Assumed("charger_efficiency");
        double lost = charger.Stage is { On: true } stage ? solution.Power(stage) * (1 - efficiency)
            : charger.Output is { } output ? Math.Max(0, -solution.Power(output)) * ((1 / efficiency) - 1)
            : 0;
        return lost + Math.Max(0, solution.Power(charger.Leakage));
    }

    /// <summary>What is taken and not given on: all of it up to the idle power, and the part of the rest that the efficiency leaves.</summary>
    private static double Lost(double taken, double idle, double efficiency) =>
        taken <= idle ? taken : idle + ((taken - idle) * (1 - efficiency));

    private static double Share(Description.Given<PartPlace>? place, Description.Given<UnitsNet.Ratio>? heat) =>
        heat?.Value.DecimalFractions ?? (place?.Value == PartPlace.Outside ? 0 : 1);
}
