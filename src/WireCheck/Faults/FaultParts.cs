using WireCheck.Circuit.Wiring;
using WireCheck.Description.Kinds;
using WireCheck.Faults.Coordination;
using WireCheck.Knowledge;

namespace WireCheck.Faults;

/// <summary>What opens in the faults of a box, and what they heat.</summary>
internal sealed class FaultParts
{
    /// <summary>Outlets of road vehicles are fused by blades; a description gives only their rating.</summary>
    private const string VehicleFuseClass = "blade";

    internal FaultParts(BoxWiring wiring, FaultInput input)
    {
        Library library = input.Data.Library;
        double coldest = input.Pack.Surroundings.Ambient.Value.From.DegreesCelsius;
        double hottest = input.Pack.Surroundings.Ambient.Value.To.DegreesCelsius;
        OwnDevices = [.. wiring.Of<WiredFuse>().Select(f => new FaultDevice(
            f.Part.Id, f.Element, TimeCurrentBand.Of(f.Fuse, library, coldest, input.HottestInside)))];
        Devices = [.. OwnDevices, .. wiring.Of<WiredVehicle>().Select(v => new FaultDevice(
            v.Part.Id,
            v.Fuse,
            TimeCurrentBand.OfClass(v.Part.Id, v.Vehicle.Fuse.Value.Amperes, library.Fuses[VehicleFuseClass], coldest, hottest)))];
        List<FaultWire> wires = [];
        foreach (WiredConductor wire in wiring.Of<WiredConductor>())
        {
            double ampacity = input.Ampacity(wire.Conductor);
            ConductorDamage damage = ConductorDamage.Of(wire.Conductor, library, ampacity, input.Ambient(wire.Conductor));
            wires.Add(new FaultWire(wire.Part.Id, wire.Element, damage, ampacity) { IsSense = input.Pack.IsSense(wire.Conductor) });
        }

        foreach (WiredLoad load in wiring.Of<WiredLoad>())
        {
            // Every short behind a lead flows in its positive core; the negative one never carries more.
            if (load is { LeadPlus: { } core, Load.Lead: { } lead })
            {
                double ampacity = input.LeadAmpacity(lead.Size.Value);
                wires.Add(new FaultWire(load.Part.Id, core, LeadDamage(lead, ampacity, input), ampacity));
            }
        }

        Wires = wires;
    }

    /// <summary>Fuses and breakers of the box.</summary>
    internal FaultDevice[] OwnDevices { get; }

    /// <summary>Those and the fuses of vehicles, which stand outside in the air around.</summary>
    internal FaultDevice[] Devices { get; }

    /// <summary>Conductors, then the leads of loads.</summary>
    internal IReadOnlyList<FaultWire> Wires { get; }

    /// <summary>A lead is of copper with the insulation assumed for leads: of those with its rating the one that stands least.</summary>
    private static ConductorDamage LeadDamage(LoadLead lead, double ampacity, FaultInput input)
    {
        double rated = input.Data.Assumed("lead_insulation");
        InsulationClass? insulation = null;
        foreach (InsulationClass known in input.Data.Library.Insulation.All)
        {
            if (known.RatedCelsius == rated && known.LimitCelsius < (insulation?.LimitCelsius ?? double.PositiveInfinity))
            {
                insulation = known;
            }
        }

        return ConductorDamage.Of(
            lead.Size.Value,
            input.Data.Library.Materials["copper"],
            insulation ?? throw new KnowledgeException($"no insulation is rated for the {rated} °C assumed for leads"),
            input.Data.Library,
            ampacity,
            input.HottestInside);
    }
}
