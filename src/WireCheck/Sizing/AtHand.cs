using WireCheck.Description;
using WireCheck.Description.Kinds;
using WireCheck.Quantities;

namespace WireCheck.Sizing;

/// <summary>What the builder has or allows, by <c>stock:</c>, and what it costs, by <c>costs:</c>. Without them everything may be used.</summary>
internal sealed class AtHand(Pack pack)
{
    /// <summary>True when wire of that size may be used: it is on a reel that fits the wire, and has a price where wire has prices.</summary>
    internal bool Has(ConductorSize size, Conductor wire) =>
        (pack.Stock.Count == 0 || pack.Stock.Any(reel => reel.Size.Value == size && Fits(reel, wire)))
        && (!WireIsPriced(size.System) || PriceOf(size) is not null);

    /// <summary>Price of a metre of wire; null when none is given.</summary>
    internal double? PriceOf(ConductorSize size) => PriceOf(size.ToString());

    /// <summary>Price under that name; null when none is given.</summary>
    internal double? PriceOf(string name) => pack.Costs?.Prices.GetValueOrDefault(name)?.Value;

    private bool WireIsPriced(SizeSystem system) =>
        pack.Costs is { } costs && costs.Prices.Keys.Any(k => k.EndsWith(system == SizeSystem.Awg ? " AWG" : " mm²", StringComparison.Ordinal));

    private static bool Fits(StockReel reel, Conductor wire) =>
        (reel.Insulation is null || reel.Insulation.Value == wire.Insulation.Value)
        && (reel.Colour is null || wire.Colour is null || reel.Colour.Value == wire.Colour.Value);
}
