namespace WireCheck.Knowledge;

/// <summary>Points of a printed curve, joined by straight lines and held level beyond both ends.</summary>
public sealed class Curve
{
    private readonly (double X, double Y)[] _points;

    /// <summary>A curve through these points.</summary>
    /// <exception cref="ArgumentException">There is none, or the first numbers do not rise.</exception>
    public Curve(IReadOnlyList<(double X, double Y)> points)
    {
        if (points.Count == 0)
        {
            throw new ArgumentException("a curve needs at least one point", nameof(points));
        }

        for (int i = 1; i < points.Count; i++)
        {
            if (points[i].X <= points[i - 1].X)
            {
                throw new ArgumentException("the points of a curve must rise", nameof(points));
            }
        }

        _points = [.. points];
    }

    /// <summary>The points in rising order.</summary>
    public IReadOnlyList<(double X, double Y)> Points => _points;

    /// <summary>The curve's height at <paramref name="x"/>.</summary>
    public double At(double x)
    {
        if (x <= _points[0].X)
        {
            return _points[0].Y;
        }

        for (int i = 1; i < _points.Length; i++)
        {
            if (x <= _points[i].X)
            {
                (double x0, double y0) = _points[i - 1];
                (double x1, double y1) = _points[i];
                return y0 + ((y1 - y0) * (x - x0) / (x1 - x0));
            }
        }

        return _points[^1].Y;
    }

    /// <summary>Height of the last point at or below <paramref name="x"/>, without interpolation; null below the first.</summary>
    public double? StepAt(double x)
    {
        double? found = null;
        foreach ((double start, double y) in _points)
        {
            // Areas that come from a gauge miss a nominal section by rounding only.
            if (start <= x * (1 + 1e-9))
            {
                found = y;
            }
        }

        return found;
    }

    /// <summary>The <c>x</c> at which a rising curve reaches <paramref name="y"/>; the end where it never does.</summary>
    public double Inverse(double y)
    {
        if (y <= _points[0].Y)
        {
            return _points[0].X;
        }

        for (int i = 1; i < _points.Length; i++)
        {
            if (y <= _points[i].Y)
            {
                (double x0, double y0) = _points[i - 1];
                (double x1, double y1) = _points[i];
                return x0 + ((x1 - x0) * (y - y0) / (y1 - y0));
            }
        }

        return _points[^1].X;
    }
}
