using WireCheck.Description.Kinds;
using WireCheck.Text;

namespace WireCheck.Description;

/// <summary>
/// A box as its builder describes it: every part with its values and places, nothing computed. Made only by
/// the reader, which guarantees that ids are unique, every reference names something that exists and every
/// required value is there and in its range.
/// </summary>
public sealed class Pack
{
    /// <summary>The name of the file, as messages print it.</summary>
    public required string File { get; init; }

    /// <summary>Title of the box.</summary>
    public required Given<string> Title { get; init; }

    public string? Notes { get; init; }

    /// <summary>Ids of the rule sets that judge it.</summary>
    public required IReadOnlyList<Given<string>> RuleSets { get; init; }

    /// <summary>Thresholds of the rule sets that the builder overrides, as written.</summary>
    public required IReadOnlyDictionary<string, YamlScalar> Settings { get; init; }

    /// <summary>Why the builder overrides a threshold, for those that say it as <c>{value: …, because: …}</c>.</summary>
    public IReadOnlyDictionary<string, string> SettingReasons { get; init; } = new Dictionary<string, string>();

    public required Surroundings Surroundings { get; init; }

    /// <summary>All parts except conductors, in the order of the file.</summary>
    public required IReadOnlyList<Part> Parts { get; init; }

    /// <summary>All legs of all conductors, in the order of the file.</summary>
    public required IReadOnlyList<Conductor> Conductors { get; init; }

    /// <summary>Ids of parts that are meant to be live or fed with every switch open.</summary>
    public IReadOnlyList<Given<string>> StaysLive { get; init; } = [];

    public IReadOnlyList<OutsideLink> OutsideLinks { get; init; } = [];

    public IReadOnlyList<Mode> Modes { get; init; } = [];

    public IReadOnlyList<PathIntent> Paths { get; init; } = [];

    public IReadOnlyList<Waiver> Waivers { get; init; } = [];

    public IReadOnlyList<Reading> Measured { get; init; } = [];

    /// <summary>Wire at hand, for the cut list; where any is named, sizing chooses no other size.</summary>
    public IReadOnlyList<StockReel> Stock { get; init; } = [];

    /// <summary>Part classes and ratings that sizing may choose; empty means all of the library.</summary>
    public IReadOnlyList<StockPart> StockParts { get; init; } = [];

    /// <summary>Prices, for the parts list and for sizing; null when none are given.</summary>
    public CostList? Costs { get; init; }

    /// <summary>How far the built box may differ; null when nothing is declared.</summary>
    public DeclaredTolerances? Tolerances { get; init; }

    /// <summary>All parts of one kind, in the order of the file.</summary>
    public IEnumerable<T> Of<T>()
        where T : Part => Parts.OfType<T>();

    /// <summary>A part or conductor leg by id, or null.</summary>
    public Part? Find(string id) => ById.GetValueOrDefault(id);

    /// <summary>True when an end of a conductor is a sense input of a BMS.</summary>
    public bool IsSense(Conductor conductor) => IsSenseInput(conductor.From) || IsSenseInput(conductor.To);

    private bool IsSenseInput(TerminalReference end) =>
        Find(end.PartId) is Bms && end.Terminal.Length > 1 && end.Terminal[0] == 's' && char.IsAsciiDigit(end.Terminal[1]);

    /// <summary>
    /// The same box with one terminal of a part taken off its wires and joints, or, with no terminal named, without the part,
    /// which must then be one that is plugged in.
    /// </summary>
    internal Pack Without(string partId, string? terminal)
    {
        bool Is(TerminalReference end) => end.PartId == partId && end.Terminal == terminal;
        return With(
            [.. Parts.Where(p => terminal is null ? p.Id != partId : !(p is Joint joint && (Is(joint.First) || Is(joint.Second))))],
            [.. Conductors.Where(c => terminal is null || !(Is(c.From) || Is(c.To)))]);
    }

    /// <summary>The same box with every conductor longer or shorter by a factor above 0.</summary>
    internal Pack WithLengths(double factor) => With(Parts, [.. Conductors.Select(c => c.Lengthened(factor))]);

    /// <summary>The same box with other parts in the place of those that have their ids.</summary>
    internal Pack With(IReadOnlyDictionary<string, Part> changed) =>
        With([.. Parts.Select(p => changed.GetValueOrDefault(p.Id, p))], Conductors);

    private Pack With(IReadOnlyList<Part> parts, IReadOnlyList<Conductor> conductors) => new()
    {
        File = File,
        Title = Title,
        Notes = Notes,
        RuleSets = RuleSets,
        Settings = Settings,
        SettingReasons = SettingReasons,
        Surroundings = Surroundings,
        Parts = parts,
        Conductors = conductors,
        StaysLive = StaysLive,
        OutsideLinks = OutsideLinks,
        Modes = Modes,
        Paths = Paths,
        Waivers = Waivers,
        Measured = Measured,
        Stock = Stock,
        StockParts = StockParts,
        Costs = Costs,
        Tolerances = Tolerances,
    };

    private Dictionary<string, Part> ById =>
        _byId ??= Parts.Concat(Conductors).ToDictionary(p => p.Id, StringComparer.Ordinal);

    private Dictionary<string, Part>? _byId;
}
