namespace WireCheck.Circuit.Solving;

/// <summary>
/// Solves with A + Σ g_k u_k v_kᵀ on an existing factor of A, each u_k and v_k joining two places (Woodbury; W. W.
/// Hager, SIAM Review 31, 1989). With u = v it adds a conductance between two nodes, a fault or a contact that
/// closes; with u and v apart, a current in one place steered by the voltage at another, which a symmetric factor
/// could not hold. A term costs one solve to prepare; nothing dense is larger than the number of terms.
/// </summary>
internal sealed class LowRankUpdate
{
    private readonly SymmetricFactor _factor;
    private readonly BranchPair[] _into;
    private readonly BranchPair[] _from;
    private readonly double[][] _reach;
    private readonly double[] _small;
    private readonly int[] _exchange;
    private readonly double[] _right;
    private readonly double[] _siemens;

    /// <summary>Prepares room for the terms.</summary>
    /// <param name="factor">Factor of A; it may be factored anew between preparations.</param>
    /// <param name="size">Number of unknowns of A.</param>
    /// <param name="into">u: where each term's current goes.</param>
    /// <param name="from">v: the voltage that steers it.</param>
    internal LowRankUpdate(SymmetricFactor factor, int size, BranchPair[] into, BranchPair[] from)
    {
        _factor = factor;
        _into = into;
        _from = from;
        _reach = [.. into.Select(_ => new double[size])];
        _small = new double[into.Length * into.Length];
        _exchange = new int[into.Length];
        _right = new double[into.Length];
        _siemens = new double[into.Length];
    }

    /// <summary>
    /// Works out the effect of each term on the present factor. Terms of 0 S cost nothing.
    /// </summary>
    /// <param name="siemens">g of each term, S; any sign.</param>
    /// <returns>False when the changed matrix is singular; <see cref="Solve"/> then solves with A alone.</returns>
    internal bool Prepare(ReadOnlySpan<double> siemens)
    {
        int count = _into.Length;
        siemens.CopyTo(_siemens);
        for (int k = 0; k < count; k++)
        {
            Array.Clear(_reach[k]);
            if (siemens[k] != 0)
            {
                _into[k].AddTo(_reach[k], 1);
                _factor.Solve(_reach[k]);
            }
        }

        // Row i of I + G Vᵀ A⁻¹ U, which stays regular where g is 0.
        for (int i = 0; i < count; i++)
        {
            for (int j = 0; j < count; j++)
            {
                _small[(i * count) + j] = (i == j ? 1 : 0) + (siemens[i] * _from[i].Times(_reach[j]));
            }
        }

        if (Eliminate())
        {
            return true;
        }

        Array.Clear(_siemens);
        return false;
    }

    /// <summary>Solves with the changed matrix, in place and in elimination order.</summary>
    internal void Solve(double[] right)
    {
        _factor.Solve(right);
        int count = _into.Length;
        bool any = false;
        for (int k = 0; k < count; k++)
        {
            _right[k] = _siemens[k] * _from[k].Times(right);
            any |= _right[k] != 0;
        }

        if (!any)
        {
            return;
        }

        SolveSmall();
        for (int k = 0; k < count; k++)
        {
            double amount = _right[k];
            double[] reach = _reach[k];
            for (int place = 0; amount != 0 && place < right.Length; place++)
            {
                right[place] -= amount * reach[place];
            }
        }
    }

    /// <summary>Gaussian elimination with exchange of rows.</summary>
    private bool Eliminate()
    {
        int count = _into.Length;
        for (int column = 0; column < count; column++)
        {
            int best = column;
            for (int row = column + 1; row < count; row++)
            {
                if (Math.Abs(_small[(row * count) + column]) > Math.Abs(_small[(best * count) + column]))
                {
                    best = row;
                }
            }

            _exchange[column] = best;
            for (int j = 0; j < count; j++)
            {
                (_small[(column * count) + j], _small[(best * count) + j]) = (_small[(best * count) + j], _small[(column * count) + j]);
            }

            double pivot = _small[(column * count) + column];
            if (Math.Abs(pivot) < 1e-13)
            {
                return false;
            }

            for (int row = column + 1; row < count; row++)
            {
                double share = _small[(row * count) + column] /= pivot;
                for (int j = column + 1; j < count; j++)
                {
                    _small[(row * count) + j] -= share * _small[(column * count) + j];
                }
            }
        }

        return true;
    }

    private void SolveSmall()
    {
        int count = _into.Length;
        for (int row = 0; row < count; row++)
        {
            (_right[row], _right[_exchange[row]]) = (_right[_exchange[row]], _right[row]);
        }

        for (int row = 0; row < count; row++)
        {
            for (int j = 0; j < row; j++)
            {
                _right[row] -= _small[(row * count) + j] * _right[j];
            }
        }

        for (int row = count - 1; row >= 0; row--)
        {
            for (int j = row + 1; j < count; j++)
            {
                _right[row] -= _small[(row * count) + j] * _right[j];
            }

            _right[row] /= _small[(row * count) + row];
        }
    }
}
