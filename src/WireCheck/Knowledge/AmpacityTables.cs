using WireCheck.Quantities;

namespace WireCheck.Knowledge;

/// <summary>All bases, which of them is taken by itself, and the smallest size that carries a current.</summary>
public sealed class AmpacityTables
{
    private const string Folder = "rules/tables/ampacity/";
    private const string Defaults = Folder + "defaults.yaml";

    private readonly KnowledgeFiles _files;
    private readonly Dictionary<string, AmpacityBasis> _read = new(StringComparer.Ordinal);
    private readonly Lock _reading = new();
    private readonly Lazy<TableNode> _defaults;
    private readonly Lazy<ConductorTable> _conductors;

    internal AmpacityTables(KnowledgeFiles files, Lazy<ConductorTable> conductors)
    {
        _files = files;
        _conductors = conductors;
        _defaults = new Lazy<TableNode>(() => files.Read(Defaults));
    }

    /// <summary>Ids of all bases, in alphabetical order.</summary>
    public IReadOnlyList<string> Ids =>
    [
        .. _files.In(Folder).Where(name => name != Defaults).Select(name => name[Folder.Length..^".yaml".Length]),
    ];

    /// <summary>The basis of that id, or null.</summary>
    public AmpacityBasis? Find(string id)
    {
        lock (_reading)
        {
            if (!_read.TryGetValue(id, out AmpacityBasis? basis) && _files.Has($"{Folder}{id}.yaml") && id != "defaults")
            {
                basis = new AmpacityBasis(_files.Read($"{Folder}{id}.yaml"));
                _read[id] = basis;
            }

            return basis;
        }
    }

    /// <summary>
    /// The basis that judges a size: the one asked for where it covers the size, else the first of the defaults
    /// that does, else the last of them.
    /// </summary>
    public AmpacityBasis BasisFor(ConductorSize size, string? asked = null)
    {
        if (asked is not null && Find(asked) is { } basis && basis.Covers(size))
        {
            return basis;
        }

        List<AmpacityBasis> chain = [.. DefaultIds(size.System).Select(id => Find(id)!)];
        return chain.Find(b => b.Covers(size)) ?? chain[^1];
    }

    /// <summary>Ampacity of a conductor by <see cref="BasisFor"/>; null for a size thinner than any table's.</summary>
    public Ampacity? Rate(AmpacityQuestion question, string? asked = null) => BasisFor(question.Size, asked).Rate(question);

    /// <summary>
    /// The thinnest size in stock, of the same system as the question's, whose ampacity is at least the current; null
    /// when none is.
    /// </summary>
    /// <param name="amps">Current in A.</param>
    /// <param name="question">The conductor otherwise; its size tells only the system.</param>
    /// <param name="asked">Id of a basis, or null for the default.</param>
    public ConductorSize? SizeNeeded(double amps, AmpacityQuestion question, string? asked = null)
    {
        foreach (ConductorSize size in _conductors.Value.Stocked(question.Size.System))
        {
            if (Rate(question with { Size = size }, asked) is { } rated && rated.Amps >= amps)
            {
                return size;
            }
        }

        return null;
    }

    private IEnumerable<string> DefaultIds(SizeSystem system) =>
        _defaults.Value.Items(system == SizeSystem.Awg ? "awg" : "metric").Select(TableNode.WordOf);
}
