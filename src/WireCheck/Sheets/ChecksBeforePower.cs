using WireCheck.Description;
using WireCheck.Description.Kinds;
using WireCheck.Knowledge;
using WireCheck.Quantities;

namespace WireCheck.Sheets;

/// <summary>What is checked while nothing is live: every fuse out, every switch off, nothing plugged in.</summary>
internal sealed class ChecksBeforePower(Pack pack, Library library)
{
    private readonly List<IReadOnlyList<string>> _rows = [];

    internal Sheet Make()
    {
        Inspect();
        Continuity();
        Insulation();
        Cells();
        return new Sheet(
            "checks-before-power",
            "Checks before power",
            ["All of this with every fuse out, every breaker and switch off, nothing plugged in, and one wire off the bank. Stop at the first that fails."],
            ["", "check", "where", "want", "done"],
            _rows);
    }

    private void Add(string check, string where, string want) =>
        _rows.Add([FormattableString.Invariant($"{_rows.Count + 1}"), check, where, want, ""]);

    private void Inspect()
    {
        Add("Every wire as in the wiring list", "all terminals", "wire, size, label and terminal agree; a firm pull moves nothing");
        Add("Torque", "every screw and nut", "as the maker of the part says (the description declares none); marked with paint when done");
        Add("Fuses at hand, not fitted yet", string.Join(", ", pack.Of<Fuse>().Select(f => f.Id)), "rating, class and volts as in the fuse schedule");

        foreach (Diode diode in pack.Of<Diode>())
        {
            Add("Direction of the diode", diode.Id, $"A at the wire that comes from the source, K at the other: {Wires(diode.Id, "A")} at A, {Wires(diode.Id, "K")} at K");
        }

        foreach (Relay relay in pack.Of<Relay>())
        {
            if (relay.Coil.Suppression?.Value is CoilSuppression.Diode or CoilSuppression.Zener || relay.Coil.Economiser is not null)
            {
                Add("Polarity of the coil", relay.Id, $"plus at 86 ({Wires(relay.Id, "86")}), minus at 85 ({Wires(relay.Id, "85")})");
            }

            if (relay.Polarised?.Value == true)
            {
                Add("Direction of the contact", relay.Id, "current in normal use goes from 30 to 87");
            }
        }
    }

    private void Continuity()
    {
        foreach (Conductor wire in pack.Conductors)
        {
            Add("Continuity", $"{wire.Id}: {wire.From} to {wire.To}", $"below {Assumed("continuity_below", "Ω")} with the resistance of your leads taken off");
        }

        foreach (Port port in pack.Of<Port>())
        {
            Add("Polarity by continuity", port.Id, $"pin + to {Far(port.Id, "+")}, pin - to {Far(port.Id, "-")}; never crossed");
        }
    }

    private void Insulation()
    {
        if (pack.Of<Cells>().FirstOrDefault() is not { } bank)
        {
            return;
        }

        Add("No short", $"the wire for {bank.Id}.+ to the wire for {bank.Id}.-, then again with each fuse fitted and each switch closed in turn", "the reading climbs as capacitors fill; one that stays near zero is a short. Take the fuses out again");
        if (pack.Surroundings.Enclosure is { Conducts: true } enclosure)
        {
            NamedValue least = library.Assumptions["case_insulation"];
            string want = $"above {QuantityText.WithPrefix(least.Value, "Ω")} ({StandingWords.For(least.Source.Standing)})";
            Add("Insulation of the metal case", $"case to the wire for {bank.Id}.+", want);
            Add("Insulation of the metal case", $"case to the wire for {bank.Id}.-", enclosure.BondedTo is { } bond ? $"{want}, with the bond at {bond} lifted; then below {Assumed("continuity_below", "Ω")} with it on" : want);
        }
    }

    private void Cells()
    {
        foreach (Cells bank in pack.Of<Cells>())
        {
            (double low, double high) = (bank.Window.Value.From.Volts, bank.Window.Value.To.Volts);
            Add("Each group of cells", bank.Id, FormattableString.Invariant($"{bank.Series.Value} groups, each between {low:0.00} and {high:0.00} V, all alike within {Assumed("cells_alike", "V")} after a day of rest"));
            Add("The bank, the right way round", $"red on {bank.Id}.+, black on {bank.Id}.-", FormattableString.Invariant($"between {low * bank.Series.Value:0.00} and {high * bank.Series.Value:0.00} V, and positive"));
        }

        foreach (Bms bms in pack.Of<Bms>())
        {
            Add("Order of the sense leads", $"plug of {bms.Id}, before it is plugged", FormattableString.Invariant($"black on the first pin: each next pin reads one group more, {bms.Series.Value} steps, none negative"));
        }
    }

    private string Assumed(string name, string unit) => QuantityText.WithPrefix(library.Assumptions[name].Value, unit);

    /// <summary>Wires and joints at a terminal.</summary>
    private string Wires(string part, string terminal)
    {
        string[] at =
        [
            .. pack.Conductors.Where(c => Is(c.From) || Is(c.To)).Select(c => c.Id),
            .. pack.Of<Joint>().Where(j => Is(j.First) || Is(j.Second)).Select(j => j.Id),
        ];
        return at.Length == 0 ? "nothing" : string.Join(", ", at);

        bool Is(TerminalReference end) => end.PartId == part && end.Terminal == terminal;
    }

    /// <summary>Where the wires of a terminal go.</summary>
    private string Far(string part, string terminal)
    {
        string[] ends =
        [
            .. pack.Conductors.Where(c => c.From.PartId == part && c.From.Terminal == terminal).Select(c => c.To.ToString()),
            .. pack.Conductors.Where(c => c.To.PartId == part && c.To.Terminal == terminal).Select(c => c.From.ToString()),
        ];
        return ends.Length == 0 ? "nothing" : string.Join(" and ", ends);
    }
}
