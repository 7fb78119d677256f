namespace WireCheck.Reports.Svg;

/// <summary>A plot of a report, ready to be placed on a page.</summary>
/// <param name="Title">What it shows.</param>
/// <param name="Draw">Writes it under a name of its own on the page.</param>
public sealed record ReportPlot(string Title, Func<string, string> Draw);
