using WireCheck.Description;
using WireCheck.Description.Kinds;
using WireCheck.Facts.Gather;
using WireCheck.Quantities;
using WireCheck.States;

namespace WireCheck.Sheets;

/// <summary>
/// In which order a box is brought to life: everything off, negatives before positives, first through a small fuse, the main
/// fuse last. Every step uses only what the steps before have made live and tells the voltage to expect.
/// </summary>
internal sealed class FirstConnection(GatherContext context, BenchBox bench)
{
    private readonly List<IReadOnlyList<string>> _rows = [];
    private readonly Pack _pack = context.Pack;
    private readonly SteppedBox _box = new(context.Pack, context.Library);

    internal Sheet Make()
    {
        Prepare();
        Connect();
        PowerItUp();
        Use();
        return new Sheet(
            "first-connection",
            "Order of first connection",
            [
                "From top to bottom, one hand in the pocket, rings and watch off. After each step look, listen and smell before the next.",
                $"Voltages are those of a new bank at half charge, {SheetWords.Volts(RestedVolts())} V, with nothing plugged in. When yours reads otherwise, add the difference to all but the outputs of converters. Stop where a reading is further off than that.",
            ],
            ["", "do", "then see", "done"],
            _rows);
    }

    private void Add(string what, string see) => _rows.Add([FormattableString.Invariant($"{_rows.Count + 1}"), what, see, ""]);

    private void Add(ConnectionStep step) => Add(step.Do, step.See);

    private void Prepare()
    {
        string[] open = [.. _pack.Of<Switch>().Where(s => s.Momentary?.Value != true).Concat<Part>(_pack.Of<Fuse>().Where(f => f.IsBreaker)).Select(p => p.Id)];
        string[] push = [.. _pack.Of<Switch>().Where(s => s.Momentary?.Value == true).Select(s => s.Id)];
        string alone = push.Length > 0 ? $" Leave {string.Join(", ", push)} alone: it opens by itself." : "";
        if (open.Length > 0 || alone.Length > 0)
        {
            Add((open.Length > 0 ? $"Open every switch and breaker: {string.Join(", ", open)}." : "") + alone, "every one in its off position");
        }

        string[] fuses = [.. _pack.Of<Fuse>().Where(f => !f.IsBreaker).Select(f => f.Id)];
        if (fuses.Length > 0)
        {
            Add($"Take every fuse out: {string.Join(", ", fuses)}.", "empty holders");
        }

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
                    $"no spark, nothing warm; {SheetWords.Volts(RestedVolts())} V from {bank.Id}.+ to {bank.Id}.-");
            }

            Add($"Bolt what is left at {bank.Id}.-, then what is left at {bank.Id}.+: no fuse is in, so hardly anything may flow.", $"no spark at all; a spark means a way round the fuses: stop. {new PowerUp(_pack, _box, []).See()}");
        }
    }

    private void PowerItUp()
    {
        Fuse? main = Main();
        string limit = QuantityText.WithPrefix(context.Data.Assumed("first_power_limit"), "A");
        PowerUp small = new(_pack, _box, context.Inrush.Precharges);
        if (main is not null)
        {
            _box.TurnOn(main.Id);
            Add($"In place of {main.Id} fit a fuse of {limit}, or feed its terminal 2 from a bench supply limited to that.", $"the small fuse holds; {small.See(main.Id)}");
        }
        else
        {
            Add($"Feed the box through a fuse of {limit} or a bench supply limited to that, instead of the bank.", $"the small fuse holds; {small.See()}");
        }

        foreach (ConnectionStep step in small.PutOn())
        {
            Add(step);
        }

        // Breakers behind an open switch may stay: they are dead with it, and what hangs on them is filled with the rest.
        List<string> off = [.. small.Closed.Where(id => _pack.Find(id) is Switch).Reverse()];
        off.ForEach(_box.TurnOff);
        string[] fed = [.. small.Closed.Where(id => _pack.Find(id) is Fuse && _box.IsFed(id)).Reverse()];
        off.AddRange(fed);
        Array.ForEach(fed, _box.TurnOff);
        if (main is not null)
        {
            _box.TurnOff(main.Id);
        }

        string again = off.Count > 0 ? $"Open again, in this order: {string.Join(", ", off)}. " : "";
        PowerUp full = new(_pack, _box, context.Inrush.Precharges);
        if (main is not null)
        {
            _box.TurnOn(main.Id);
            Add($"{again}Take the small fuse out of {main.Id} and fit {main.Id} itself as the last connection.", $"no spark; {full.See(main.Id)}");
        }
        else
        {
            Add($"{again}Take the small fuse or the bench supply away and connect the bank as the last connection.", $"no spark; {full.See()}");
        }

        foreach (ConnectionStep step in full.PutOn())
        {
            Add(step);
        }
    }

    private void Use()
    {
        foreach (Meter meter in _pack.Of<Meter>())
        {
            AddMeter(meter);
        }

        (BoxMode Mode, double Volts, double Amps)[] modes = [.. bench.Described.Modes
            .Where(m => !m.Added && m.Sources.Count == 0)
            .Select(m => (m, VoltsOf(m.Id), AmpsOf(m.Id)))
            .Where(m => m.Item2 is not null && m.Item3 is not null)
            .Select(m => (m.m, m.Item2!.Value, m.Item3!.Value))
            .OrderBy(m => m.Item3)];
        foreach ((BoxMode mode, double volts, double amps) in modes)
        {
            Add(
                $"Bring the box into {mode.Id}: {Switches(mode)}{Draws(mode)}. Plug in one outlet after the other, the smallest first.",
                $"{SheetWords.Volts(volts)} V at the bank, {SheetWords.Amps(amps)} from it; voltages of {mode.Id} in the sheet of voltages, within their bands");
        }

        if (modes.Length > 0)
        {
            Mode heaviest = _pack.Modes.First(m => m.Id == modes[^1].Mode.Id);
            double half = 30 * 60;
            double time = Math.Min(half, heaviest.For?.Value.Seconds ?? half);
            Add($"Stay in {heaviest.Id}, the heaviest without a charger, for {QuantityText.Time(time)}; go over every joint with the back of a finger near it, or a thermometer.", "no joint warmer than its wire");
        }

        foreach (Charger charger in _pack.Of<Charger>())
        {
            AddCharge(charger);
        }

        Add("Write the readings into the description under measured, and keep these sheets with the box.", "a record of the box as built");
    }

    private void AddCharge(Charger charger)
    {
        BoxMode? mode = bench.Described.Modes.FirstOrDefault(m => !m.Added && m.Watts.Count == 0 && m.Source(charger.Id) == Circuit.Wiring.SourceState.Powered)
            ?? bench.Described.Modes.FirstOrDefault(m => m.Id == Modes.ChargingPrefix + charger.Id);
        ProbePair at = charger.At is { } port ? new ProbePair(port.Value, "+", "-") : new ProbePair(charger.Id, "out+", "out-");
        BenchBox.Band? volts = mode is null || _pack.Find(at.Part) is not (Port or Charger) ? null : bench.Volts(mode.Id, at);
        string where = mode is null ? "" : $" as in {mode.Id}: {Switches(mode)}, plugged in {string.Join(", ", mode.Sources.Keys.Where(IsPlugged))}";
        Add(
            $"Charge with {charger.Id}{where}. Stay beside it to the end of the first charge.",
            (volts is null ? "" : $"{SheetWords.Volts(volts.Expected)} V from {at.Red} to {at.Black} at half charge; ")
            + FormattableString.Invariant($"it ends at {charger.Voltage.Value.Volts:0.00} V or less, no cell above {HighestCell():0.00} V"));
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
            FormattableString.Invariant($"Set {meter.Id}: capacity {capacity:0.##} Ah, charged voltage {full - context.Data.Assumed("gauge_below_charge"):0.00} V, tail current {context.Data.Assumed("gauge_tail") * 100:0.#} %."),
            _box.LivePairs().Keys.Any(p => p.Part == meter.Id)
                ? "it takes the settings; it shows 100 % after the first full charge"
                : $"{meter.Id} is dead, from {meter.Id}.+ to {meter.Id}.-: wire it before it can be set");
    }

    private bool IsPlugged(string id) => _pack.Find(id) is Charger { At: not null } or Vehicle or Panel;

    private double? VoltsOf(string mode) =>
        _pack.Of<Cells>().FirstOrDefault() is { } bank ? bench.Volts(mode, new ProbePair(bank.Id, "+", "-"))?.Expected : null;

    private double? AmpsOf(string mode) => bench.In(mode, (wiring, point) =>
        wiring.Of<Circuit.Wiring.WiredBank>().Sum(b => b.CellElements.Take(b.Columns).Sum(c => -point.Amps(c))))?.Expected;

    private double RestedVolts() => _pack.Of<Cells>().FirstOrDefault() is not { } bank ? 0
        : bench.Library.Chemistries[bank.Chemistry.Value].OpenCircuitVolts(bench.Library.Assumptions["charge_nominal"].Value) * bank.Series.Value;

    private string Switches(BoxMode mode)
    {
        string[] open = [.. _pack.Of<Switch>().Where(s => s.Momentary?.Value != true && !mode.ClosedSwitches.Contains(s.Id)).Select(s => s.Id)];
        string closed = mode.ClosedSwitches.Count > 0 ? $"{string.Join(", ", mode.ClosedSwitches)} closed" : "no switch closed";
        return open.Length > 0 ? $"{closed}, {string.Join(", ", open)} open" : closed;
    }

    private static string Draws(BoxMode mode) => mode.Watts.Count == 0 ? ""
        : "; " + string.Join(", ", mode.Watts.Select(w => $"{w.Key} {QuantityText.WithPrefix(w.Value, "W")}"));

    private double HighestCell() => _pack.Of<Cells>().Select(c => c.Window.Value.To.Volts).DefaultIfEmpty(0).Min();

    /// <summary>The first fuse on the way out of the bank's positive: the one that ends the work.</summary>
    private Fuse? Main()
    {
        foreach (Cells bank in _pack.Of<Cells>())
        {
            (TerminalReference From, TerminalReference To)[] ways =
                [.. _pack.Conductors.Select(c => (c.From, c.To)), .. _pack.Of<Joint>().Select(j => (j.First, j.Second))];
            foreach ((TerminalReference from, TerminalReference to) in ways)
            {
                string? other = from.Terminal == "+" && from.PartId == bank.Id ? to.PartId
                    : to.Terminal == "+" && to.PartId == bank.Id ? from.PartId : null;
                if (other is not null && _pack.Find(other) is Fuse { IsBreaker: false } fuse)
                {
                    return fuse;
                }
            }
        }

        return null;
    }
}
