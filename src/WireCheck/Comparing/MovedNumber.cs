using WireCheck.Facts;
using WireCheck.Findings;
using WireCheck.Rules;

namespace WireCheck.Comparing;

/// <summary>A number that rules judge and that moved.</summary>
/// <param name="Kind">Kind of the part, or "pack".</param>
/// <param name="Id">Id of the part, or "pack".</param>
/// <param name="Fact">What it is.</param>
/// <param name="Old">Its old value in the fact's unit.</param>
/// <param name="New">Its new value.</param>
/// <param name="OldPlace">Where the old one was the worst; null when it is the same in all states.</param>
/// <param name="NewPlace">Where the new one is the worst.</param>
public sealed record MovedNumber(
    string Kind, string Id, Fact Fact, double Old, double New, FactPlace? OldPlace, FactPlace? NewPlace)
{
    /// <summary>The move as a part of the larger of the two, 0 to 1 for one sign, up to 2 across zero.</summary>
    public double Share => Math.Abs(New - Old) / Math.Max(Math.Abs(Old), Math.Abs(New));

    /// <summary>
    /// Numbers of parts that both boxes have and that a requirement of their rules names, the furthest moved first.
    /// </summary>
    /// <param name="old">The old box.</param>
    /// <param name="new">The new box.</param>
    /// <param name="tolerance">Moves up to this part of the larger value are left out, 0 or more.</param>
    public static IReadOnlyList<MovedNumber> Between(JudgedBox old, JudgedBox @new, double tolerance)
    {
        HashSet<Fact> judged = [.. JudgedFacts(old), .. JudgedFacts(@new)];
        List<MovedNumber> moved = [];
        Dictionary<(string, string), FactSubject> before = [];
        foreach (FactSubject subject in old.Facts.Subjects.Prepend(old.Facts.Pack))
        {
            before.TryAdd((subject.Kind, subject.Id), subject);
        }

        foreach (FactSubject subject in @new.Facts.Subjects.Prepend(@new.Facts.Pack))
        {
            if (before.TryGetValue((subject.Kind, subject.Id), out FactSubject? was))
            {
                Add(was, subject, judged, tolerance, moved);
            }
        }

        // The sort is stable: within the same move, the order of the description and of the facts' names.
        return [.. moved.OrderByDescending(m => Math.Round(m.Share, DigitsOrdered))];
    }

    private static IEnumerable<Fact> JudgedFacts(JudgedBox box) => box.Sets
        .SelectMany(s => s.Rules)
        .SelectMany(r => r.JudgedFacts)
        .Where(f => f.Type == FactType.Number);

    private static void Add(FactSubject old, FactSubject @new, HashSet<Fact> judged, double tolerance, List<MovedNumber> moved)
    {
        foreach ((string name, FactValue fact) in @new.Values.OrderBy(v => v.Key, StringComparer.Ordinal))
        {
            if (judged.Contains(fact.Definition) && fact.Value is double now && old.Find(name) is { Value: double was } before
                && Math.Abs(now - was) > tolerance * Math.Max(Math.Abs(was), Math.Abs(now)) && Math.Abs(now - was) > Noise)
            {
                moved.Add(new MovedNumber(@new.Kind, @new.Id, fact.Definition, was, now, before.Place, fact.Place));
            }
        }
    }

    /// <summary>Finer than this, wires of one path would stand in the order of the solver's last digits.</summary>
    private const int DigitsOrdered = 6;

    /// <summary>What the solver's last digits may differ by, in any unit: Kirchhoff's residual is below 1 nA.</summary>
    private const double Noise = 1e-9;
}
