namespace WireCheck.States;

/// <summary>
/// Which of several relays that want to move goes first. The pull of each coil follows its voltage with one and the same lag,
/// x' = V - x in the time of that lag, and a relay moves when x passes its threshold; so the coil with the most voltage to spare
/// is first, and one that loses its feed by the first one's contact may not move at all. Equal ones go in the order of the
/// description, as do those that rounding alone sets apart. Voltages in V, without sign.
/// </summary>
/// <param name="relays">Number of relays.</param>
internal sealed class RelayRace(int relays)
{
    /// <summary>Ways left that differ by less than this part are equal: it is above rounding and below what coils differ by.</summary>
    private const double Equal = 1e-6;

    private readonly double[] _pull = new double[relays];

    /// <summary>
    /// The closest that a second has come to a first since <see cref="Clear"/>, in lags: who wins a race closer than the
    /// scatter of real relays is not to be told.
    /// </summary>
    internal double Closest { get; private set; } = double.PositiveInfinity;

    /// <summary>Forgets the races so far.</summary>
    internal void Clear() => Closest = double.PositiveInfinity;

    /// <summary>Puts the pull of a coil where it has been for long: at 0 V, or at the voltage that holds it.</summary>
    internal void Begin(int relay, double volts) => _pull[relay] = volts;

    /// <summary>Lets every pull come to the voltage of its coil, as after a long time.</summary>
    internal void Rest(double[] volts)
    {
        for (int i = 0; i < _pull.Length; i++)
        {
            _pull[i] = Math.Abs(volts[i]);
        }
    }

    /// <summary>The relay that moves first, and the time goes on to that moment; -1 when none wants to.</summary>
    /// <param name="volts">Voltage of each coil.</param>
    /// <param name="thresholds">Voltage at which each would move.</param>
    /// <param name="wants">Which want to.</param>
    internal int First(double[] volts, double[] thresholds, bool[] wants)
    {
        int first = -1;
        double left = 0;
        double second = 0;
        for (int i = 0; i < _pull.Length; i++)
        {
            // What is left of the way to the voltage when the threshold is passed; the most left is the soonest.
            double share = wants[i] ? ShareLeft(_pull[i], Math.Abs(volts[i]), thresholds[i]) : -1;
            if (share >= 0 && (first < 0 || share > left * (1 + Equal)))
            {
                (first, left, second) = (i, share, first < 0 ? 0 : left);
            }
            else if (share > second)
            {
                second = share;
            }
        }

        if (second > 0)
        {
            Closest = Math.Min(Closest, Math.Log(left / second));
        }

        for (int i = 0; first >= 0 && i < _pull.Length; i++)
        {
            double end = Math.Abs(volts[i]);
            _pull[i] = end + ((_pull[i] - end) * left);
        }

        return first;
    }

    private static double ShareLeft(double pull, double volts, double threshold)
    {
        double whole = Math.Abs(pull - volts);
        bool passed = Math.Sign(pull - threshold) == Math.Sign(volts - threshold);
        return passed || whole == 0 ? 1 : Math.Abs(threshold - volts) / whole;
    }
}
