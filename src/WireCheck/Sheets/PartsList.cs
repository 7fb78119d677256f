using WireCheck.Description;
using WireCheck.Description.Kinds;
using WireCheck.Knowledge;
using WireCheck.Quantities;

namespace WireCheck.Sheets;

/// <summary>What to buy: parts that are alike on one row, wire by the metre, ends by the piece; and what it costs.</summary>
internal sealed class PartsList(Pack pack, Library library)
{
    private double _total;
    private int _withoutPrice;

    /// <summary>Parts and wire with their prices; joints, loads and vehicles are not bought for the box.</summary>
    internal Sheet Parts()
    {
        List<IReadOnlyList<string>> rows = [];
        foreach (IGrouping<(string, string, string, string), Part> alike in pack.Parts
            .Where(p => p is not (Joint or Load or Vehicle or Charger { At: not null } or Panel { At: not null }))
            .GroupBy(p => (p.Kind, p.ClassName ?? "", FiguresOf(p), PriceKey(p) == p.Id ? p.Id : "")))
        {
            rows.Add(RowOf([.. alike]));
        }

        rows.AddRange(pack.Of<Cells>().Where(b => b.Links is not null && b.Series.Value > 1).Select(LinksOf));
        rows.AddRange(pack.Of<Fuse>().Where(f => !f.IsBreaker).GroupBy(f => f.Class.Value).Select(HoldersOf));
        rows.AddRange(pack.Parts.Where(p => p is Charger { At: not null } or Panel { At: not null }).Select(p => RowOf([p])));
        rows.AddRange(SenseLead.In(pack).GroupBy(l => l.Leads).SelectMany(g => SenseRows(g.Key, g.Count())));
        rows.AddRange(pack.Conductors.GroupBy(c => c.Size.Value).OrderBy(g => g.Key.System).ThenBy(g => g.Key.Number).Select(WireOf));
        return new Sheet(
            "parts-list", "Parts list", Notes(), ["part", "kind", "class", "figures", "quantity", "price each", "cost"], rows);
    }

    /// <summary>Ends by class and wire size, and where they go.</summary>
    internal static Sheet Ends(Pack pack) => new(
        "ends",
        "Lugs and other ends",
        [
            "A ring or fork lug needs the hole of its stud. The description holds no stud diameters: measure each stud before you order.",
            "One row for each kind of end and size of wire.",
        ],
        ["end", "wire", "quantity", "studs and terminals"],
        [
            .. pack.Conductors
                .SelectMany(c => new[] { (End: c.FromEnd, At: c.From, Size: c.Size.Value), (End: c.ToEnd, At: c.To, Size: c.Size.Value) })
                .GroupBy(e => (Class: e.End.Class.Value, e.Size))
                .OrderBy(g => g.Key.Class, StringComparer.Ordinal).ThenBy(g => g.Key.Size.System).ThenBy(g => g.Key.Size.Number)
                .Select(g => (IReadOnlyList<string>)
                [
                    g.Key.Class,
                    g.Key.Size.ToString(),
                    FormattableString.Invariant($"{g.Count()}"),
                    string.Join(", ", g.Select(e => e.At.ToString()).Distinct()),
                ]),
        ]);

    private IReadOnlyList<string> RowOf(IReadOnlyList<Part> alike)
    {
        Part first = alike[0];
        int quantity = alike.Count * (first is Cells cells ? cells.Series.Value * cells.Parallel.Value : 1);
        string title = first.ClassName is { } name && library.Parts.Find(WrittenItems.SectionOf(first.Kind), name) is { } known ? known.Title : "";
        return
        [
            string.Join(", ", alike.Select(p => p.Id)),
            first is Cells ? "cell" : first.Kind,
            title.Length > 0 ? $"{first.ClassName}: {title}" : first.ClassName ?? "",
            FiguresOf(first),
            FormattableString.Invariant($"{quantity}"),
            .. Priced(PriceKey(first), quantity),
        ];
    }

    /// <summary>Bars from one group of cells to the next.</summary>
    private IReadOnlyList<string> LinksOf(Cells bank)
    {
        CellLinks links = bank.Links!;
        int quantity = (bank.Series.Value - 1) * bank.Parallel.Value;
        return
        [
            $"links of {bank.Id}", "bar between cells", links.Material?.Value ?? "copper",
            FormattableString.Invariant($"{links.Section.Value.Width.Millimeters:0.##} x {links.Section.Value.Thickness.Millimeters:0.##} mm, {links.Length.Value.Millimeters:0.#} mm from stud to stud"),
            FormattableString.Invariant($"{quantity}"), .. Priced(null, quantity),
        ];
    }

    /// <summary>One holder for each fuse of a class.</summary>
    private IReadOnlyList<string> HoldersOf(IGrouping<string, Fuse> fuses) =>
    [
        $"holders of {string.Join(", ", fuses.Select(f => f.Id))}", "fuse holder", $"for {fuses.Key}",
        FormattableString.Invariant($"at least {fuses.Max(f => f.Rating.Value.Amperes):0.##} A, {fuses.Max(f => f.Volts.Value.Volts):0.##} V"),
        FormattableString.Invariant($"{fuses.Count()}"), .. Priced(null, fuses.Count()),
    ];

    private IEnumerable<IReadOnlyList<string>> SenseRows(SenseLeads leads, int count)
    {
        double metres = count * leads.Length.Value.Meters;
        yield return ["sense leads", "wire", leads.Size.Value.ToString(), FormattableString.Invariant($"{count} leads"), $"{QuantityText.Plain(metres, 3)} m", .. Priced(null, metres)];
        if (leads.Fuse is { } fuse)
        {
            yield return
            [
                "fuses of the sense leads", "fuse", "", QuantityText.WithPrefix(fuse.Value.Amperes, "A"),
                FormattableString.Invariant($"{count}"), .. Priced(null, count),
            ];
        }
    }

    private IReadOnlyList<string> WireOf(IGrouping<ConductorSize, Conductor> wires)
    {
        double metres = wires.Sum(w => w.Length.Value.Meters);
        string? key = pack.Costs?.Prices.Keys.FirstOrDefault(k => WrittenValue.SameMeaning(k, wires.Key.ToString()));
        return
        [
            string.Join(", ", wires.Select(w => w.WrittenId).Distinct()),
            "wire",
            wires.Key.ToString(),
            "",
            $"{QuantityText.Plain(metres, 3)} m",
            .. Priced(key, metres),
        ];
    }

    /// <summary>The key under which a part's price stands: its own id, else its class; null when it has none.</summary>
    private string? PriceKey(Part part) => pack.Costs is not { } costs ? null
        : costs.Prices.ContainsKey(part.Id) ? part.Id
        : part.ClassName is { } name && costs.Prices.ContainsKey(name) ? name
        : null;

    private string[] Priced(string? key, double quantity)
    {
        if (key is null)
        {
            _withoutPrice++;
            return ["", ""];
        }

        double price = pack.Costs!.Prices[key].Value;
        _total += price * quantity;
        return [SheetWords.Money(price), SheetWords.Money(price * quantity)];
    }

    private List<string> Notes()
    {
        if (pack.Costs is not { } costs)
        {
            return ["The description names no prices; they stand under costs."];
        }

        string currency = costs.Currency is { } named ? $" {named.Value}" : "";
        List<string> notes = [$"Total of what has a price: {SheetWords.Money(_total)}{currency}. Wire is priced by the metre, without waste."];
        if (_withoutPrice > 0)
        {
            notes.Add(FormattableString.Invariant($"{_withoutPrice} rows have no price and are not in the total."));
        }

        return notes;
    }

    private static string FiguresOf(Part part) => part switch
    {
        Cells cells => FormattableString.Invariant($"{cells.Capacity.Value.AmpereHours:0.##} Ah, {cells.Series.Value} in series, {cells.Parallel.Value} in parallel"),
        Fuse fuse => FormattableString.Invariant($"{fuse.Rating.Value.Amperes:0.##} A, {fuse.Volts.Value.Volts:0.##} V"),
        Switch { Contact: { } contact } => FormattableString.Invariant($"{contact.Amps.Value.Amperes:0.##} A at {contact.Volts.Value.Volts:0.##} V"),
        Relay relay => FormattableString.Invariant($"coil {relay.Coil.Voltage.Value.Volts:0.##} V, carries {relay.Contact.Carry.Value.Amperes:0.##} A"),
        Bms bms => FormattableString.Invariant($"{bms.Series.Value}S, {bms.Continuous.Value.Amperes:0.##} A"),
        Busbar bar => FormattableString.Invariant($"{bar.Section.Value.Width.Millimeters:0.##} x {bar.Section.Value.Thickness.Millimeters:0.##} mm, {bar.Length.Value.Millimeters:0.#} mm long"),
        Inverter inverter => FormattableString.Invariant($"{inverter.Power.Value.ToWatts():0.##} W, {inverter.AcVoltage.Value.Volts:0} V"),
        Converter converter => FormattableString.Invariant($"{converter.Power.Value.ToWatts():0.##} W, {converter.Output.Value.Volts:0.##} V"),
        Port port => FormattableString.Invariant($"{port.Rated.Value.Amperes:0.##} A"),
        Resistor resistor => $"{QuantityText.WithPrefix(resistor.Resistance.Value.Ohms, "Ω")}, {QuantityText.WithPrefix(resistor.Power.Value.ToWatts(), "W")}",
        Shunt shunt => FormattableString.Invariant($"{shunt.Rated.Value.Amperes:0.##} A, {shunt.Drop.Value.Millivolts:0.##} mV"),
        Diode diode => FormattableString.Invariant($"{diode.Rated.Value.Amperes:0.##} A, {diode.Volts.Value.Volts:0.##} V"),
        Charger { At: { } at } charger => FormattableString.Invariant($"{charger.Voltage.Value.Volts:0.00} V, {charger.Current.Value.Amperes:0.##} A; outside, plugged in at {at.Value}"),
        Panel { At: { } at } => $"outside, plugged in at {at.Value}",
        _ => "",
    };
}
