using WireCheck.Circuit.Wiring;
using WireCheck.Description.Kinds;
using WireCheck.Quantities;

namespace WireCheck.Faults.Inrush;

/// <summary>The input capacitors of one part, discharged until something joins them to the bank.</summary>
/// <param name="PartId">The inverter, converter or load they are in.</param>
/// <param name="Plus">Node of their positive side.</param>
/// <param name="Minus">Node of their negative side.</param>
/// <param name="Farads">Capacitance, F, above 0.</param>
/// <param name="Ohms">Their series resistance, Ω, above 0.</param>
public sealed record InrushCapacitor(string PartId, int Plus, int Minus, double Farads, double Ohms)
{
    /// <summary>What the part's own soft start lets through, A; null when it has none.</summary>
    public double? LimitAmps { get; init; }

    /// <summary>The port it is plugged into; null when it is wired.</summary>
    public string? PortId { get; init; }

    /// <summary>What was not written and was taken from the library, in words.</summary>
    public IReadOnlyList<string> Assumed { get; init; } = [];

    /// <summary>Smallest series resistance reckoned with, Ω: no capacitor of this size has less.</summary>
    private const double SmallestOhms = 1e-4;

    /// <summary>Every part of a box with capacitors at its input, in the order of the description.</summary>
    public static IReadOnlyList<InrushCapacitor> In(BoxWiring wiring)
    {
        List<InrushCapacitor> capacitors = [];
        foreach (WiredPart part in wiring.Parts)
        {
            InrushCapacitor? capacitor = part switch
            {
                WiredInverter inverter => Of(inverter, wiring.Data),
                WiredConverter converter => Of(converter, wiring.Data),
                WiredLoad load => Of(load, wiring),
                _ => null,
            };
            if (capacitor is { Farads: > 0 })
            {
                capacitors.Add(capacitor);
            }
        }

        return capacitors;
    }

    private static InrushCapacitor Of(WiredInverter wired, WiringData data)
    {
        Inverter part = wired.Inverter;
        double watts = part.Power.Value.ToWatts();
        List<string> assumed = [];
        if (part.InputCapacitance is null)
        {
            assumed.Add("input capacitance taken from its power");
        }

        if (part.InputEsr is null)
        {
            assumed.Add("series resistance of its input capacitors taken from the library");
        }

        return new InrushCapacitor(
            part.Id, wired.InputPlus, wired.InputMinus,
            part.InputCapacitance?.Value.Farads ?? (watts * data.Assumed("input_capacitance_per_watt")),
            Math.Max(SmallestOhms, part.InputEsr?.Value.Ohms ?? data.Assumed("input_series_resistance")))
        {
            LimitAmps = part.InrushLimit?.Value.Amperes,
            Assumed = assumed,
        };
    }

    private static InrushCapacitor? Of(WiredConverter wired, WiringData data)
    {
        Converter part = wired.Converter;
        return part.InputCapacitance is not { } given ? null : new InrushCapacitor(
            part.Id, wired.InputPlus, wired.InputMinus, given.Value.Farads,
            Math.Max(SmallestOhms, part.InputEsr?.Value.Ohms ?? data.Assumed("small_input_series_resistance")))
        {
            LimitAmps = part.InrushLimit?.Value.Amperes,
            Assumed = part.InputEsr is null ? ["series resistance of its input capacitors taken from the library"] : [],
        };
    }

    /// <summary>A load behind a converter is charged by the converter's own current limit and is left out.</summary>
    private static InrushCapacitor? Of(WiredLoad wired, BoxWiring wiring)
    {
        Load part = wired.Load;
        bool behindConverter = part.At is { } at && wiring.Find<WiredConverter>(at.Value) is not null;
        return behindConverter || part.Capacitance is not { } given || wired.PowerElement is not { } element
            ? null
            : new InrushCapacitor(
                part.Id, element.A, element.B, given.Value.Farads, wiring.Data.Assumed("small_input_series_resistance"))
            {
                PortId = part.At?.Value,
                Assumed = ["series resistance of its input capacitors taken from the library"],
            };
    }
}
