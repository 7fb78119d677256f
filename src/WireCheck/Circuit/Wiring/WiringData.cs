using UnitsNet;
using WireCheck.Circuit.Elements;
using WireCheck.Description;
using WireCheck.Description.Kinds;
using WireCheck.Knowledge;
using WireCheck.Quantities;

namespace WireCheck.Circuit.Wiring;

/// <summary>
/// What the wiring takes from the library: each method answers one question about one part, in SI units, so that
/// the kinds themselves hold no table.
/// </summary>
public sealed class WiringData(Library library)
{
    public Library Library { get; } = library;

    /// <summary>By how much the built box differs from its description; not at all unless a study says so.</summary>
    public BuiltDifference Built { get; init; } = BuiltDifference.None;

    /// <summary>Cold resistance of a relay's coil, Ω.</summary>
    public double CoilOhms(Relay relay) => relay.Coil.Resistance.Value.Ohms * Built.Coils;

    /// <summary>An assumption of the library by name, in SI units.</summary>
    public double Assumed(string name) => Library.Assumptions[name].Value;

    /// <summary>Resistance of a conductor's metal, Ω/m, at its temperature; a resistance given in the description wins.</summary>
    public double OhmsPerMetre(Conductor conductor, double celsius)
    {
        Material material = Library.Materials[conductor.Material.Value];
        if (conductor.Resistance is { } given)
        {
            return Physics.Resistance.AtTemperature(given.Value.OhmsPerMetre, material.Coefficient, celsius);
        }

        Stranding stranding = conductor.Strands?.Value is Strands.Coarse or Strands.Solid ? Stranding.Coarse : Stranding.Fine;
        return Library.Conductors.OhmsPerMetre(conductor.Size.Value, material, celsius, stranding);
    }

    /// <summary>Resistance of the joint at an end of a conductor, Ω.</summary>
    public double JointOhms(ConductorEnd end, ConductorSize size, bool aged) =>
        end.Resistance?.Value.Ohms ?? JointOhms(end.Class.Value, size, aged);

    /// <summary>Resistance of a joint of a class, Ω; of a whole conductor's size, or null for a joint without one.</summary>
    public double JointOhms(string jointClass, ConductorSize? size, bool aged)
    {
        double perMetre = size is { } known
            ? Library.Conductors.OhmsPerMetre(known, Library.Materials[CopperName], ColdCopperCelsius)
            : 0;
        double ohms = Library.Joints[jointClass].Resistance(perMetre, aged) * Built.Joints;

        // A conductor's joint may be nothing; a joint that is a part of its own still needs a resistance.
        return size is null ? Math.Max(ohms, SmallestOhms) : ohms;
    }

    /// <summary>Resistance of a bar, Ω/m.</summary>
    public double BarOhmsPerMetre(Section section, string? material, double celsius)
    {
        Material metal = Library.Materials[material ?? CopperName];
        double resistivity = Physics.Resistance.AtTemperature(metal.Resistivity, metal.Coefficient, celsius);
        return Physics.Resistance.OfBar(resistivity, 1, section.Area.SquareMeters);
    }

    /// <summary>Open-circuit voltage of one cell, V.</summary>
    public double CellOpenCircuitVolts(Cells cells, double charge) =>
        Library.Chemistries[cells.Chemistry.Value].OpenCircuitVolts(charge);

    /// <summary>
    /// Resistance of one cell, Ω. Highest: the direct-current figure, aged and cold. Lowest: the 1 kHz figure, or
    /// the direct-current one over the chemistry's ratio.
    /// </summary>
    public double CellOhms(Cells cells, int index, Conditions conditions)
    {
        Chemistry chemistry = Library.Chemistries[cells.Chemistry.Value];
        ElectricResistance? own = index < cells.Individual.Count ? cells.Individual[index].Resistance?.Value : null;
        double direct = (own ?? cells.Resistance.Value).Ohms * Built.Cells;
        if (conditions.HighestResistance)
        {
            return direct * chemistry.Aged * Math.Max(1, chemistry.ResistanceByTemperature.At(conditions.CellCelsius));
        }

        return Built.CellsAtRest ? direct : (cells.ResistanceAc?.Value.Ohms * Built.Cells) ?? (direct / chemistry.DcOverAc);
    }

    /// <summary>Resistance of one bar between cells with its two joints, Ω.</summary>
    public double LinkOhms(Cells cells, Conditions conditions)
    {
        if (cells.LinkResistance is { } given)
        {
            return given.Value.Ohms;
        }

        double joint = cells.Links?.Joint?.Value.Ohms ?? JointOhms(BoltedName, null, conditions.HighestResistance);
        double bar = cells.Links is { } links
            ? BarOhmsPerMetre(links.Section.Value, links.Material?.Value, conditions.CopperCelsius) * links.Length.Value.Meters
            : 0;
        return bar + (2 * joint);
    }

    /// <summary>Resistance of a fuse, Ω: cold, or as warm as its rated current makes it.</summary>
    public double FuseOhms(Fuse fuse, bool hot) =>
        (fuse.Resistance?.Value.Ohms ?? Library.Fuses[fuse.Class.Value].ColdResistance(fuse.Rating.Value.Amperes))
        * (hot ? Assumed("hot_fuse") : 1);

    /// <summary>Resistance of one pole of a port, Ω: as given, or that of its class's aged contact where that is more.</summary>
    public double PortContactOhms(Port port, bool aged)
    {
        double given = port.ContactResistance.Value.Ohms;
        return aged && port.ContactResistance.Assumed && port.Contact is { } named && Library.PortContacts.Find(named.Value) is { } contact
            ? Math.Max(given, contact.AgedResistance)
            : given;
    }

    /// <summary>Resistance of a fuse holder's two contacts, Ω.</summary>
    public double HolderOhms(Fuse fuse, bool aged) => fuse.Holder switch
    {
        null => 0,
        { Resistance: { } given } => given.Value.Ohms,
        { Class: { } known } => 2 * Library.Joints[known.Value].Resistance(0, aged) * Built.Joints,
        _ => 0,
    };

    /// <summary>Voltage an idle current is told for: the bank's nominal where the window holds it, else the window's middle.</summary>
    public double NominalInputVolts(Range<ElectricPotential> window, Pack pack)
    {
        double bank = NominalBankVolts(pack);
        (double low, double high) = (window.From.Volts, window.To.Volts);
        return bank >= low && bank <= high ? bank : (low + high) / 2;
    }

    /// <summary>Nominal voltage of the first bank, V.</summary>
    public double NominalBankVolts(Pack pack) => pack.Of<Cells>().FirstOrDefault() is { } bank
        ? NominalVolts(bank)
        : 0;

    /// <summary>Nominal voltage of a bank, V.</summary>
    public double NominalVolts(Cells bank) => Library.Chemistries[bank.Chemistry.Value].Voltages.Nominal * bank.Series.Value;

    /// <summary>Resistance of one core of a load's own lead, Ω, warm copper.</summary>
    public double LeadOhms(LoadLead lead) =>
        Library.Conductors.OhmsPerMetre(lead.Size.Value, Library.Materials[CopperName], Assumed("hot_copper")) * lead.Length.Value.Meters;

    /// <summary>
    /// Voltage below which a load is taken not to run, V: half the low end of its window, or half of what feeds it,
    /// so that a creeping voltage on a dead rail does not count as a load that starts.
    /// </summary>
    public double LowestRunningVolts(Load load, Pack pack) => (load.Window?.Value.From.Volts ?? NominalLoadVolts(load, pack)) / 2;

    /// <summary>Nominal voltage of what feeds a load, V: that of the converter it hangs on, else of the bank.</summary>
    public double NominalLoadVolts(Load load, Pack pack) => load.At is not null && pack.Find(load.At.Value) is Converter converter
        ? converter.Output.Value.Volts
        : NominalBankVolts(pack);

    /// <summary>Rise of a coil for each watt, K/W: the assumed rise at nominal voltage over the power it takes when that warm.</summary>
    public double CoilKelvinPerWatt(Relay relay)
    {
        double rise = Assumed("coil_rise");
        double volts = relay.Coil.Voltage.Value.Volts;
        double warm = CoilOhms(relay) * Physics.Coil.ResistanceFactor(20 + rise);
        return rise * warm / (volts * volts);
    }

    // Names that the library must hold.
    private const string CopperName = "copper";
    private const string BoltedName = "bolted";
    private const double ColdCopperCelsius = 20;
    private const double SmallestOhms = 1e-6;
}
