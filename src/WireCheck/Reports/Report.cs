using WireCheck.Drawing;
using WireCheck.Edits;
using WireCheck.Facts;
using WireCheck.Findings;
using WireCheck.Reports.Pages;
using WireCheck.Reports.Svg;
using WireCheck.Rules;
using WireCheck.Tolerances;

namespace WireCheck.Reports;

/// <summary>Everything a report tells about one description.</summary>
/// <param name="File">The description's name as the user gave it.</param>
/// <param name="PackTitle">Title of the box.</param>
/// <param name="Findings">Findings, margins and what could not be judged.</param>
/// <param name="Facts">Facts of the pack and of every part.</param>
/// <param name="Cautions">The cautions of the trade, one sentence or two each.</param>
public sealed record Report(
    string File, string PackTitle, FindingList Findings, FactTable Facts, IReadOnlyList<string> Cautions)
{
    /// <summary>Thresholds that the description takes otherwise than its rule sets.</summary>
    public IReadOnlyList<SettingOverride> Overrides { get; init; } = [];

    /// <summary>The wiring drawing, made when a report asks for it; null when there is none.</summary>
    public Lazy<PlacedDrawing>? Drawing { get; init; }

    /// <summary>The description's text as it was read, to show its lines; empty when it is not at hand.</summary>
    public string Source { get; init; } = "";

    /// <summary>The description's text, ready for the edits that findings offer; null when it is not at hand.</summary>
    public Lazy<DescriptionEdits>? Text { get; init; }

    /// <summary>What the studies computed, made when a report asks for it.</summary>
    public IReadOnlyList<NumbersPage> Pages => _pages?.Value ?? [];

    /// <summary>Makes <see cref="Pages"/>.</summary>
    public Lazy<IReadOnlyList<NumbersPage>>? MakePages { init => _pages = value; }

    private readonly Lazy<IReadOnlyList<NumbersPage>>? _pages;

    /// <summary>Plots, made when a report asks for them.</summary>
    public IReadOnlyList<ReportPlot> Plots => _plots?.Value ?? [];

    /// <summary>Makes <see cref="Plots"/>.</summary>
    public Lazy<IReadOnlyList<ReportPlot>>? MakePlots { init => _plots = value; }

    private readonly Lazy<IReadOnlyList<ReportPlot>>? _plots;

    /// <summary>What becomes of the box within its tolerances; null when that was not asked for.</summary>
    public ToleranceResult? Tolerance { get; init; }

    /// <summary>The worst of the findings that stand and, where tolerances were asked for, of the margins that they eat.</summary>
    public Verdict Verdict => (Verdict)Math.Max((int)Findings.Counts.Verdict, (int)(Tolerance?.Verdict ?? Verdict.Passes));

    /// <summary>The tool's name, as every output writes it.</summary>
    public const string ToolName = "wirecheck";

    /// <summary>The tool's version.</summary>
    public static string ToolVersion { get; } = typeof(Report).Assembly.GetName().Version!.ToString(3);
}
