using WireCheck.Circuit.Wiring;
using WireCheck.Description.Kinds;
using WireCheck.Facts.Catalogue;
using WireCheck.Knowledge;
using WireCheck.Quantities;
using WireCheck.States;

namespace WireCheck.Facts.Gather;

/// <summary>Facts of a busbar.</summary>
public sealed class BusbarGatherer : Gatherer<Busbar>
{
    public override void Gather(Busbar part, FactSubject subject, GatherContext context)
    {
        WiredBusbar bar = (WiredBusbar)context.Wiring[part.Id];
        CoverGathering.Add(part, subject, context);
        BarDensity.Set(BarFacts.Busbar, subject, part.Section.Value, part.Material?.Value, context, point => bar.Pieces.Count > 0
            ? bar.Pieces.Max(p => Math.Abs(point.Amps(p)))
            : ThroughSinglePlace(part, point, context));
    }

    /// <summary>On a bar whose conductors are not drawn in order, all that comes in may pass one section of it.</summary>
    private static double ThroughSinglePlace(Busbar part, OperatingPoint point, GatherContext context) =>
        context.Wiring.Of<WiredConductor>()
            .Select(w => w.Conductor.To.PartId == part.Id ? point.Amps(w.Element)
                : w.Conductor.From.PartId == part.Id ? -point.Amps(w.Element)
                : 0)
            .Where(amps => amps > 0)
            .Sum();
}

/// <summary>Current density of bars.</summary>
internal static class BarDensity
{
    internal static void Set(
        BarFacts facts, FactSubject subject, Section section, string? material, GatherContext context, Func<OperatingPoint, double> amps)
    {
        double area = section.Area.SquareMeters;
        Material metal = context.Library.Materials[material ?? "copper"];
        double factor = metal.Resistivity / context.Library.Materials["copper"].Resistivity / area;
        subject.Set(facts.SectionArea, area);
        subject.Set(facts.BarMaterial, metal.Name);
        foreach (OperatingPoint point in context.Box.Points)
        {
            double current = amps(point);
            FactPlace place = GatherContext.PlaceOf(point);
            subject.KeepLargest(facts.BarSurgeCurrent, current, place);
            subject.KeepLargest(facts.CopperSurgeDensity, current * factor, place);
            if (point.Mode.Steady)
            {
                subject.KeepLargest(facts.BarCurrent, current, place);
                subject.KeepLargest(facts.CopperDensity, current * factor, place);
            }
        }
    }
}
