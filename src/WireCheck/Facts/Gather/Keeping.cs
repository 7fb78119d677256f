using UnitsNet;
using WireCheck.Circuit.Solving;
using WireCheck.States;

namespace WireCheck.Facts.Gather;

/// <summary>Short ways to write facts: a number that is not finite is no fact and leaves it absent.</summary>
internal static class Keeping
{
    /// <summary>Keeps the larger value with the state it comes from.</summary>
    internal static void Largest(this FactSubject subject, Fact fact, double value, OperatingPoint point)
    {
        if (double.IsFinite(value))
        {
            subject.KeepLargest(fact, value, GatherContext.PlaceOf(point));
        }
    }

    /// <summary>Keeps the smaller value with the state it comes from.</summary>
    internal static void Smallest(this FactSubject subject, Fact fact, double value, OperatingPoint point)
    {
        if (double.IsFinite(value))
        {
            subject.KeepSmallest(fact, value, GatherContext.PlaceOf(point));
        }
    }

    /// <summary>Sets a number that may be missing.</summary>
    internal static void SetNumber(this FactSubject subject, Fact fact, double? value)
    {
        if (value is { } number && double.IsFinite(number))
        {
            subject.Set(fact, number);
        }
    }

    /// <summary>Sets a word that may be missing.</summary>
    internal static void SetWord(this FactSubject subject, Fact fact, string? value)
    {
        if (!string.IsNullOrEmpty(value))
        {
            subject.Set(fact, value);
        }
    }

    /// <summary>Sets a list of names, also an empty one.</summary>
    internal static void SetNames(this FactSubject subject, Fact fact, IEnumerable<string> names)
    {
        List<string> list = [.. names];
        subject.Set(fact, list);
    }

    /// <summary>Points whose numbers mean something.</summary>
    internal static IEnumerable<OperatingPoint> SolvedPoints(this GatherContext context) =>
        context.Box.Points.Where(p => p.Solution.Outcome == SolveOutcome.Solved);

    /// <summary>Solved points that last long enough to heat something.</summary>
    internal static IEnumerable<OperatingPoint> SteadyPoints(this GatherContext context) =>
        context.SolvedPoints().Where(p => p.Mode.Steady);

    /// <summary>A value in words: "7.8 V".</summary>
    internal static string Words(double value, string unit) => FormattableString.Invariant($"{value:0.###} {unit}");

    /// <summary>A voltage in words.</summary>
    internal static string Words(ElectricPotential value) => Words(value.Volts, "V");

    /// <summary>A current in words, small ones in mA.</summary>
    internal static string Words(ElectricCurrent value) => CurrentWords(value.Amperes);

    /// <summary>A current in words, small ones in mA or µA.</summary>
    internal static string CurrentWords(double amps) => amps switch
    {
        < 0.99995e-3 => Words(Math.Round(amps * 1e6, 1), "µA"),
        < 1 => Words(Math.Round(amps * 1e3, 1), "mA"),
        _ => Words(Math.Round(amps, 2), "A"),
    };
}
