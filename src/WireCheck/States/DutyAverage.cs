namespace WireCheck.States;

/// <summary>
/// What heats a box whose loads come and go: for each conductor the steady current that would make it as hot as it is at the end of
/// their spells, and for each part the watts that warm the air.
/// </summary>
internal sealed class DutyAverage
{
    private readonly double[] _boxParts;
    private readonly double[][] _wireParts;
    private readonly double[] _squares;

    /// <param name="states">The states of a mode.</param>
    /// <param name="boxTimeConstant">s.</param>
    /// <param name="wireTimeConstants">s, of each conductor.</param>
    /// <param name="parts">How many parts make heat.</param>
    internal DutyAverage(DutyStates states, double boxTimeConstant, IReadOnlyList<double> wireTimeConstants, int parts)
    {
        States = states;
        _boxParts = states.Parts(boxTimeConstant);
        _wireParts = new double[wireTimeConstants.Count][];
        for (int i = 0; i < _wireParts.Length; i++)
        {
            _wireParts[i] = states.Modes.Count == 1 ? _boxParts : states.Parts(wireTimeConstants[i]);
        }

        _squares = new double[_wireParts.Length];
        Amps = new double[_wireParts.Length];
        Watts = new double[parts];
    }

    /// <summary>The states that are averaged.</summary>
    internal DutyStates States { get; }

    /// <summary>Steady current that heats each conductor as much, A, 0 or more.</summary>
    internal double[] Amps { get; }

    /// <summary>Watts of each part.</summary>
    internal double[] Watts { get; }

    /// <summary>Counts one state.</summary>
    /// <param name="state">Which; the first begins anew.</param>
    /// <param name="amps">Current of each conductor, A, of either sign.</param>
    /// <param name="watts">Heat of each part, W.</param>
    internal void Add(int state, double[] amps, double[] watts)
    {
        if (state == 0)
        {
            Array.Clear(_squares);
            Array.Clear(Watts);
        }

        for (int i = 0; i < _squares.Length; i++)
        {
            _squares[i] += _wireParts[i][state] * amps[i] * amps[i];
            Amps[i] = Math.Sqrt(_squares[i]);
        }

        for (int i = 0; i < Watts.Length; i++)
        {
            Watts[i] += _boxParts[state] * watts[i];
        }
    }
}
