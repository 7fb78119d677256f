using WireCheck.Description;
using WireCheck.Description.Kinds;
using WireCheck.Knowledge;
using WireCheck.Quantities;

namespace WireCheck.Sizing;

/// <summary>What the builder has or allows, by <c>stock:</c>, and what it costs, by <c>costs:</c>. Without them everything may be used.</summary>
internal sealed class AtHand(Pack pack, PartLibrary library)
{
    /// <summary>True when wire of that size may be used: it is on a reel that fits the wire, and has a price where wire has prices.</summary>
    internal bool Has(ConductorSize size, Conductor wire) =>
        (pack.Stock.Count == 0 || pack.Stock.Any(reel => reel.Size.Value == size && Fits(reel, wire)))
        && (!WireIsPriced(size.System) || PriceOf(size) is not null);

    /// <summary>True when a fuse or breaker of that rating may be used: its class is not named with ratings, or with this one.</summary>
    internal bool HasRating(Fuse fuse, double amps)
    {
        bool named = false;
        foreach (StockPart part in pack.StockParts.Where(p => p.Part.Value == fuse.ClassName))
        {
            if (part.Ratings.Count == 0 || part.Ratings.Any(r => Math.Abs(r.Value.Amperes - amps) < Rounding * amps))
            {
                return true;
            }

            named = true;
        }

        return !named;
    }

    /// <summary>True when a class may be used: no class of its section is named, or this one is.</summary>
    internal bool HasClass(string section, string name)
    {
        bool named = false;
        foreach (StockPart part in pack.StockParts.Where(p => library.Find(section, p.Part.Value) is not null))
        {
            if (part.Part.Value == name)
            {
                return true;
            }

            named = true;
        }

        return !named;
    }

    /// <summary>Price of a metre of wire; null when none is given.</summary>
    internal double? PriceOf(ConductorSize size) => PriceOf(size.ToString());

    /// <summary>Price under that name; null when none is given.</summary>
    internal double? PriceOf(string name) => pack.Costs?.Prices.GetValueOrDefault(name)?.Value;

    private bool WireIsPriced(SizeSystem system) =>
        pack.Costs is { } costs && costs.Prices.Keys.Any(k => k.EndsWith(system == SizeSystem.Awg ? " AWG" : " mm²", StringComparison.Ordinal));

    private static bool Fits(StockReel reel, Conductor wire) =>
        (reel.Insulation is null || reel.Insulation.Value == wire.Insulation.Value)
        && (reel.Colour is null || wire.Colour is null || reel.Colour.Value == wire.Colour.Value);

    private const double Rounding = 1e-9;
}
