using WireCheck.Description;
using WireCheck.Description.Kinds;
using WireCheck.Facts.Gather;
using WireCheck.Faults.Inrush;
using WireCheck.Quantities;

namespace WireCheck.Sheets;

/// <summary>In which order a box is brought to life: everything off, negatives before positives, the fuse last.</summary>
internal sealed class FirstConnection(GatherContext context)
{
    private readonly List<IReadOnlyList<string>> _rows = [];
    private readonly Pack _pack = context.Pack;

    internal Sheet Make()
    {
        Prepare();
        Connect();
        PowerUp();
        Settle();
        return new Sheet(
            "first-connection",
            "Order of first connection",
            ["From top to bottom, one hand in the pocket, rings and watch off. After each step look, listen and smell before the next."],
            ["", "do", "then see", "done"],
            _rows);
    }

    private void Add(string what, string see) => _rows.Add([FormattableString.Invariant($"{_rows.Count + 1}"), what, see, ""]);

    private void Prepare()
    {
        Add($"Open every switch and breaker: {Ids(_pack.Of<Switch>().Concat<Part>(_pack.Of<Fuse>().Where(f => f.IsBreaker)))}.", "every one in its off position");
        Add($"Take every fuse out: {Ids(_pack.Of<Fuse>().Where(f => !f.IsBreaker))}.", "empty holders");
        Add("Unplug everything from every port and outlet.", "nothing plugged in");
    }

    private void Connect()
    {
        foreach (Cells bank in _pack.Of<Cells>())
        {
            foreach (Bms bms in _pack.Of<Bms>())
            {
                Add(
                    bms.Side.Value == BmsSide.Low
                        ? $"Bolt {bank.Id}.- to {bms.Id}.B-, then plug the sense leads of {bms.Id}, then bolt its P-. Its maker's order goes before this one."
                        : $"Bolt {bank.Id}.+ to {bms.Id}.B+, then plug the sense leads of {bms.Id}, then bolt its P+. Its maker's order goes before this one.",
                    "no spark, nothing warm");
            }

            Add($"Bolt what is left at {bank.Id}.-, then what is left at {bank.Id}.+: no fuse is in, so nothing may flow.", "no spark at all; a spark means a way round the fuses: stop");
        }
    }

    private void PowerUp()
    {
        Fuse? main = Main();
        string limit = QuantityText.WithPrefix(context.Data.Assumed("first_power_limit"), "A");
        Add(
            main is null
                ? $"Feed the box through a fuse of {limit} or a bench supply limited to that, instead of the bank."
                : $"In place of {main.Id} fit a fuse of {limit}, or feed its terminal 2 from a bench supply limited to that.",
            "the small fuse holds; voltages of the mode stored as in the sheet of voltages");
        Add("Read the current at rest.", "within the band of its sheet");
        Add("Fit the other fuses one after the other, the smallest first; read the current at rest after each.", "no step that the sheet does not explain");
        if (main is not null)
        {
            Add($"Everything off again. Take the small fuse out and fit {main.Id} as the last connection.", "no spark");
        }
    }

    private void Settle()
    {
        foreach (Precharge precharge in context.Inrush.Precharges)
        {
            Add(
                $"Before {precharge.ContactId} closes, each time: precharge {string.Join(" and ", precharge.Capacitors.Select(c => c.PartId).Distinct())} through {precharge.ResistorId}{(precharge.SecondsTo(0.95) is double wait && double.IsFinite(wait) ? $" for {QuantityText.Time(Math.Max(1, Math.Ceiling(2 * wait)))} or more" : "")}.",
                "the voltage behind it climbs to nearly that of the bank");
        }

        if (context.Inrush.Precharges.Count == 0 && _pack.Of<Inverter>().Any())
        {
            Add("The box has no precharge: fill the inverter's capacitors through a resistor or a filament lamp across the open contact before it closes for the first time.", "no bang when it closes");
        }

        foreach (Switch one in _pack.Of<Switch>().Where(s => s.Momentary?.Value != true))
        {
            Add($"Close {one.Id}.", "voltages of the sheet for the mode this makes; nothing warm, nothing chatters");
        }

        Add("Load one outlet after the other, the smallest first, up to each mode of the description.", "voltages and millivolts within their bands");
        Add("Run the heaviest mode that lasts for half an hour; go over every joint with the back of a finger near it, or a thermometer.", "no joint warmer than its wire");
        foreach (Meter meter in _pack.Of<Meter>())
        {
            AddMeter(meter);
        }

        foreach (Charger charger in _pack.Of<Charger>())
        {
            Add($"Charge with {charger.Id} and stay beside it to the end of the first charge.", FormattableString.Invariant($"it ends at {charger.Voltage.Value.Volts:0.00} V or less, no cell above {HighestCell():0.00} V"));
        }

        Add("Write the readings into the description under measured, and keep these sheets with the box.", "a record of the box as built");
    }

    private void AddMeter(Meter meter)
    {
        if (_pack.Of<Cells>().FirstOrDefault() is not { } bank)
        {
            return;
        }

        double capacity = bank.Capacity.Value.AmpereHours * bank.Parallel.Value;
        double full = _pack.Of<Charger>().Select(c => c.Voltage.Value.Volts).DefaultIfEmpty(bank.Window.Value.To.Volts * bank.Series.Value).Min();
        Add(
            FormattableString.Invariant($"Set {meter.Id}: capacity {capacity:0.##} Ah, charged voltage {full - context.Data.Assumed("gauge_below_charge"):0.00} V, tail current {context.Data.Assumed("gauge_tail") * 100:0.#} %; then charge full once."),
            "it shows 100 %");
    }

    private double HighestCell() => _pack.Of<Cells>().Select(c => c.Window.Value.To.Volts).DefaultIfEmpty(0).Min();

    /// <summary>The first fuse on the way out of the bank's positive: the one that ends the work.</summary>
    private Fuse? Main()
    {
        foreach (Cells bank in _pack.Of<Cells>())
        {
            foreach (Conductor wire in _pack.Conductors)
            {
                string? other = wire.From is { Terminal: "+" } from && from.PartId == bank.Id ? wire.To.PartId
                    : wire.To is { Terminal: "+" } to && to.PartId == bank.Id ? wire.From.PartId : null;
                if (other is not null && _pack.Find(other) is Fuse { IsBreaker: false } fuse)
                {
                    return fuse;
                }
            }
        }

        return null;
    }

    private static string Ids(IEnumerable<Part> parts) => string.Join(", ", parts.Select(p => p.Id)) is { Length: > 0 } ids ? ids : "none";
}
