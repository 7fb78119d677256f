using WireCheck.Circuit.Elements;
using WireCheck.Circuit.Solving;
using WireCheck.Circuit.Wiring;
using WireCheck.States;

namespace WireCheck.Numbers;

/// <summary>The voltages of loads while something charges, in use or not.</summary>
internal static class ChargedLoads
{
    internal static IReadOnlyList<LoadNumbers> Of(SolvedBox box)
    {
        OperatingPoint[] points = [.. box.Points.Where(p => p.Solution.Outcome == SolveOutcome.Solved
            && p.Mode.Added && p.Mode.Steady && p.Mode.Sources.Values.Contains(SourceState.Powered))];
        List<LoadNumbers> loads = [];
        foreach (WiredLoad load in box.Wiring.Of<WiredLoad>())
        {
            Element? element = (Element?)load.PowerElement ?? load.CurrentElement ?? (Element?)load.ResistanceElement;
            OperatingPoint[] fed = element is null ? [] : [.. points.Where(p => p.Solution.Island(element.A) == p.Solution.Island(element.B))];
            if (element is not null && fed.Length > 0)
            {
                OperatingPoint low = fed.MinBy(p => p.Volts(element.A, element.B))!;
                OperatingPoint high = fed.MaxBy(p => p.Volts(element.A, element.B))!;
                loads.Add(new LoadNumbers(
                    load.Part.Id, low.Volts(element.A, element.B), low.Mode.Id, high.Volts(element.A, element.B), high.Mode.Id));
            }
        }

        return loads;
    }
}
