using WireCheck.Physics;
using WireCheck.Quantities;

namespace WireCheck.Knowledge;

/// <summary>How a conductor is stranded, as far as its resistance and diameter differ.</summary>
public enum Stranding
{
    Fine,
    Coarse,
    Solid,
}

/// <summary>What the resistance of a conductor is worked from.</summary>
public enum SectionBasis
{
    /// <summary>The largest resistance of the wire standard: IEC 60228 for metric sizes, ASTM B258 with stranding for gauge.</summary>
    Standard,

    /// <summary>Resistivity over nominal section, as handbooks reckon.</summary>
    NominalSection,
}

/// <summary>Resistance and geometry of conductors by size.</summary>
public sealed class ConductorTable
{
    private readonly SortedList<double, MetricRow> _metric = [];
    private readonly SortedList<double, MetricRow> _coarse = [];
    private readonly Curve _walls;
    private readonly Dictionary<Stranding, double> _fill;
    private readonly Source _gaugeSource;
    private readonly double _strandingPart;
    private readonly List<ConductorSize> _stocked;

    private sealed record MetricRow(double Plain, double? Tinned, Source Source);

    internal ConductorTable(TableNode file)
    {
        foreach (TableNode block in file.Children("metric"))
        {
            ReadRows(block, _metric);
        }

        ReadRows(file.Child("coarse"), _coarse);
        TableNode gauge = file.Child("gauge");
        _gaugeSource = gauge.Source("source");
        _strandingPart = TableValue.Parse(gauge.Word("stranding"), gauge.Position).Number;
        _walls = file.Child("walls").Curve("rows");
        TableNode fill = file.Child("fill");
        _fill = new Dictionary<Stranding, double>
        {
            [Stranding.Fine] = fill.Number("fine"),
            [Stranding.Coarse] = fill.Number("coarse"),
            [Stranding.Solid] = fill.Number("solid"),
        };
        _stocked =
        [
            .. gauge.Items("sizes").Select(n => TableNode.SizeOf(n, SizeSystem.Awg)),
            .. file.Child("stocked").Numbers("metric").Select(s => new ConductorSize(SizeSystem.Metric, s)),
        ];
    }

    /// <summary>Metal area in m²: ASTM B258 for gauge, the nominal section for metric sizes.</summary>
    public static double Area(ConductorSize size) =>
        size.System == SizeSystem.Awg ? WireGauge.Area(size.Number) : size.Number * 1e-6;

    /// <summary>Ohms per metre at a temperature.</summary>
    /// <param name="size">Size of the conductor.</param>
    /// <param name="material">Its metal.</param>
    /// <param name="celsius">Temperature of the metal in °C.</param>
    /// <param name="stranding">How it is stranded.</param>
    /// <param name="basis">What the figure is worked from.</param>
    public double OhmsPerMetre(
        ConductorSize size,
        Material material,
        double celsius,
        Stranding stranding = Stranding.Fine,
        SectionBasis basis = SectionBasis.Standard)
    {
        double at20 = basis == SectionBasis.NominalSection
            ? material.Resistivity * material.ResistanceFactor / Area(size)
            : size.System == SizeSystem.Awg ? GaugeAt20(size, material, stranding) : MetricAt20(size, material, stranding);
        return Resistance.AtTemperature(at20, material.Coefficient, celsius);
    }

    /// <summary>Source of the resistance of a size.</summary>
    public Source SourceOf(ConductorSize size) =>
        size.System == SizeSystem.Awg ? _gaugeSource : RowAtOrBelow(_metric, size.Number).Row.Source;

    /// <summary>Diameter in metres of the circle around the metal, strands and the air between them.</summary>
    public double ConductorDiameter(ConductorSize size, Stranding stranding = Stranding.Fine) =>
        Math.Sqrt(4 * Area(size) / Math.PI / _fill[stranding]);

    /// <summary>Thickness of the insulation in metres.</summary>
    public double Wall(ConductorSize size) => _walls.At(Area(size) * 1e6) * 1e-3;

    /// <summary>Diameter in metres over the insulation.</summary>
    public double OuterDiameter(ConductorSize size, Stranding stranding = Stranding.Fine) =>
        ConductorDiameter(size, stranding) + (2 * Wall(size));

    /// <summary>Sizes that shops keep, thinnest first.</summary>
    public IEnumerable<ConductorSize> Stocked(SizeSystem system) => _stocked.Where(s => s.System == system);

    private double GaugeAt20(ConductorSize size, Material material, Stranding stranding)
    {
        double lay = stranding == Stranding.Solid ? 1 : 1 + _strandingPart;
        return material.Resistivity * lay * material.ResistanceFactor / WireGauge.Area(size.Number);
    }

    private double MetricAt20(ConductorSize size, Material material, Stranding stranding)
    {
        SortedList<double, MetricRow> rows = stranding != Stranding.Fine && _coarse.ContainsKey(size.Number) ? _coarse : _metric;
        (double section, MetricRow row) = RowAtOrBelow(rows, size.Number);

        // A size the table lacks takes the row below it in proportion to section.
        double scale = section / size.Number * 1e-3;
        if (material.ResistanceFactor > 1)
        {
            return (row.Tinned ?? row.Plain * material.ResistanceFactor) * scale;
        }

        return row.Plain * scale * (material.Resistivity / Copper);
    }

    /// <summary>Resistivity the metric rows stand for: annealed copper, 1/58 Ω mm²/m. Source: IEC 60028.</summary>
    private const double Copper = 1e-6 / 58;

    private static (double Section, MetricRow Row) RowAtOrBelow(SortedList<double, MetricRow> rows, double section)
    {
        (double, MetricRow) found = (rows.Keys[0], rows.Values[0]);
        foreach ((double start, MetricRow row) in rows)
        {
            if (start <= section * (1 + 1e-9))
            {
                found = (start, row);
            }
        }

        return found;
    }

    private static void ReadRows(TableNode block, SortedList<double, MetricRow> rows)
    {
        Source source = block.Source("source");
        foreach (Text.YamlEntry entry in block.Child("rows").Entries)
        {
            TableNode row = TableNode.AsMap(entry.Value);
            if (!rows.TryAdd(TableNode.NumberOf(entry.Key), new MetricRow(row.Number("plain"), row.NumberOrNone("tinned"), source)))
            {
                throw TableNode.Wrong(entry.Key, $"{entry.Key.Text} mm² stands twice");
            }
        }
    }
}
