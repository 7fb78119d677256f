using System.Diagnostics.CodeAnalysis;

namespace WireCheck.Knowledge;

/// <summary>
/// Everything the tool knows of materials, sizes and parts. Each table is read when it is first asked for, once;
/// safe to share between threads.
/// </summary>
public sealed class Library
{
    private const string Tables = "rules/tables/";

    private readonly Lazy<NamedTable<Material>> _materials;
    private readonly Lazy<NamedTable<InsulationClass>> _insulation;
    private readonly Lazy<ConductorTable> _conductors;
    private readonly Lazy<NamedTable<JointClass>> _joints;
    private readonly Lazy<NamedTable<FuseClass>> _fuses;
    private readonly Lazy<NamedTable<Chemistry>> _chemistries;
    private readonly Lazy<NamedTable<PortContact>> _contacts;
    private readonly Lazy<NamedTable<NamedValue>> _assumptions;
    private readonly Lazy<NamedTable<NamedValue>> _drops;
    private readonly Lazy<NamedTable<NamedValue>> _studs;
    private readonly Lazy<StandardRatings> _ratings;
    private readonly Lazy<SwitchTable> _switches;
    private readonly Lazy<BusbarTable> _busbars;
    private readonly Lazy<NamedTable<WallMaterial>> _walls;

    private Library(KnowledgeFiles files)
    {
        _materials = Table(files, "materials", Material.Read);
        _insulation = Table(files, "insulation", InsulationClass.Read);
        _conductors = Table(files, "conductor-resistance", file => new ConductorTable(file));
        _joints = Table(files, "joints", JointClass.Read);
        _fuses = Table(files, "fuse-classes", FuseClass.Read);
        _chemistries = Table(files, "chemistry", Chemistry.Read);
        _contacts = Table(files, "port-contacts", PortContact.Read);
        _assumptions = Table(files, "assumptions", NamedValue.Read);
        _drops = Table(files, "voltage-drop", NamedValue.Read);
        _studs = Table(files, "stud-rules", NamedValue.Read);
        _ratings = Table(files, "standard-ratings", file => new StandardRatings(file));
        _switches = Table(files, "switches", file => new SwitchTable(file));
        _busbars = Table(files, "busbars", file => new BusbarTable(file));
        _walls = Table(files, "walls", WallMaterial.Read);
        Ampacity = new AmpacityTables(files, _conductors);
        Parts = new PartLibrary(files);
    }

    /// <summary>The tables and parts that come with the tool.</summary>
    public static Library Embedded { get; } = new(KnowledgeFiles.Embedded());

    /// <summary>Metals, by name.</summary>
    public NamedTable<Material> Materials => _materials.Value;

    /// <summary>Insulations, by name.</summary>
    public NamedTable<InsulationClass> Insulation => _insulation.Value;

    /// <summary>Resistance and geometry of conductors.</summary>
    public ConductorTable Conductors => _conductors.Value;

    /// <summary>Ends of conductors and joints, by name.</summary>
    public NamedTable<JointClass> Joints => _joints.Value;

    /// <summary>Fuses and breakers, by name of class.</summary>
    public NamedTable<FuseClass> Fuses => _fuses.Value;

    /// <summary>Cell chemistries, by name.</summary>
    public NamedTable<Chemistry> Chemistries => _chemistries.Value;

    /// <summary>Contacts of ports, by name.</summary>
    public NamedTable<PortContact> PortContacts => _contacts.Value;

    /// <summary>What is taken where a description says nothing, by name.</summary>
    public NamedTable<NamedValue> Assumptions => _assumptions.Value;

    /// <summary>Allowed drops between source and load, by name.</summary>
    public NamedTable<NamedValue> VoltageDrops => _drops.Value;

    /// <summary>What may lie on one stud, by name.</summary>
    public NamedTable<NamedValue> StudRules => _studs.Value;

    /// <summary>Ratings of fuses.</summary>
    public StandardRatings StandardRatings => _ratings.Value;

    /// <summary>Derating of switches and contacts.</summary>
    public SwitchTable Switches => _switches.Value;

    /// <summary>Densities of bars.</summary>
    public BusbarTable Busbars => _busbars.Value;

    /// <summary>Walls of boxes, by name.</summary>
    public NamedTable<WallMaterial> Walls => _walls.Value;

    /// <summary>Ampacity of conductors.</summary>
    public AmpacityTables Ampacity { get; }

    /// <summary>Generic parts.</summary>
    public PartLibrary Parts { get; }

    /// <summary>Reads the tables that nearly every box asks for, for whoever asks for them later.</summary>
    internal void ReadAhead()
    {
        _ = Fuses;
        _ = Joints;
        _ = Conductors;
        _ = Insulation;
        _ = PortContacts;
        _ = Materials;
        _ = Walls;
        _ = Chemistries;
        _ = Assumptions;
    }

    /// <summary>The tool's own library with some files replaced, for tests.</summary>
    internal static Library With(IReadOnlyDictionary<string, string> texts) => new(KnowledgeFiles.With(texts));

    private static Lazy<T> Table<[DynamicallyAccessedMembers(DynamicallyAccessedMemberTypes.PublicParameterlessConstructor)] T>(
        KnowledgeFiles files, string name, Func<TableNode, T> read)
        where T : class => new(() => read(files.Read($"{Tables}{name}.yaml")));
}
