using WireCheck.Description;
using WireCheck.Description.Kinds;
using WireCheck.Quantities;

namespace WireCheck.Drawing;

/// <summary>
/// The symbols of each part: one, or several where poles, contacts and coil stand in branches of their own.
/// A part that is plugged into another is a caption of its host.
/// </summary>
/// <param name="pack">The box.</param>
/// <param name="wired">Nodes that a wire ends on.</param>
internal sealed class SymbolMaker(Pack pack, IReadOnlySet<string> wired)
{
    /// <summary>The symbols of a part, none for wires, bars and what is plugged in.</summary>
    internal IEnumerable<Symbol> Of(Part part) => part switch
    {
        Cells cells => [Leaf(cells, SymbolShape.Cells, "+", "-", $"{cells.Series.Value} in series, {cells.Parallel.Value} parallel", CellWords(cells))],
        Bms bms => [bms.Side.Value == BmsSide.High
            ? Through(bms, SymbolShape.Bms, "B+", "P+", $"BMS, {Amps(bms.Continuous.Value.Amperes)}")
            : Through(bms, SymbolShape.Bms, "B-", "P-", $"BMS, {Amps(bms.Continuous.Value.Amperes)}")],
        Fuse fuse => [Through(
            fuse, fuse.IsBreaker ? SymbolShape.Breaker : SymbolShape.Fuse, "1", "2", $"{Amps(fuse.Rating.Value.Amperes)} {fuse.Class.Value}")],
        Switch contact => OfSwitch(contact),
        Relay relay => OfRelay(relay),
        Shunt shunt => [Through(shunt, SymbolShape.Shunt, "battery", "load", $"shunt, {Amps(shunt.Rated.Value.Amperes)}")],
        Diode diode => [Through(diode, SymbolShape.Diode, "A", "K", "diode")],
        Resistor resistor => [Through(resistor, SymbolShape.Resistor, "1", "2", QuantityText.WithPrefix(resistor.Resistance.Value.Ohms, "Ω"))],
        Meter meter => [Leaf(meter, SymbolShape.Meter, "+", "-", "meter")],
        Converter converter => [IsWired(converter, "out+")
            ? Through(converter, SymbolShape.Converter, "in+", "out+", Watts((double)converter.Power.Value.Watts))
            : Leaf(converter, SymbolShape.Converter, "in+", "in-", Watts((double)converter.Power.Value.Watts))],
        Inverter inverter => [Leaf(inverter, SymbolShape.Inverter, "in+", "in-", $"inverter, {Watts((double)inverter.Power.Value.Watts)}")],
        Port port => [Leaf(port, SymbolShape.Port, "+", "-", $"port, {Amps(port.Rated.Value.Amperes)}")],
        Load { At: null } load => [Leaf(load, SymbolShape.Load, "+", "-")],
        Charger { At: null } charger => [OfCharger(charger)],
        Panel when HostOf(part) is null => [Leaf(part, SymbolShape.Panel, "+", "-", "panel")],
        Vehicle when HostOf(part) is null => [Leaf(part, SymbolShape.Vehicle, "+", "-", "vehicle")],
        _ => [],
    };

    private static string Amps(double amps) => QuantityText.WithPrefix(amps, "A");

    private static string Watts(double watts) => QuantityText.WithPrefix(watts, "W");

    private static string CellWords(Cells cells) => $"{QuantityText.Plain(cells.Capacity.Value.AmpereHours, 3)} Ah, {cells.Chemistry.Value}";

    private IEnumerable<Symbol> OfSwitch(Switch contact)
    {
        SymbolShape shape = contact.Momentary?.Value == true ? SymbolShape.PushButton : SymbolShape.Switch;
        yield return Through(contact, shape, "1", "2", Amps(contact.Contact.Amps.Value.Amperes));
        if (contact.Poles.Value > 1)
        {
            yield return Make(contact, shape, [new Caption($"{contact.Id}, second pole")], "3", "4", passes: true, []);
        }
    }

    private IEnumerable<Symbol> OfRelay(Relay relay)
    {
        bool resting = !IsWired(relay, "87") && IsWired(relay, "87a");
        yield return Make(
            relay,
            resting ? SymbolShape.RestContact : SymbolShape.Contact,
            [new Caption(relay.Id, relay.Id), new Caption($"contact, {Amps(relay.Contact.Carry.Value.Amperes)}")],
            "30",
            resting ? "87a" : "87",
            passes: true,
            resting ? [] : ["87a"]);
        yield return Make(
            relay,
            SymbolShape.Coil,
            [new Caption($"{relay.Id}, coil"), new Caption(QuantityText.WithPrefix(relay.Coil.Resistance.Value.Ohms, "Ω"))],
            "86",
            "85",
            passes: false,
            []);
    }

    private Symbol OfCharger(Charger charger)
    {
        string words = $"charger, {Amps(charger.Current.Value.Amperes)}";
        string[] inputs = ["pv+", "in+"];
        string? input = inputs.FirstOrDefault(t => charger.Terminals.Contains(t) && IsWired(charger, t));
        string plus = charger.Terminals.Contains("out+") ? "out+" : "+";
        return input is null
            ? Leaf(charger, SymbolShape.Charger, plus, plus == "+" ? "-" : "out-", words)
            : Through(charger, SymbolShape.Charger, input, plus, words);
    }

    private bool IsWired(Part part, string terminal) => wired.Contains(Schematic.Node(part.Id, terminal));

    private Symbol Leaf(Part part, SymbolShape shape, string top, string bottom, params string[] words) =>
        Make(part, shape, Captions(part, words), top, bottom, passes: false, part.Terminals);

    private Symbol Through(Part part, SymbolShape shape, string top, string bottom, params string[] words) =>
        Make(part, shape, Captions(part, words), top, bottom, passes: true, part is Switch ? ["lamp-"] : part.Terminals);

    private Symbol Make(
        Part part, SymbolShape shape, IReadOnlyList<Caption> captions, string top, string bottom, bool passes, IEnumerable<string> others) => new(
        part.Id,
        shape,
        captions,
        Pin(part, top),
        Pin(part, bottom),
        [.. others.Where(t => t != top && t != bottom && IsWired(part, t)).Select(t => Pin(part, t))],
        passes);

    private static SymbolPin Pin(Part part, string terminal) => new(terminal, Schematic.Node(part.Id, terminal));

    /// <summary>The part, what is known of it, and whatever is plugged into it.</summary>
    private IReadOnlyList<Caption> Captions(Part part, IEnumerable<string> words) =>
        [new Caption(part.Id, part.Id), .. words.Select(w => new Caption(w)), .. Plugged(part)];

    private IEnumerable<Caption> Plugged(Part host) =>
        pack.Parts.Where(p => HostOf(p) == host.Id).SelectMany(p => Plugged(p).Prepend(new Caption($"+ {p.Id} ({p.Kind})", p.Id)));

    /// <summary>The part that a part is plugged into or feeds without drawn wires; null when it stands on its own.</summary>
    private string? HostOf(Part part) => part switch
    {
        Load load => load.At?.Value,
        Charger charger => charger.At?.Value,
        Panel panel => panel.At?.Value ?? FedBy(panel),
        Vehicle vehicle => vehicle.At?.Value ?? FedBy(vehicle),
        _ => null,
    };

    private string? FedBy(Part source) =>
        IsWired(source, "+") ? null : pack.Of<Charger>().FirstOrDefault(c => c.From?.Value == source.Id)?.Id;
}
