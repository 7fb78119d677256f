namespace WireCheck.States;

/// <summary>A box in one mode, warm: circuit and heat settled together, as after hours.</summary>
public sealed record HeatedMode
{
    /// <summary>The point as it settled, with every load on that comes and goes; its corner tells how full the cells are.</summary>
    public required OperatingPoint Point { get; init; }

    /// <summary>Air around the box, °C.</summary>
    public required double AmbientCelsius { get; init; }

    /// <summary>Air in the box by the heat balance of its walls, °C.</summary>
    public required double InsideCelsius { get; init; }

    /// <summary>The same by the simple rule, °C.</summary>
    public required double SimpleInsideCelsius { get; init; }

    /// <summary>Heat each part leaves in the box, W, in the order of the wired parts; on the average where loads come and go.</summary>
    public required double[] PartWatts { get; init; }

    /// <summary>Steady current that heats each conductor as much as its own, A, in the order of the wired conductors: less than its peak where loads pause.</summary>
    public required double[] ConductorAmps { get; init; }

    /// <summary>Temperature of each conductor's metal, °C, in the order of the wired conductors.</summary>
    public required double[] ConductorCelsius { get; init; }

    /// <summary>
    /// The same at the largest current that each carries at any corner of the mode, where that is more than at
    /// <see cref="Point"/>: when a load collapses at the highest resistances, the wire carries most at the lowest.
    /// </summary>
    public required double[] PeakCelsius { get; init; }

    /// <summary>All heat left in the box, W.</summary>
    public required double InsideWatts { get; init; }

    /// <summary>The cells take charge.</summary>
    public required bool Charging { get; init; }

    /// <summary>
    /// False when a conductor would be hotter than its insulation stands for seconds: such a state ends in smoke or by a fuse, and
    /// says nothing of the air in the box.
    /// </summary>
    public required bool Lasts { get; init; }

    /// <summary>Rounds of circuit and heat until nothing moved.</summary>
    public required int Rounds { get; init; }

    public BoxMode Mode => Point.Mode;

    public override string ToString() => $"{Mode}, {Point.Corner}";
}
