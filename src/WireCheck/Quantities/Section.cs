using UnitsNet;

namespace WireCheck.Quantities;

/// <summary>A rectangular section, written <c>20 x 2 mm</c>; both sides above zero.</summary>
public readonly record struct Section(Length Width, Length Thickness)
{
    /// <summary>Area of the section.</summary>
    public Area Area => Width * Thickness;
}

/// <summary>The inside of a box, written <c>300 x 190 x 160 mm</c> as width, depth, height; all above zero.</summary>
public readonly record struct BoxSize(Length Width, Length Depth, Length Height);
