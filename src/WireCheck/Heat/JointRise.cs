using WireCheck.Physics;

namespace WireCheck.Heat;

/// <summary>
/// How warm a joint gets. Its heat leaves by the wire, which cools along its length as a fin, and as much again by what the wire
/// is joined to. An estimate, to rank joints by: a bar or a cell draws off more, a plastic holder less.
/// </summary>
public static class JointRise
{
    /// <summary>K above the wire far from the joint.</summary>
    /// <param name="watts">Heat of the joint, 0 or more.</param>
    /// <param name="wire">The wire that ends in it.</param>
    /// <param name="length">Of the wire, m, above 0.</param>
    /// <param name="transfer">From the wire to the air, W/(m² K).</param>
    public static double Kelvin(double watts, WireShape wire, double length, double transfer) =>
        watts / (2 * Conduction.Fin(transfer * Math.PI * wire.OuterDiameter, wire.Conductance, length));
}
