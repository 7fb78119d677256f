namespace WireCheck.Faults;

/// <summary>What was found at one place: the worst of the cases, and every case at its lowest.</summary>
public sealed class PointFaults(FaultPoint point)
{
    private readonly List<FaultOutcome> _lowest = [];

    public FaultPoint Point { get; } = point;

    /// <summary>Highest current, with every source feeding; null when nothing feeds the place.</summary>
    public FaultOutcome? Highest { get; private set; }

    /// <summary>
    /// Lowest current: of the banks that feed it, each alone; where none does, of the supplies. Null when nothing feeds it.
    /// </summary>
    public FaultOutcome? Lowest { get; private set; }

    /// <summary>The same short to the metal case instead; null where there is no such case or it is joined to nothing.</summary>
    public FaultOutcome? HighestToCase { get; private set; }

    /// <summary>Lowest current to the metal case.</summary>
    public FaultOutcome? LowestToCase { get; private set; }

    /// <summary>Each source that feeds it alone, at its lowest.</summary>
    public IReadOnlyList<FaultOutcome> BySource => _lowest;

    internal void Keep(FaultOutcome? outcome)
    {
        if (outcome is null)
        {
            return;
        }

        if (outcome.Case.Highest)
        {
            Highest = Higher(Highest, outcome);
            return;
        }

        _lowest.Add(outcome);
        Lowest = Lower(Lowest, outcome);
    }

    internal void KeepCase(FaultOutcome? outcome)
    {
        if (outcome is { Case.Highest: true })
        {
            HighestToCase = Higher(HighestToCase, outcome);
        }
        else if (outcome is not null)
        {
            LowestToCase = Lower(LowestToCase, outcome);
        }
    }

    private static FaultOutcome Higher(FaultOutcome? held, FaultOutcome outcome) =>
        held is null || outcome.Amps > held.Amps ? outcome : held;

    private static FaultOutcome Lower(FaultOutcome? held, FaultOutcome outcome) => held is null ? outcome
        : held.Case.FromBank != outcome.Case.FromBank ? (held.Case.FromBank ? held : outcome)
        : outcome.Amps < held.Amps ? outcome : held;
}
