namespace WireCheck.Faults;

/// <summary>One way to ask what a short draws: which sources feed, and which end of every uncertain value is taken.</summary>
/// <param name="Name">As it is told: "all sources", or the id of the one that feeds alone.</param>
/// <param name="Highest">
/// True: full cells at the top of their window, their resistance to alternating current, 20 °C copper, new joints, straight to
/// the bank's negative. False: empty, aged, cold cells, hot copper, every joint aged, back by the point's own return.
/// </param>
/// <param name="AtRest">True when change-over relays stand on their rest contact; every other contact is closed.</param>
/// <param name="Sources">Ids of the sources that feed.</param>
/// <param name="FromBank">True when a bank feeds; false when only a supply with a limit of its own does.</param>
public sealed record FaultCase(string Name, bool Highest, bool AtRest, IReadOnlyList<string> Sources, bool FromBank)
{
    public override string ToString() => Name;
}
