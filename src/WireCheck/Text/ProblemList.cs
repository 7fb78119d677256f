namespace WireCheck.Text;

/// <summary>
/// Collects every problem of a file, so that a builder mends them all at once. The same message at the
/// same place is kept once.
/// </summary>
public sealed class ProblemList
{
    private readonly HashSet<Problem> _problems = [];

    /// <summary>True when nothing was reported.</summary>
    public bool IsEmpty => _problems.Count == 0;

    /// <summary>Notes a problem.</summary>
    public void Add(Position position, string message) => _problems.Add(new Problem(position, message));

    /// <summary>Notes a problem that is already put in words.</summary>
    public void Add(Problem problem) => _problems.Add(problem);

    /// <summary>Takes a problem back that another one explains.</summary>
    public void Withdraw(Problem problem) => _problems.Remove(problem);

    /// <summary>All problems, in the order of the file.</summary>
    public IReadOnlyList<Problem> InOrder() =>
        [.. _problems.OrderBy(p => p.Position).ThenBy(p => p.Message, StringComparer.Ordinal)];
}
