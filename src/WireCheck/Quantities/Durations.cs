namespace WireCheck.Quantities;

/// <summary>Lengths of time that rates and shelf lives are told in.</summary>
public static class Durations
{
    /// <summary>A day of 24 hours, s.</summary>
    public const double SecondsPerDay = 86400;
}
