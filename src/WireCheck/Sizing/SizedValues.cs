using WireCheck.Description;
using WireCheck.Description.Kinds;
using WireCheck.Facts;
using WireCheck.Facts.Gather;
using WireCheck.Knowledge;
using WireCheck.Quantities;
using WireCheck.Text;

namespace WireCheck.Sizing;

/// <summary>Finds every value of a box that sizing may choose, with what it may be.</summary>
internal sealed class SizedValues
{
    private readonly GatherContext _box;
    private readonly YamlMap _root;
    private readonly AtHand _atHand;
    private readonly Dictionary<string, FactSubject> _facts = new(StringComparer.Ordinal);
    private readonly List<SizedValue> _values = [];

    private SizedValues(GatherContext box, FactTable facts, YamlMap root)
    {
        _box = box;
        _root = root;
        _atHand = new AtHand(box.Pack, box.Library.Parts);
        foreach (FactSubject subject in facts.Subjects)
        {
            _facts[subject.Id] = subject;
        }
    }

    /// <summary>All values, in the order of the file: parts first, then wire.</summary>
    /// <param name="box">The box as it is written, solved.</param>
    /// <param name="facts">Its facts.</param>
    /// <param name="root">Its text as a tree.</param>
    /// <param name="keep">Ids of parts that stay as they are.</param>
    internal static IReadOnlyList<SizedValue> Of(GatherContext box, FactTable facts, YamlMap root, IReadOnlySet<string> keep)
    {
        SizedValues found = new(box, facts, root);
        foreach (Part part in box.Pack.Parts)
        {
            if (keep.Contains(part.Id))
            {
                continue;
            }

            if (part is Fuse fuse)
            {
                found.AddFuse(fuse);
            }

            found.AddClass(part);
        }

        foreach (IGrouping<string, Conductor> legs in box.Pack.Conductors.GroupBy(c => c.WrittenId))
        {
            if (!keep.Contains(legs.Key))
            {
                found.AddWire([.. legs]);
            }
        }

        return found._values;
    }

    private void AddWire(IReadOnlyList<Conductor> legs)
    {
        Conductor wire = legs[0];
        if (wire.Resistance is not null || legs.Any(IsSense))
        {
            return;
        }

        double metres = legs.Sum(l => l.Length.Value.Meters);
        IReadOnlyList<SizeOption> options = WireOptions(wire, metres);
        if (options.Count == 0)
        {
            return;
        }

        ConductorSize? needed = _box.Ampacities.SizeNeeded(wire, legs.Max(l => Amps(l.Id)));
        double area = needed is { } size ? ConductorTable.Area(size) : 0;
        _values.Add(new SizedValue
        {
            Section = "conductors",
            Id = wire.WrittenId,
            Kind = wire.Kind,
            Keys = ["size"],
            PartIds = [.. legs.Select(l => l.Id)],
            Options = options,
            Written = wire.Size.Value.ToString(),
            WrittenMetal = ConductorTable.Area(wire.Size.Value) * metres,
            WrittenPrice = _atHand.PriceOf(wire.Size.Value) * metres,
            Start = FirstFrom(options, o => o.Metal >= area * metres * (1 - Rounding)),
        });
    }

    private List<SizeOption> WireOptions(Conductor wire, double metres)
    {
        ConductorTable table = _box.Library.Conductors;
        Material metal = _box.Library.Materials[wire.Material.Value];
        List<SizeOption> options = [];
        foreach (ConductorSize size in table.Stocked(wire.Size.Value.System).Where(s => _atHand.Has(s, wire)).OrderBy(ConductorTable.Area))
        {
            double volume = ConductorTable.Area(size) * metres;
            double? price = _atHand.PriceOf(size) * metres;
            options.Add(new SizeOption(size.ToString(), price ?? volume)
            {
                Metal = volume,
                Ohms = table.OhmsPerMetre(size, metal, Reference) * metres,
                Price = price,
            });
        }

        return options;
    }

    private void AddFuse(Fuse fuse)
    {
        if (fuse.Curve.Count > 0 || fuse.Resistance is not null || fuse.MeltingEnergy is not null)
        {
            return;
        }

        string section = fuse.IsBreaker ? "breakers" : "fuses";
        double amps = Amps(fuse.Id);
        List<SizeOption> ratings = [];
        foreach (double rating in _box.Library.Fuses[fuse.Class.Value].Ratings.Order())
        {
            if (_atHand.HasRating(fuse, rating))
            {
                ratings.Add(new SizeOption(Text(rating), ratings.Count) { Amps = rating });
            }
        }

        if (ratings.Count > 0)
        {
            Add(section, fuse, ["rating"], ratings, Text(fuse.Rating.Value.Amperes), null, FirstFrom(ratings, o => o.Amps >= amps));
        }

        if (fuse.Holder is { } holder)
        {
            double now = holder.Rating.Value.Amperes;
            List<SizeOption> holders = [new SizeOption(Text(now), 0) { Amps = now }];
            foreach (double rating in _box.Library.StandardRatings.Amps)
            {
                if (rating > now)
                {
                    holders.Add(new SizeOption(Text(rating), holders.Count) { Amps = rating });
                }
            }

            Add(section, fuse, ["holder", "rating"], holders, Text(now), "a holder is made for its size of fuse", 0);
        }
    }

    private void AddClass(Part part)
    {
        foreach (ClassLadder ladder in ClassLadder.All)
        {
            if (part.ClassName is { } name && PartMap(ladder.Section, part.Id) is { } written
                && _box.Library.Parts.Find(ladder.Section, name) is { } own
                && (part is not Resistor || _facts[part.Id].Find("precharges") is not null))
            {
                AddClass(part, ladder, own, written);
            }
        }
    }

    private void AddClass(Part part, ClassLadder ladder, PartClass own, YamlMap written)
    {
        List<SizeOption> options = [];
        double rank = 0;
        double last = double.NaN;
        IReadOnlyList<PartClass> instead = ladder.Instead(_box.Library.Parts, own);
        bool priced = instead.Any(c => _atHand.PriceOf(c.Name) is not null);
        foreach (PartClass one in instead)
        {
            if (!_atHand.HasClass(ladder.Section, one.Name) || (priced && _atHand.PriceOf(one.Name) is null))
            {
                continue;
            }

            double measure = ladder.MeasureOf(one);
            rank += measure == last || double.IsNaN(last) ? 0 : 1;
            last = measure;
            double? price = _atHand.PriceOf(one.Name);
            options.Add(new SizeOption(one.Name, price ?? rank) { Amps = measure, Price = price });
        }

        if (options.Count == 0)
        {
            return;
        }

        string? onlyGrows = written.Entries.Any(e => own.Values.Find(e.Key.Text) is not null)
            ? "what is written beside its class is that part's own"
            : ladder.OnlyGrows;
        double amps = part is Resistor ? 0 : Amps(part.Id);
        Add(ladder.Section, part, ["part"], options, own.Name, onlyGrows, FirstFrom(options, o => o.Amps >= amps));
    }

    private void Add(
        string section, Part part, IReadOnlyList<string> keys, IReadOnlyList<SizeOption> options, string written, string? onlyGrows, int start)
    {
        int now = options.ToList().FindIndex(o => o.Text == written);
        int lowest = onlyGrows is null ? 0 : Math.Max(0, now);
        _values.Add(new SizedValue
        {
            Section = section,
            Id = part.Id,
            Kind = part.Kind,
            Keys = keys,
            PartIds = [part.Id],
            Options = options,
            Written = written,
            WrittenPrice = now >= 0 ? options[now].Price : null,
            OnlyGrows = onlyGrows,
            Lowest = lowest,
            Start = Math.Max(lowest, start),
        });
    }

    private YamlMap? PartMap(string section, string id) => (_root.Find(section) as YamlMap)?.Find(id) as YamlMap;

    private bool IsSense(Conductor leg) => _facts[leg.Id].Find("is_sense")?.Value is true;

    /// <summary>Current that a part carries for hours as the box is written, A; 0 where none is known.</summary>
    private double Amps(string id) => _facts[id].Find("current")?.Value is double amps ? amps : 0;

    private static int FirstFrom(IReadOnlyList<SizeOption> options, Func<SizeOption, bool> enough)
    {
        for (int i = 0; i < options.Count; i++)
        {
            if (enough(options[i]))
            {
                return i;
            }
        }

        return options.Count - 1;
    }

    private static string Text(double amps) => FormattableString.Invariant($"{amps:0.##} A");

    /// <summary>Temperature at which resistances of wire are compared, °C.</summary>
    private const double Reference = 20;

    private const double Rounding = 1e-9;
}
