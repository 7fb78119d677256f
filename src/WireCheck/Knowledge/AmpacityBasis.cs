using WireCheck.Physics;
using WireCheck.Quantities;

namespace WireCheck.Knowledge;

/// <summary>
/// One published way to rate conductors. Never reads upward: a size between two rows takes the thinner row, an
/// insulation between two columns the lower column.
/// </summary>
public sealed class AmpacityBasis
{
    private readonly List<Row> _rows;
    private readonly double[] _columns;
    private readonly Curve _bundle;
    private readonly bool _raisedWhenColder;
    private readonly double _printedAmbient = double.PositiveInfinity;
    private readonly double[] _printedFactors = [];

    private sealed record Row(ConductorSize Size, double Area, double[] Amps);

    internal AmpacityBasis(TableNode file)
    {
        Id = file.Word("basis");
        Title = file.Word("title");
        Source = file.Source("source");
        Sizes = file.Word("sizes") == "awg" ? SizeSystem.Awg : SizeSystem.Metric;
        AmbientCelsius = file.Number("ambient");
        _columns = file.Numbers("columns");
        _rows = [.. file.Child("rows").Entries.Select(ReadRow).OrderBy(r => r.Area)];

        TableNode ambient = file.Child("ambient_correction");
        AmbientSource = ambient.Source("source");
        _raisedWhenColder = ambient.YesOrNo("raised_when_colder");
        if (ambient.ChildOrNone("printed") is { } printed)
        {
            _printedAmbient = printed.Number("ambient");
            _printedFactors = printed.Numbers("factors");
            RequireColumns(_printedFactors, printed.Position);
        }

        TableNode bundle = file.Child("bundle");
        BundleSource = bundle.Source("source");
        BundleAssumption = bundle.Word("assumption");
        _bundle = bundle.Curve("factors");
    }

    /// <summary>Name in settings, such as <c>cfr-183-425</c>.</summary>
    public string Id { get; }

    /// <summary>In words.</summary>
    public string Title { get; }

    /// <summary>Source of the printed amperes.</summary>
    public Source Source { get; }

    /// <summary>System of its rows.</summary>
    public SizeSystem Sizes { get; }

    /// <summary>Ambient of its printed amperes in °C.</summary>
    public double AmbientCelsius { get; }

    /// <summary>Source of the correction for another ambient.</summary>
    public Source AmbientSource { get; }

    /// <summary>Source of the factors for bundles.</summary>
    public Source BundleSource { get; }

    /// <summary>What is assumed when the bundle factors are used here.</summary>
    public string BundleAssumption { get; }

    /// <summary>True when it has a row for the size or a thinner one.</summary>
    public bool Covers(ConductorSize size) => Fits(_rows[0], size);

    /// <summary>
    /// Ampacity of a conductor; null when the basis has no row for so thin a size, or no figure in that row.
    /// </summary>
    public Ampacity? Rate(AmpacityQuestion question)
    {
        Row? row = _rows.LastOrDefault(r => Fits(r, question.Size));
        if (row is null || ColumnFor(row, question.InsulationCelsius) is not { } column)
        {
            return null;
        }

        double rating = Math.Min(question.InsulationCelsius, _columns[column]);
        List<AmpacityFactor> factors = [];
        Note(factors, question.Material.Title, question.Material.AmpacityFactor);
        Note(factors, FormattableString.Invariant($"{question.AmbientCelsius:0.#} °C around it"), AmbientFactor(column, rating, question.AmbientCelsius));
        int count = Math.Max(1, question.LoadedInBundle);
        Note(factors, FormattableString.Invariant($"{count} loaded in the bundle"), BundleFactor(count));

        double amps = factors.Aggregate(row.Amps[column], (product, factor) => product * factor.Value);
        return new Ampacity(amps, row.Amps[column], row.Size, _columns[column], factors, Id, Source);
    }

    /// <summary>Factor for that many loaded conductors in one bundle.</summary>
    public double BundleFactor(int loaded) => _bundle.StepAt(Math.Max(1, loaded)) ?? 1;

    private static void Note(List<AmpacityFactor> factors, string words, double value)
    {
        if (Math.Abs(value - 1) > 1e-12)
        {
            factors.Add(new AmpacityFactor(words, value));
        }
    }

    private static bool Fits(Row row, ConductorSize size) => row.Area <= ConductorTable.Area(size) * (1 + 1e-9);

    /// <summary>
    /// The highest column at or below the insulation; where there is none, the lowest above it, which
    /// <see cref="AmbientFactor"/> brings down to the insulation's own rating. A 0 in the table is no figure.
    /// </summary>
    private int? ColumnFor(Row row, double insulation)
    {
        int? lowestAbove = null;
        for (int i = _columns.Length - 1; i >= 0; i--)
        {
            if (row.Amps[i] <= 0)
            {
                continue;
            }

            if (_columns[i] <= insulation)
            {
                return i;
            }

            lowestAbove = i;
        }

        return lowestAbove;
    }

    private double AmbientFactor(int column, double rating, double ambient)
    {
        double factor = AmbientCorrection.Factor(_columns[column], AmbientCelsius, rating, ambient);
        if (!_raisedWhenColder)
        {
            factor = Math.Min(1, factor);
        }

        return ambient >= _printedAmbient ? Math.Min(factor, _printedFactors[column]) : factor;
    }

    private Row ReadRow(Text.YamlEntry entry)
    {
        ConductorSize size = TableNode.SizeOf(entry.Key, Sizes);
        double[] amps = entry.Value is Text.YamlList list
            ? [.. list.Items.Select(TableNode.NumberOf)]
            : throw TableNode.Wrong(entry.Value, "a list of amperes is due");
        RequireColumns(amps, entry.Value.Position);
        return new Row(size, ConductorTable.Area(size), amps);
    }

    private void RequireColumns(double[] figures, Text.Position at)
    {
        if (figures.Length != _columns.Length)
        {
            throw new KnowledgeException($"{at}: {_columns.Length} figures are due, one for each column");
        }
    }
}
