using System.Text;
using WireCheck.Drawing;
using WireCheck.Findings;
using WireCheck.Rules;
using static WireCheck.Reports.Svg.SvgText;

namespace WireCheck.Reports.Svg;

/// <summary>
/// The wiring drawing as SVG. The worst finding of a part shows by the dashes of its line and by a mark before its
/// name, besides the colour; the name leads to the finding.
/// </summary>
public static class DrawingSvg
{
    /// <summary>The drawing's own style, for a sheet without a page around it.</summary>
    public const string Style = """
        .wiring { font: 11px "DejaVu Sans Mono", Consolas, Menlo, monospace; color: CanvasText; }
        .wiring text { fill: currentColor; stroke: none; }
        .wiring a text { text-decoration: underline; }
        .wiring line, .wiring path, .wiring rect, .wiring circle { stroke: currentColor; stroke-width: 1.4; fill: none; }
        .wiring .body rect, .wiring .body circle { fill: Canvas; }
        .wiring .bar { stroke-width: 5; }
        .wiring .thick { stroke-width: 3.4; }
        .wiring .dot, .wiring .arrow { fill: currentColor; }
        .wiring .danger { color: #b00020; }
        .wiring .fault { color: #9a4a00; }
        .wiring .advice { color: #0b57a4; }
        .wiring line.danger { stroke-width: 3; stroke-dasharray: 9 4; }
        .wiring line.fault { stroke-width: 2.4; stroke-dasharray: 4 3; }
        .wiring line.advice { stroke-width: 2; stroke-dasharray: 10 3 2 3; }
        @media (prefers-color-scheme: dark) {
          .wiring .danger { color: #ff8a80; }
          .wiring .fault { color: #ffb77c; }
          .wiring .advice { color: #9ecbff; }
        }
        """;

    /// <summary>Writes the drawing.</summary>
    /// <param name="drawing">The placed drawing.</param>
    /// <param name="title">Title of the box.</param>
    /// <param name="findings">Findings that mark parts.</param>
    /// <param name="suffix">Ends the names of places, when several drawings share a page.</param>
    /// <param name="ownStyle">True when the sheet stands alone and carries its style.</param>
    public static string Write(PlacedDrawing drawing, string title, IReadOnlyList<Finding> findings, string suffix, bool ownStyle)
    {
        WorstByPart worst = new(findings);
        StringBuilder svg = new();
        svg.Append("<svg class=\"wiring\" xmlns=\"http://www.w3.org/2000/svg\" role=\"group\" aria-labelledby=\"wiring-title").Append(suffix).Append("\" viewBox=\"0 0 ")
            .Append(Px(drawing.Width)).Append(' ').Append(Px(drawing.Height)).Append("\" width=\"").Append(Px(drawing.Width))
            .Append("\" height=\"").Append(Px(drawing.Height)).Append("\">\n<title id=\"wiring-title").Append(suffix).Append("\">Wiring of ").Append(Escape(title)).Append("</title>\n");
        if (ownStyle)
        {
            svg.Append("<style>\n").Append(Style).Append("\n</style>\n");
        }

        foreach (PlacedLine line in drawing.Lines)
        {
            string kind = line.Kind switch { LineKind.Wire => "wire", LineKind.Bar => "bar", _ => "node" };
            string mark = line.Part is not null && worst.Of(line.Part) is { } found ? $" {SeverityWords.For(found.Severity)}" : "";
            svg.Append(Line(line.FromX, line.FromY, line.ToX, line.ToY, $" class=\"{kind}{mark}\"")).Append('\n');
        }

        foreach (PlacedDot dot in drawing.Dots)
        {
            svg.Append($"<circle class=\"dot\" cx=\"{Px(dot.X)}\" cy=\"{Px(dot.Y)}\" r=\"3\"/>\n");
        }

        foreach (PlacedReference end in drawing.References)
        {
            svg.Append($"<path class=\"arrow\" d=\"M{Px(end.X - 4)} {Px(end.Y - 7)} H{Px(end.X + 4)} L{Px(end.X)} {Px(end.Y)} Z\"/>\n");
        }

        foreach (PlacedSymbol symbol in drawing.Symbols)
        {
            string mark = worst.Of(symbol.Symbol.Part) is { } found ? $" {SeverityWords.For(found.Severity)}" : "";
            svg.Append($"<g class=\"symbol{mark}\">{SymbolShapes.Draw(symbol)}</g>\n");
        }

        foreach (PlacedLabel label in drawing.Labels)
        {
            WriteLabel(svg, label, suffix, worst);
        }

        return svg.Append("</svg>\n").ToString();
    }

    private static void WriteLabel(StringBuilder svg, PlacedLabel label, string suffix, WorstByPart worst)
    {
        string words = Escape(label.Words);
        double width = label.Words.EnumerateRunes().Count() * PlacedDrawing.LetterWidth;
        string text = $"<text x=\"{Px(label.X)}\" y=\"{Px(label.Y)}\" textLength=\"{Px(width)}\">{words}</text>";
        if (label.Part is null)
        {
            svg.Append(text).Append('\n');
            return;
        }

        string id = $" id=\"drawn-{Escape(label.Part)}{suffix}\"";
        if (worst.Of(label.Part) is not { } found)
        {
            svg.Append($"<g{id}>{text}</g>\n");
            return;
        }

        string severity = SeverityWords.For(found.Severity);
        svg.Append($"<g{id} class=\"{severity}\">{Mark(found.Severity, label.X - 11, label.Y - 9)}<a href=\"#{FindingAnchor.Of(found)}{suffix}\"><title>")
            .Append(Escape($"{severity}: {found.Title}")).Append("</title>").Append(text).Append("</a></g>\n");
    }

    /// <summary>A triangle for danger, a square for a fault, a ring for advice: told apart without colour.</summary>
    private static string Mark(Severity severity, double x, double y) => severity switch
    {
        Severity.Danger => $"<path class=\"dot\" d=\"M{Px(x)} {Px(y + 9)} h9 l-4.5 -9 z\"/>",
        Severity.Fault => $"<rect class=\"dot\" x=\"{Px(x)}\" y=\"{Px(y + 1)}\" width=\"8\" height=\"8\"/>",
        _ => $"<circle cx=\"{Px(x + 4.5)}\" cy=\"{Px(y + 5)}\" r=\"3.5\"/>",
    };

    /// <summary>The worst finding of each part that nobody waived.</summary>
    private sealed class WorstByPart
    {
        private readonly Dictionary<string, Finding> _worst = new(StringComparer.Ordinal);

        internal WorstByPart(IReadOnlyList<Finding> findings)
        {
            foreach (Finding finding in findings.Where(f => f.Waived is null))
            {
                if (!_worst.TryGetValue(finding.Part, out Finding? held) || finding.Severity > held.Severity)
                {
                    _worst[finding.Part] = finding;
                }
            }
        }

        internal Finding? Of(string part) => _worst.GetValueOrDefault(part);
    }
}
