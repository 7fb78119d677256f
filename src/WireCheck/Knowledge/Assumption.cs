namespace WireCheck.Knowledge;

/// <summary>A number that is taken where a description says nothing.</summary>
/// <param name="Name">Name in settings and reports, such as <c>charge_empty</c>.</param>
/// <param name="Value">In SI; temperatures in °C, per cents as a part of 1.</param>
/// <param name="Unit">SI unit, or empty.</param>
/// <param name="Written">As the table writes it: "10 %".</param>
/// <param name="Means">One sentence on what it is.</param>
/// <param name="Source">Where it comes from.</param>
public sealed record Assumption(string Name, double Value, string Unit, string Written, string Means, Source Source)
{
    internal static NamedTable<Assumption> Read(TableNode file) => new(file.Children("assumptions").Select(ReadOne));

    private static (string, Assumption) ReadOne(TableNode node)
    {
        string name = node.Word("assumption");
        string written = node.Word("value");
        (double value, string unit) = TableValue.Parse(written, node.Position);
        return (name, new Assumption(name, value, unit, written, node.Word("means"), node.Source("source")));
    }
}
