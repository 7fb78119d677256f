namespace WireCheck.Physics;

/// <summary>The faces of a box, and which of them give off heat.</summary>
/// <param name="Width">m.</param>
/// <param name="Depth">m.</param>
/// <param name="Height">m.</param>
/// <param name="SideCovered">The largest side lies against something.</param>
/// <param name="BottomFree">The bottom hangs in the air; else it stands on something and gives off nothing.</param>
public readonly record struct CabinetFaces(double Width, double Depth, double Height, bool SideCovered = false, bool BottomFree = false)
{
    /// <summary>The top, m².</summary>
    public double Top => Width * Depth;

    /// <summary>The bottom where it is free, m².</summary>
    public double Bottom => BottomFree ? Width * Depth : 0;

    /// <summary>The sides that are free, m².</summary>
    public double Sides => (2 * Height * (Width + Depth)) - Covered;

    /// <summary>All faces that are free, m².</summary>
    public double Free => Sides + Top + Bottom;

    /// <summary>Area over perimeter of the top, m.</summary>
    public double TopLength => Top / (2 * (Width + Depth));

    /// <summary>
    /// Effective cooling area, m²: 1.4 top, 0.9 free sides, 0.5 a covered one; the report counts nothing of a bottom, free or not. Source:
    /// IEC TR 60890, Table 3, from memory.
    /// </summary>
    public double Effective => (1.4 * Top) + (0.9 * Sides) + (0.5 * Covered);

    private double Covered => SideCovered ? Height * Math.Max(Width, Depth) : 0;
}
