namespace WireCheck.Physics;

/// <summary>Faces of a box that stands free on its bottom, of which the bottom gives off nothing.</summary>
/// <param name="Width">m.</param>
/// <param name="Depth">m.</param>
/// <param name="Height">m.</param>
public readonly record struct CabinetFaces(double Width, double Depth, double Height)
{
    /// <summary>The top, m².</summary>
    public double Top => Width * Depth;

    /// <summary>The four sides, m².</summary>
    public double Sides => 2 * Height * (Width + Depth);

    /// <summary>Area over perimeter of the top, m.</summary>
    public double TopLength => Top / (2 * (Width + Depth));

    /// <summary>
    /// Effective cooling area of a box that stands free on its bottom, m²: 1.4 top, 0.9 sides, nothing of the bottom. Source:
    /// IEC TR 60890, Table 3, from memory.
    /// </summary>
    public double Effective => (1.4 * Top) + (0.9 * Sides);
}
