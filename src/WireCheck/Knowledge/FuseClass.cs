using WireCheck.Text;

namespace WireCheck.Knowledge;

/// <summary>A class of fuses or breakers: what its standard, or its kind, sets for all ratings.</summary>
/// <param name="Name">Name in descriptions, such as <c>strip-sf30</c>.</param>
/// <param name="Title">In words.</param>
/// <param name="Source">Source of voltage and breaking capacity.</param>
public sealed record FuseClass(string Name, string Title, Source Source)
{
    /// <summary>Source of the opening times.</summary>
    public required Source BandsSource { get; init; }

    /// <summary>Ratings that are made, in A, rising.</summary>
    public required IReadOnlyList<double> Ratings { get; init; }

    /// <summary>Highest direct voltage in V.</summary>
    public required double Volts { get; init; }

    /// <summary>Amperes it can break, by the highest direct voltage they hold for.</summary>
    public required Curve Breaking { get; init; }

    /// <summary>Cold resistance times rating, in V.</summary>
    public required double ColdDrop { get; init; }

    /// <summary>Part of the rating for hours of load at the test ambient.</summary>
    public required double SteadyFactor { get; init; }

    /// <summary>Part of the rating by ambient in °C.</summary>
    public required Curve Ambient { get; init; }

    /// <summary>What holds it: <c>blade</c>, <c>bolted</c> or <c>clips</c>.</summary>
    public required string Body { get; init; }

    /// <summary>True for a latch that trips, false for an element that melts: a latch has a time it never goes below.</summary>
    public required bool Trips { get; init; }

    /// <summary>Melting energy in A² s of the ratings that are known, by rating in A; null when there are none.</summary>
    public Curve? MeltingEnergies { get; init; }

    /// <summary>Cold resistance in Ω of the ratings that were read, by rating in A; null when there are none.</summary>
    public Curve? Resistances { get; init; }

    /// <summary>Opening times, by range of ratings.</summary>
    public required IReadOnlyList<FuseBand> Bands { get; init; }

    /// <summary>Amperes it can break at this direct voltage; null above <see cref="Volts"/>, where it clears nothing for certain.</summary>
    public double? BreakingAt(double volts)
    {
        foreach ((double upTo, double amps) in Breaking.Points)
        {
            if (volts <= upTo)
            {
                return amps;
            }
        }

        return null;
    }

    /// <summary>Cold resistance in Ω of a rating in A.</summary>
    public double ColdResistance(double rating) => Known(Resistances, rating) ?? (ColdDrop / rating);

    /// <summary>Melting energy in A² s of a rating in A; null where none is known.</summary>
    public double? MeltingEnergy(double rating) => Known(MeltingEnergies, rating);

    /// <summary>Amperes a rating carries for hours at this ambient in °C.</summary>
    public double SteadyAmps(double rating, double ambient) => rating * SteadyFactor * Ambient.At(ambient);

    /// <summary>The opening times of a rating: the band that holds it, else the nearest.</summary>
    public FuseBand BandFor(double rating) => Bands.MinBy(b => Math.Max(0, Math.Max(b.FromRating - rating, rating - b.ToRating)))!;

    private static double? Known(Curve? figures, double rating)
    {
        if (figures is not null)
        {
            foreach ((double known, double figure) in figures.Points)
            {
                if (Math.Abs(known - rating) < 1e-9)
                {
                    return figure;
                }
            }
        }

        return null;
    }

    internal static NamedTable<FuseClass> Read(TableNode file) => new(file.Children("classes").Select(ReadOne));

    private static (string, FuseClass) ReadOne(TableNode node)
    {
        string name = node.Word("class");
        TableNode values = node.Child("values");
        return (name, new FuseClass(name, node.Word("title"), node.Source("source"))
        {
            BandsSource = node.Source("bands_source"),
            Ratings = node.Numbers("ratings"),
            Volts = values.Number("volts"),
            Breaking = values.Curve("breaking"),
            ColdDrop = values.Number("cold_drop") * 1e-3,
            SteadyFactor = values.Number("steady"),
            Ambient = values.Curve("ambient"),
            Body = values.Word("body"),
            Trips = values.Word("opens") == "tripping",
            MeltingEnergies = node.Has("melting") ? node.Curve("melting") : null,
            Resistances = node.Has("resistances")
                ? new Curve([.. node.Curve("resistances").Points.Select(p => (p.X, p.Y * 1e-3))])
                : null,
            Bands = [.. node.Children("bands").Select(FuseBand.Read)],
        });
    }
}

/// <summary>Opening times of the ratings of a class between two.</summary>
/// <param name="FromRating">Lowest rating in A.</param>
/// <param name="ToRating">Highest rating in A.</param>
/// <param name="Times">Times by rising current.</param>
public sealed record FuseBand(double FromRating, double ToRating, IReadOnlyList<FuseTime> Times)
{
    internal static FuseBand Read(TableNode node)
    {
        (double from, double to) = node.Pair("ratings");
        return new FuseBand(from, to, [.. node.Items("times").Select(ReadTime)]);
    }

    private static FuseTime ReadTime(YamlNode node)
    {
        if (node is not YamlList { Items.Count: 3 } row)
        {
            throw TableNode.Wrong(node, "per cent, fastest and slowest are due");
        }

        return new FuseTime(TableNode.NumberOf(row.Items[0]) / 100, Seconds(row.Items[1]), Seconds(row.Items[2]));
    }

    private static double? Seconds(YamlNode node) => TableNode.WordOf(node) is "~" or "" ? null : TableNode.NumberOf(node);
}

/// <summary>Opening times at one current.</summary>
/// <param name="Multiple">Current over rating.</param>
/// <param name="Fastest">Never opens sooner, in s; null where nothing is set.</param>
/// <param name="Slowest">Open by then, in s; null where nothing is set.</param>
public sealed record FuseTime(double Multiple, double? Fastest, double? Slowest);
