namespace WireCheck.Reports.Svg;

/// <summary>A point of a curve, in the units of the axes.</summary>
public readonly record struct PlotPoint(double X, double Y);

/// <summary>A curve of a plot. Curves are told apart by their dashes and their names, not by colour alone.</summary>
/// <param name="Name">Its name in the key.</param>
/// <param name="Points">Its points, from left to right; those outside the axes are cut off.</param>
public sealed record PlotCurve(string Name, IReadOnlyList<PlotPoint> Points);

/// <summary>An axis.</summary>
/// <param name="Name">What it counts.</param>
/// <param name="Unit">Unit of its numbers.</param>
/// <param name="From">Least value.</param>
/// <param name="To">Largest value, above the least.</param>
/// <param name="Logarithmic">Decades of equal width; the least value is then above zero.</param>
public sealed record PlotAxis(string Name, string Unit, double From, double To, bool Logarithmic);

/// <summary>A range along the x axis that is shaded.</summary>
/// <param name="Name">Its name in the key.</param>
/// <param name="From">Where it begins.</param>
/// <param name="To">Where it ends.</param>
public sealed record PlotRange(string Name, double From, double To);

/// <summary>Curves over two axes.</summary>
public sealed record Plot(string Title, PlotAxis X, PlotAxis Y, IReadOnlyList<PlotCurve> Curves, PlotRange? Range);
