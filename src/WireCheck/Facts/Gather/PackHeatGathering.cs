using WireCheck.Circuit.Wiring;
using WireCheck.Description;
using WireCheck.Description.Kinds;
using WireCheck.Description.Reader;
using WireCheck.Facts.Catalogue;
using WireCheck.Quantities;
using WireCheck.States;

namespace WireCheck.Facts.Gather;

/// <summary>Gathers the air in the box, what warms it, and how the box stands to gas, water and a hand that must stop it.</summary>
internal static class PackHeatGathering
{
    /// <summary>Parts that are named as the warmest.</summary>
    private const int MostNamed = 3;

    internal static void Add(FactSubject subject, GatherContext context)
    {
        Enclosure? box = context.Pack.Surroundings.Enclosure;
        subject.SetWord(PackHeatFacts.Walls, box?.Walls.Value);
        subject.SetWord(PackHeatFacts.Placing, box is null ? null : KebabCase.Of((box.Placing?.Value ?? EnclosurePlacing.Standing).ToString()));
        AddAir(subject, context.Heat);
        if (context.Heat.Hottest is { } hottest)
        {
            subject.SetNames(PackHeatFacts.WarmestParts, Warmest(hottest, context.Wiring));
        }

        if (box?.Vents is { Value: "none" } && box.Fan?.Value != true)
        {
            AddSealed(subject, context);
        }
        else if (box?.Vents is not null)
        {
            subject.Set(PackHeatFacts.SealedWithContacts, false);
        }

        if (box?.Vents is { Value: not "none" } && box.VentArea is null)
        {
            subject.Assume("openings without a vent_area counted as closed", "inside_temperature", "inside_temperature_charging");
        }

        subject.SetNames(PackHeatFacts.UncappedPorts, context.Pack.Of<Port>().Where(p => p.Cap?.Value == false).Select(p => p.Id));
        if (OutsideStop.Hidden(context) is { } hidden)
        {
            subject.SetNames(PackHeatFacts.HiddenStops, hidden);
        }
    }

    private static void AddAir(FactSubject subject, HeatedBox heat)
    {
        if (heat.Hottest is { } hottest)
        {
            subject.Largest(PackFacts.InsideTemperature, hottest.InsideCelsius, hottest.Point);
            subject.SetNumber(PackHeatFacts.InsideTemperatureSimple, hottest.SimpleInsideCelsius);
            subject.SetNumber(PackHeatFacts.InsideHeat, hottest.InsideWatts);
        }

        if (heat.HottestCharging is { } charging)
        {
            subject.Largest(PackHeatFacts.InsideTemperatureCharging, charging.InsideCelsius, charging.Point);
        }

        List<string> modes = [];
        foreach (HeatedMode mode in heat.Modes)
        {
            modes.Add(FormattableString.Invariant($"{mode.Mode.Id} {mode.InsideCelsius:0.0} °C"));
        }

        subject.SetNames(PackHeatFacts.InsideTemperatures, modes);
    }

    private static List<string> Warmest(HeatedMode mode, BoxWiring wiring)
    {
        int[] order = [.. Enumerable.Range(0, mode.PartWatts.Length)];
        Array.Sort(order, (a, b) => mode.PartWatts[b] != mode.PartWatts[a] ? mode.PartWatts[b].CompareTo(mode.PartWatts[a]) : a.CompareTo(b));
        List<string> named = [];
        for (int i = 0; i < Math.Min(MostNamed, order.Length); i++)
        {
            named.Add($"{wiring.Parts[order[i]].Part.Id} {Keeping.Words(Math.Round(mode.PartWatts[order[i]], 1), "W")}");
        }

        return named;
    }

    private static void AddSealed(FactSubject subject, GatherContext context)
    {
        subject.Set(PackHeatFacts.SealedWithContacts, context.Pack.Of<Cells>().Any()
            && (context.Pack.Of<Relay>().Any() || context.Pack.Of<Switch>().Any()));
        double largest = 0;
        foreach (Inverter inverter in context.Pack.Of<Inverter>())
        {
            if (inverter.Place?.Value != PartPlace.Outside)
            {
                largest = Math.Max(largest, inverter.Power.Value.ToWatts());
            }
        }

        subject.SetNumber(PackHeatFacts.UnventedInverterPower, largest > 0 ? largest : null);
    }
}
