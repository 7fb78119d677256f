namespace WireCheck.Circuit.Solving;

/// <summary>A handful of equations solved by elimination with exchange of rows.</summary>
internal sealed class DenseSystem
{
    private double[] _matrix = new double[16];
    private int _size;

    /// <summary>Right side before <see cref="Solve"/>, answer after it.</summary>
    internal double[] Right { get; private set; } = new double[4];

    /// <summary>Clears the system and gives it a number of unknowns.</summary>
    internal void Start(int size)
    {
        _size = size;
        if (Right.Length < size)
        {
            Right = new double[2 * size];
            _matrix = new double[4 * size * size];
        }
    }

    internal double this[int row, int column]
    {
        set => _matrix[(row * _size) + column] = value;
    }

    /// <summary>Solves in place; false when the equations have no single answer.</summary>
    internal bool Solve()
    {
        for (int column = 0; column < _size; column++)
        {
            int best = column;
            for (int row = column + 1; row < _size; row++)
            {
                if (Math.Abs(_matrix[(row * _size) + column]) > Math.Abs(_matrix[(best * _size) + column]))
                {
                    best = row;
                }
            }

            double pivot = _matrix[(best * _size) + column];
            if (pivot == 0 || !double.IsFinite(pivot))
            {
                return false;
            }

            Exchange(column, best);
            for (int row = column + 1; row < _size; row++)
            {
                Subtract(row, column, _matrix[(row * _size) + column] / pivot);
            }
        }

        for (int row = _size - 1; row >= 0; row--)
        {
            for (int j = row + 1; j < _size; j++)
            {
                Right[row] -= _matrix[(row * _size) + j] * Right[j];
            }

            Right[row] /= _matrix[(row * _size) + row];
        }

        return true;
    }

    private void Exchange(int first, int second)
    {
        if (first == second)
        {
            return;
        }

        (Right[first], Right[second]) = (Right[second], Right[first]);
        for (int j = 0; j < _size; j++)
        {
            (_matrix[(first * _size) + j], _matrix[(second * _size) + j]) = (_matrix[(second * _size) + j], _matrix[(first * _size) + j]);
        }
    }

    private void Subtract(int row, int from, double share)
    {
        Right[row] -= share * Right[from];
        for (int j = from; j < _size; j++)
        {
            _matrix[(row * _size) + j] -= share * _matrix[(from * _size) + j];
        }
    }
}
