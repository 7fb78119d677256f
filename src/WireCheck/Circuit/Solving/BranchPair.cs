namespace WireCheck.Circuit.Solving;

/// <summary>
/// Two places of the elimination order as one column: +1 at the first, -1 at the second. A place of -1 is the
/// reference, which has no unknown.
/// </summary>
internal readonly record struct BranchPair(int Plus, int Minus)
{
    /// <summary>The product of this column with a vector: the voltage between the two places.</summary>
    internal double Times(double[] vector) =>
        (Plus >= 0 ? vector[Plus] : 0) - (Minus >= 0 ? vector[Minus] : 0);

    /// <summary>Adds a multiple of this column to a vector.</summary>
    internal void AddTo(double[] vector, double factor)
    {
        if (Plus >= 0)
        {
            vector[Plus] += factor;
        }

        if (Minus >= 0)
        {
            vector[Minus] -= factor;
        }
    }
}
