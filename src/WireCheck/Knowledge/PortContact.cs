using WireCheck.Quantities;
using WireCheck.Text;

namespace WireCheck.Knowledge;

/// <summary>Contacts of a type of socket and plug.</summary>
/// <param name="Name">Name in descriptions, such as <c>vehicle-socket</c>.</param>
/// <param name="Title">In words.</param>
/// <param name="Source">Source of the currents.</param>
public sealed record PortContact(string Name, string Title, Source Source)
{
    private readonly List<(double Area, double Amps)> _bySize = [];

    /// <summary>Amperes for hours.</summary>
    public required double Steady { get; init; }

    /// <summary>Amperes for minutes.</summary>
    public required double Short { get; init; }

    /// <summary>Highest direct voltage.</summary>
    public required double Volts { get; init; }

    /// <summary>Ohms of one pole when new.</summary>
    public required double TypicalResistance { get; init; }

    /// <summary>Ohms of one pole after years.</summary>
    public required double AgedResistance { get; init; }

    /// <summary>
    /// Amperes for hours with a conductor of this size: the catalogue's figure for the size or the next thinner, in
    /// proportion to area below the thinnest, and <see cref="Steady"/> where the catalogue has no such list.
    /// </summary>
    public double SteadyWith(ConductorSize size)
    {
        if (_bySize.Count == 0)
        {
            return Steady;
        }

        double area = ConductorTable.Area(size);
        int row = _bySize.FindLastIndex(r => r.Area <= area * (1 + 1e-9));
        return row >= 0 ? _bySize[row].Amps : _bySize[0].Amps * area / _bySize[0].Area;
    }

    internal static NamedTable<PortContact> Read(TableNode file) => new(file.Children("contacts").Select(ReadOne));

    private static (string, PortContact) ReadOne(TableNode node)
    {
        string name = node.Word("contact");
        TableNode values = node.Child("values");
        (double typical, double aged) = values.Pair("resistance");
        PortContact contact = new(name, node.Word("title"), node.Source("source"))
        {
            Steady = values.Number("steady"),
            Short = values.Number("short"),
            Volts = values.Number("volts"),
            TypicalResistance = typical * 1e-3,
            AgedResistance = aged * 1e-3,
        };
        if (values.ChildOrNone("by_size") is { } sizes)
        {
            contact._bySize.AddRange(sizes.Entries.Select(ReadSize).OrderBy(r => r.Area));
        }

        return (name, contact);
    }

    private static (double Area, double Amps) ReadSize(YamlEntry entry) =>
        (ConductorTable.Area(TableNode.SizeOf(entry.Key, SizeSystem.Awg)), TableNode.NumberOf(entry.Value));
}
