namespace WireCheck.Faults.Coordination;

/// <summary>
/// Opening time by current along one edge of a band: straight lines between the gates on logarithmic paper. Below the
/// first gate it is infinite. Above the last gate it is the caller's to say. A larger current never takes longer.
/// </summary>
internal sealed class TimeCurrentCurve
{
    private readonly double[] _amps;
    private readonly double[] _seconds;

    /// <summary>A curve through gates in order of rising current, made monotone towards the careful side.</summary>
    /// <param name="amps">Current of each gate in A, not falling.</param>
    /// <param name="seconds">Time of each gate, 0 or more.</param>
    /// <param name="shortest">
    /// True when the lower of two contradicting gates counts, as for the fastest edge; false when the higher does.
    /// </param>
    internal TimeCurrentCurve(double[] amps, double[] seconds, bool shortest)
    {
        _amps = amps;
        _seconds = (double[])seconds.Clone();
        if (shortest)
        {
            for (int i = 1; i < _seconds.Length; i++)
            {
                _seconds[i] = Math.Min(_seconds[i], _seconds[i - 1]);
            }
        }
        else
        {
            for (int i = _seconds.Length - 2; i >= 0; i--)
            {
                _seconds[i] = Math.Max(_seconds[i], _seconds[i + 1]);
            }
        }
    }

    /// <summary>Current of each gate, A.</summary>
    internal ReadOnlySpan<double> Amps => _amps;

    /// <summary>Current of the last gate, A; infinite when there is no gate.</summary>
    internal double LastAmps => _amps.Length == 0 ? double.PositiveInfinity : _amps[^1];

    /// <summary>Time of the last gate, s; infinite when there is no gate.</summary>
    internal double LastSeconds => _amps.Length == 0 ? double.PositiveInfinity : _seconds[^1];

    /// <summary>Seconds at a current up to the last gate; the last gate's beyond it.</summary>
    internal double At(double amps)
    {
        if (_amps.Length == 0 || amps < _amps[0])
        {
            return double.PositiveInfinity;
        }

        for (int i = 1; i < _amps.Length; i++)
        {
            if (amps < _amps[i])
            {
                return Between(i - 1, i, amps);
            }
        }

        return _seconds[^1];
    }

    private double Between(int low, int high, double amps)
    {
        // A gate of no time at all has no place on logarithmic paper; the step is taken at once.
        if (_seconds[high] <= 0)
        {
            return _seconds[low] <= 0 ? 0 : _seconds[high];
        }

        double part = Math.Log(amps / _amps[low]) / Math.Log(_amps[high] / _amps[low]);
        return _seconds[low] * Math.Pow(_seconds[high] / _seconds[low], part);
    }
}
