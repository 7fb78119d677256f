namespace WireCheck.Physics;

/// <summary>Finds the temperature at which a balance is even: the root of a continuous function between two bounds.</summary>
public static class BalancePoint
{
    /// <summary>What is left over at a temperature.</summary>
    public delegate double Surplus(double celsius);

    /// <summary>Rounds after which an interval of any finite width has shrunk to nothing.</summary>
    private const int MostRounds = 200;

    /// <summary>
    /// The root by false position with the Illinois weight (M. Dowell and P. Jarratt, BIT 11 (1971) 168), halved now and then
    /// where that is slow. The function must be above 0 below the root. Where it is above 0 at both bounds, the upper one;
    /// where at neither, the lower one.
    /// </summary>
    public static double Find(Surplus surplus, double low, double high)
    {
        double atLow = surplus(low);
        double atHigh = surplus(high);
        if (atLow <= 0 || atHigh >= 0)
        {
            return atLow <= 0 ? low : high;
        }

        int side = 0;
        for (int round = 0; round < MostRounds && high - low > Smallest * (1 + Math.Abs(low)); round++)
        {
            double middle = ((low * atHigh) - (high * atLow)) / (atHigh - atLow);
            if (round % HalveEvery == HalveEvery - 1 || !(middle > low && middle < high))
            {
                middle = low + ((high - low) / 2);
            }

            double value = surplus(middle);
            if (value > 0)
            {
                (low, atLow) = (middle, value);
                atHigh = side > 0 ? atHigh / 2 : atHigh;
                side = 1;
            }
            else if (value < 0)
            {
                (high, atHigh) = (middle, value);
                atLow = side < 0 ? atLow / 2 : atLow;
                side = -1;
            }
            else
            {
                return middle;
            }
        }

        return low + ((high - low) / 2);
    }

    private const int HalveEvery = 12;

    /// <summary>Width of the interval that is left, over its place: far below what any temperature means.</summary>
    private const double Smallest = 1e-13;
}
