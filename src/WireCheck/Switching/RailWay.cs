using WireCheck.Circuit.Elements;

namespace WireCheck.Switching;

/// <summary>A way from rail to rail that is not always open to current.</summary>
/// <param name="PartId">The part it belongs to; the words of an outside link.</param>
/// <param name="From">Rail at one end; of a diode, its anode.</param>
/// <param name="To">Rail at the other end.</param>
/// <param name="Element">The element itself.</param>
public sealed record RailWay(string PartId, int From, int To, Element Element);
