namespace WireCheck.Knowledge;

/// <summary>A single sourced number, such as an assumption that is taken where a description says nothing.</summary>
/// <param name="Name">Name in settings and reports, such as <c>charge_empty</c>.</param>
/// <param name="Value">In SI; temperatures in °C, per cents as a part of 1.</param>
/// <param name="Unit">SI unit, or empty.</param>
/// <param name="Written">As the table writes it: "10 %".</param>
/// <param name="Means">One sentence on what it is.</param>
/// <param name="Source">Where it comes from.</param>
public sealed record NamedValue(string Name, double Value, string Unit, string Written, string Means, Source Source)
{
    internal static NamedTable<NamedValue> Read(TableNode file) => new(file.Children("values").Select(ReadOne));

    private static (string, NamedValue) ReadOne(TableNode node)
    {
        string name = node.Word("name");
        string written = node.Word("value");
        (double value, string unit) = TableValue.Parse(written, node.Position);
        return (name, new NamedValue(name, value, unit, written, node.Word("means"), node.Source("source")));
    }
}
