namespace WireCheck.Knowledge;

/// <summary>A way to end a conductor, or a joint without one.</summary>
/// <param name="Name">Name in descriptions, such as <c>crimped-ring</c>.</param>
/// <param name="Title">In words.</param>
/// <param name="Source">Where the contact's figures and limits come from.</param>
public sealed record JointClass(string Name, string Title, Source Source)
{
    /// <summary>Metres of the conductor's own wire that a fresh crimp or solder counts as.</summary>
    public required double TypicalWireLength { get; init; }

    /// <summary>The same after years.</summary>
    public required double AgedWireLength { get; init; }

    /// <summary>Ohms of the fresh contact.</summary>
    public required double TypicalContact { get; init; }

    /// <summary>Ohms of the contact after years.</summary>
    public required double AgedContact { get; init; }

    /// <summary>Most heat in W before the joint runs hot.</summary>
    public required double WattLimit { get; init; }

    /// <summary>Thinnest conductor it accepts, in m².</summary>
    public required double SmallestArea { get; init; }

    /// <summary>Thickest conductor it accepts, in m².</summary>
    public required double LargestArea { get; init; }

    /// <summary>Solder is what holds the wire.</summary>
    public required bool Solder { get; init; }

    /// <summary>It lies on a stud, where others may lie above it.</summary>
    public required bool Lug { get; init; }

    /// <summary>Its heat is judged by the limit of push-on contacts; by that of bolted joints otherwise.</summary>
    public required bool HeatsAsPushOn { get; init; }

    /// <summary>Most steady amperes by area of conductor in mm², in steps; null when the conductor decides.</summary>
    public Curve? Currents { get; init; }

    /// <summary>Ohms of the joint.</summary>
    /// <param name="ohmsPerMetre">Resistance of its conductor at 20 °C; 0 for a joint without a conductor.</param>
    /// <param name="aged">After years, for the highest resistance; fresh otherwise.</param>
    public double Resistance(double ohmsPerMetre, bool aged) => aged
        ? (AgedWireLength * ohmsPerMetre) + AgedContact
        : (TypicalWireLength * ohmsPerMetre) + TypicalContact;

    /// <summary>
    /// Most steady amperes with a conductor of this area in m²; null when the conductor decides. A conductor thinner
    /// than the first row counts in proportion to it.
    /// </summary>
    public double? CurrentLimit(double area)
    {
        if (Currents is null)
        {
            return null;
        }

        (double thinnest, double amps) = Currents.Points[0];
        return Currents.StepAt(area * 1e6) ?? (amps * area * 1e6 / thinnest);
    }

    internal static NamedTable<JointClass> Read(TableNode file) => new(file.Children("joints").Select(ReadOne));

    private static (string, JointClass) ReadOne(TableNode node)
    {
        string name = node.Word("joint");
        TableNode values = node.Child("values");
        (double typicalLength, double agedLength) = values.Pair("wire_length");
        (double typicalContact, double agedContact) = values.Pair("contact");
        (double smallest, double largest) = values.Pair("sizes");
        return (name, new JointClass(name, node.Word("title"), node.Source("source"))
        {
            TypicalWireLength = typicalLength * 1e-3,
            AgedWireLength = agedLength * 1e-3,
            TypicalContact = typicalContact * 1e-3,
            AgedContact = agedContact * 1e-3,
            WattLimit = values.Number("watts"),
            SmallestArea = smallest * 1e-6,
            LargestArea = largest * 1e-6,
            Solder = values.YesOrNo("solder"),
            Lug = values.YesOrNo("lug"),
            HeatsAsPushOn = values.Word("heat_as") == "push-on",
            Currents = values.Has("currents") ? values.Curve("currents") : null,
        });
    }
}
