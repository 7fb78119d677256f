using NJsonSchema.Validation;
using WireCheck.Description.Kinds;
using WireCheck.Description.Reader;
using WireCheck.Text;

namespace WireCheck.Description;

/// <summary>Reads a description into a <see cref="Pack"/>, or into everything that is wrong with it.</summary>
public sealed class PackReader
{
    private readonly string _file;
    private readonly YamlMap _root;
    private readonly ReadContext _context;
    private readonly HeadReader _head;

    private PackReader(string file, YamlMap root, IPartClasses classes, ProblemList problems)
    {
        _file = file;
        _root = root;
        _context = new ReadContext(problems, classes, new ReferenceList());
        _head = new HeadReader(_context, root);
    }

    /// <summary>
    /// Reads the text of a description. Never throws for anything in the text; every problem is told, not
    /// only the first.
    /// </summary>
    /// <param name="fileName">The name that messages print.</param>
    /// <param name="text">The whole text.</param>
    /// <param name="classes">The parts library.</param>
    public static ReadResult Read(string fileName, string text, IPartClasses classes)
    {
        ProblemList problems = new();
        Pack? pack = Read(fileName, text, problems, classes);
        return new ReadResult(pack, problems.InOrder());
    }

    /// <summary>The same with the tool's own library, noting problems in a list that others use too.</summary>
    public static Pack? Read(string fileName, string text, ProblemList problems) =>
        Read(fileName, text, problems, LibraryClasses.Embedded);

    /// <summary>
    /// The same, without waiting for the schema where the typed reader found nothing wrong, so that the box can be
    /// solved meanwhile.
    /// </summary>
    /// <param name="fileName">The name that messages print.</param>
    /// <param name="text">The whole text.</param>
    /// <param name="classes">The parts library.</param>
    internal static EarlyReadResult ReadEarly(string fileName, string text, IPartClasses classes)
    {
        ProblemList problems = new();
        YamlMap? root = YamlReader.ReadMap(fileName, text, YamlLimits.Default, problems);
        if (root is null)
        {
            return new EarlyReadResult(null, problems.InOrder);
        }

        classes.Expect([.. root.Entries.Select(e => e.Key.Text).Reverse()]);
        Task<ICollection<ValidationError>> schemaCheck = SchemaCheck.BeginCheck(root);
        Pack pack = new PackReader(fileName, root, classes, problems).ReadPack();
        return new EarlyReadResult(problems.IsEmpty ? pack : null, WithSchemaProblems);

        IReadOnlyList<Problem> WithSchemaProblems()
        {
            SchemaCheck.Note(root, schemaCheck.GetAwaiter().GetResult(), problems);
            return problems.InOrder();
        }
    }

    /// <summary>
    /// Reads a tree that was made from one read before, by the typed reader alone: what differs are values that the schema
    /// allows. Null with its problems noted when it is wrong.
    /// </summary>
    internal static Pack? ReadTree(string fileName, YamlMap root, ProblemList problems)
    {
        Pack pack = new PackReader(fileName, root, LibraryClasses.Embedded, problems).ReadPack();
        return problems.IsEmpty ? pack : null;
    }

    private static Pack? Read(string fileName, string text, ProblemList problems, IPartClasses classes)
    {
        EarlyReadResult early = ReadEarly(fileName, text, classes);
        IReadOnlyList<Problem> found = early.AllProblems();
        foreach (Problem problem in found)
        {
            problems.Add(problem);
        }

        return found.Count == 0 ? early.Pack : null;
    }

    private Pack ReadPack()
    {
        _head.NoteUnknownSections();
        _head.CheckLanguage();
        PartReader reader = new(_context, _head.Defaults());
        IReadOnlyList<Part> parts = ReadParts(reader);
        IReadOnlyList<Conductor> conductors = _root.Find(SectionNames.Conductors) is YamlNode node ? reader.ReadConductors(node) : [];
        IReadOnlyList<Mode> modes = _head.Mappings("modes", IntentReaders.ReadMode);
        IReadOnlyList<StockEntry> stock = _head.Listed("stock", "stock entry", SupplyReaders.ReadStock);
        Pack pack = new()
        {
            File = _file,
            Title = _head.Title(),
            Notes = _head.Notes(),
            RuleSets = _head.RuleSets(),
            Settings = _head.Settings(),
            SettingReasons = _head.SettingReasons(),
            Surroundings = _head.Surroundings(),
            Parts = parts,
            Conductors = conductors,
            StaysLive = _head.Reader.PartIds("stays_live"),
            OutsideLinks = _head.Listed("outside_links", "outside link", IntentReaders.ReadOutsideLink),
            Modes = modes,
            Paths = _head.Paths(),
            Waivers = _head.Listed("waivers", "waiver", IntentReaders.ReadWaiver),
            Measured = _head.Listed("measured", "reading", IntentReaders.ReadReading),
            Stock = [.. stock.OfType<StockReel>()],
            StockParts = [.. stock.OfType<StockPart>()],
            Tolerances = _head.Reader.OptionalMap("tolerances", DeclaredTolerances.Read),
            Costs = _head.Reader.OptionalMap("costs", SupplyReaders.ReadCosts),
        };
        new ReferenceResolver(_context, parts, conductors).Resolve();
        ModeNames.Check(_context.Problems, pack);
        Solvability.Check(_context.Problems, pack, _root.Position);
        Contradictions.Check(_context.Problems, pack);
        return pack;
    }

    /// <summary>Parts in the order of the file, whatever the order of its sections.</summary>
    private IReadOnlyList<Part> ReadParts(PartReader reader)
    {
        List<Part> parts = [];
        foreach (YamlEntry entry in _root.Entries)
        {
            if (PartSections.All.FirstOrDefault(s => s.Name == entry.Key.Text) is PartSection section)
            {
                parts.AddRange(reader.ReadSection(section, entry.Value));
            }
        }

        return parts;
    }
}
