using UnitsNet;

namespace WireCheck.Quantities;

/// <summary>UnitsNet counts watts in decimals; the solver counts in doubles.</summary>
public static class PowerValue
{
    /// <summary>Watts as a double.</summary>
    public static double ToWatts(this Power power) => (double)power.Watts;
}
