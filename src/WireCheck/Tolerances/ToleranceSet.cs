using UnitsNet;
using WireCheck.Description;
using WireCheck.Knowledge;

namespace WireCheck.Tolerances;

/// <summary>One tolerance.</summary>
/// <param name="Name">What it is of, in the plural: "cells", "lengths", "joints", "coils", "standby".</param>
/// <param name="Means">What it is of, in words.</param>
/// <param name="Share">Part of the described value, either way, 0 to below 1.</param>
/// <param name="Source">Where it comes from; null when the description declares it.</param>
public sealed record Tolerance(string Name, string Means, double Share, Source? Source);

/// <summary>The tolerances of a box, declared or assumed.</summary>
public sealed class ToleranceSet
{
    private ToleranceSet(DeclaredTolerances? declared, Library library)
    {
        Tolerance Of(string name, string means, Given<Ratio>? given, string assumed)
        {
            NamedValue row = library.Assumptions[assumed];
            return given is null
                ? new Tolerance(name, means, row.Value, row.Source)
                : new Tolerance(name, means, given.Value.DecimalFractions, null);
        }

        Cells = Of("cells", "resistance of cells", declared?.CellResistance, "tolerance_cell_resistance");
        Lengths = Of("lengths", "length of conductors", declared?.Length, "tolerance_length");
        Joints = Of("joints", "resistance of joints by class", declared?.Joint, "tolerance_joint");
        Coils = Of("coils", "resistance of coils", declared?.Coil, "tolerance_coil");
        Standby = Of("standby", "current at rest", declared?.Standby, "tolerance_standby");
    }

    public Tolerance Cells { get; }

    public Tolerance Lengths { get; }

    public Tolerance Joints { get; }

    public Tolerance Coils { get; }

    /// <summary>Of what parts draw at rest; it makes no corner, since nothing else follows from it.</summary>
    public Tolerance Standby { get; }

    /// <summary>Those that make corners.</summary>
    public IReadOnlyList<Tolerance> Varied => [Cells, Lengths, Joints, Coils];

    /// <summary>The tolerances of a box.</summary>
    public static ToleranceSet Of(Pack pack, Library library) => new(pack.Tolerances, library);
}
