using WireCheck.Circuit.Wiring;
using WireCheck.Description;
using WireCheck.Knowledge;

namespace WireCheck.Tolerances;

/// <summary>A box built at the ends of its tolerances.</summary>
/// <param name="Ends">For each tolerance that is not zero, whether the built value is the higher.</param>
/// <param name="Built">Factors of the resistances.</param>
/// <param name="LengthFactor">Factor of the lengths of conductors.</param>
public sealed record ToleranceCorner(IReadOnlyList<(string Name, bool High)> Ends, BuiltDifference Built, double LengthFactor)
{
    /// <summary>The box as it is described, which is no corner.</summary>
    public static ToleranceCorner Described { get; } = new([], BuiltDifference.None, 1);

    /// <summary>As it is printed: <c>cells high, lengths low</c>; "as described" for none.</summary>
    public string Words => Ends.Count == 0 ? "as described" : string.Join(", ", Ends.Select(e => $"{e.Name} {(e.High ? "high" : "low")}"));

    /// <summary>All combinations of both ends of all tolerances that are not zero: at most sixteen.</summary>
    public static IReadOnlyList<ToleranceCorner> All(ToleranceSet tolerances)
    {
        Tolerance[] varied = [.. tolerances.Varied.Where(t => t.Share > 0)];
        List<ToleranceCorner> corners = [];
        for (int pattern = 0; varied.Length > 0 && pattern < 1 << varied.Length; pattern++)
        {
            (string Name, bool High)[] ends = [.. varied.Select((t, i) => (t.Name, (pattern >> i & 1) == 1))];
            double Factor(Tolerance tolerance)
            {
                foreach ((string name, bool high) in ends)
                {
                    if (name == tolerance.Name)
                    {
                        return high ? 1 + tolerance.Share : 1 - tolerance.Share;
                    }
                }

                return 1;
            }

            corners.Add(new ToleranceCorner(
                ends, new BuiltDifference(Factor(tolerances.Cells), Factor(tolerances.Joints), Factor(tolerances.Coils)), Factor(tolerances.Lengths)));
        }

        return corners;
    }

    /// <summary>The box and the library's answers of this corner.</summary>
    /// <param name="pack">The box as it is described.</param>
    /// <param name="library">The library.</param>
    /// <param name="onTheBench">True for what is measured on the bench; see <see cref="BuiltDifference.CellsAtRest"/>.</param>
    public (Pack Pack, WiringData Data) Build(Pack pack, Library library, bool onTheBench = false) => (
        LengthFactor == 1 ? pack : pack.WithLengths(LengthFactor),
        new WiringData(library) { Built = Built with { CellsAtRest = onTheBench } });
}
