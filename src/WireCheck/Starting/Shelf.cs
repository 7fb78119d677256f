using WireCheck.Knowledge;
using WireCheck.Quantities;

namespace WireCheck.Starting;

/// <summary>
/// What can be bought: sizes of wire, ratings of fuses and classes of parts, smallest first. Each choice is the first that
/// carries the current, and as many further as the steps say.
/// </summary>
internal sealed class Shelf(Library library, SizeSystem wires, Steps steps)
{
    /// <summary>The insulation that the description gives to every conductor.</summary>
    private const string Insulation = "xlpe-105";

    private readonly List<string> _missing = [];

    /// <summary>What no table or class could give, in words.</summary>
    internal IReadOnlyList<string> Missing => _missing;

    /// <summary>A copper conductor with 105 °C insulation for a current, in the hottest air that wires are reckoned in.</summary>
    internal ConductorSize Wire(string key, double amps)
    {
        List<ConductorSize> fit = [];
        foreach (ConductorSize size in library.Conductors.Stocked(wires))
        {
            AmpacityQuestion question = new(
                size, library.Materials["copper"], InsulationOf(library), library.Assumptions["hottest_inside"].Value, LoadedInBundle: 1);
            if (ConductorTable.Area(size) * 1e6 >= library.Assumptions["thinnest_loose_wire"].Value && library.Ampacity.Rate(question) is { } rated && rated.Amps >= amps)
            {
                fit.Add(size);
            }
        }

        return Take(fit, key, () => $"no conductor in the tables is good for {QuantityText.WithPrefix(amps, "A")}", new ConductorSize(wires, 0));
    }

    /// <summary>A standard rating at or above a current in A.</summary>
    internal double Rating(string key, double amps)
    {
        List<double> fit = [.. library.StandardRatings.Amps.Where(a => a >= amps)];
        return Take(fit, key, () => $"no fuse is made for {QuantityText.WithPrefix(amps, "A")}", 0);
    }

    /// <summary>The kind of a branch fuse at 12 V: a blade, or where that cannot break the short, a cartridge.</summary>
    internal BranchFuse Kind(string fuse) => BranchFuse.All[Math.Min(steps.Of(Steps.KindOf(fuse)), BranchFuse.All.Count - 1)];

    /// <summary>The name of a class of parts.</summary>
    /// <param name="section">Section of the description.</param>
    /// <param name="key">Key of the steps.</param>
    /// <param name="fits">Which classes can be used at all.</param>
    /// <param name="size">What they are ordered by and must reach.</param>
    /// <param name="least">What is needed, in the unit of <paramref name="size"/>.</param>
    /// <param name="needed">What is missing where there is none, in words.</param>
    internal string Class(
        string section, string key, Func<PartValues, bool> fits, Func<PartValues, double> size, double least, string needed)
    {
        List<PartValues> fit =
        [
            .. library.Parts.Classes(section).Select(c => new PartValues(c))
                .Where(c => fits(c) && size(c) >= least)
                .OrderBy(size),
        ];
        return Take([.. fit.Select(c => c.Name)], key, () => $"the library has no {needed}", "");
    }

    /// <summary>Steps that were added for a key.</summary>
    internal int StepsOf(string key) => steps.Of(key);

    /// <summary>A class that was chosen.</summary>
    internal PartValues Find(string section, string name) => new(library.Parts.Find(section, name)!);

    private static double InsulationOf(Library library) => library.Insulation[Insulation].RatedCelsius;

    private T Take<T>(IReadOnlyList<T> fit, string key, Func<string> words, T none)
    {
        if (fit.Count == 0)
        {
            _missing.Add(words());
            return none;
        }

        // Past the last, larger parts are of no help; the check then says what is left.
        return fit[Math.Min(steps.Of(key), fit.Count - 1)];
    }
}
