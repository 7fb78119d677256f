namespace WireCheck.Reports.Pages;

/// <summary>A table of a report, its cells as words.</summary>
/// <param name="Headings">One per column.</param>
/// <param name="Rows">Each as long as the headings.</param>
public sealed record ReportTable(IReadOnlyList<string> Headings, IReadOnlyList<IReadOnlyList<string>> Rows);

/// <summary>A piece of a page of numbers: words, or a table.</summary>
/// <param name="Words">A line of words; empty before a table.</param>
/// <param name="IsHeading">The words head what follows.</param>
/// <param name="Table">The table, or null.</param>
public sealed record PageBlock(string Words, bool IsHeading, ReportTable? Table);

/// <summary>What one study computed: modes, faults, states, standby, charging, heat, energy.</summary>
/// <param name="Id">The word by which <c>numbers</c> calls it.</param>
/// <param name="Title">Its heading.</param>
/// <param name="Blocks">Its pieces, in order.</param>
public sealed record NumbersPage(string Id, string Title, IReadOnlyList<PageBlock> Blocks);
