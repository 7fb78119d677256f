namespace WireCheck.Circuit.Solving;

/// <summary>
/// Factor L D Lᵀ of a symmetric matrix without exchange of pivots. A resistive network is positive definite;
/// constant-power parts make it at worst mildly indefinite, and <see cref="NegativePivots"/> then tells that the
/// state is not a stable one.
/// </summary>
internal abstract class SymmetricFactor
{
    /// <summary>Unknowns from which columns are worked on in blocks; below, one at a time is faster.</summary>
    private const int FewestForBlocks = 1000;

    /// <summary>Pivots below zero in the last factoring.</summary>
    internal int NegativePivots { get; private protected set; }

    /// <summary>The kind of factor that is faster for the size of the matrix.</summary>
    internal static SymmetricFactor For(SparsePattern pattern) =>
        pattern.Size < FewestForBlocks ? new SparseFactor(pattern) : new BlockFactor(pattern);

    /// <summary>
    /// Factors a matrix. A pivot that rounding leaves without a significant digit is replaced by its own scale, which
    /// slows Newton's method and does not change where it ends.
    /// </summary>
    /// <param name="diagonal">Diagonal in elimination order.</param>
    /// <param name="entries">Off-diagonal entries in the order of <see cref="SparsePattern.RowColumns"/>.</param>
    internal abstract void Factor(double[] diagonal, double[] entries);

    /// <summary>Solves in place; the right side and the answer are in elimination order.</summary>
    internal abstract void Solve(double[] right);

    /// <summary>The pivot to divide by.</summary>
    private protected double Usable(double pivot, double diagonal)
    {
        double scale = Math.Max(Math.Abs(diagonal), 1e-12);
        if (Math.Abs(pivot) < 1e-14 * scale)
        {
            return scale;
        }

        if (pivot < 0)
        {
            NegativePivots++;
        }

        return pivot;
    }
}
