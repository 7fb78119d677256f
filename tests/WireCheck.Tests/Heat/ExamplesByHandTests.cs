using WireCheck.Circuit.Wiring;
using WireCheck.Energy;
using WireCheck.Facts.Gather;
using WireCheck.States;

namespace WireCheck.Tests.Heat;

/// <summary>
/// The examples worked by hand: the heat in the box and its air with everything on, the hottest conductor, and a runtime.
/// <para>Bands. Watts 6 %: resistances are exact, what is left out are a dozen small parts. Air: 12 % of the rise, what films told to one digit
/// can be wrong by. Hottest conductor: 12 % of its rise over the air in the box, likewise. Runtime 3 %: the mean voltage
/// of the bank and the charge that is left are read off by eye.</para>
/// <para>Walls, in W/(m² K): film inside 3 by air and 2.7 by radiation to half the walls, outside 3 by air and 5.9 by radiation; both a little more with a larger
/// rise. Openings: half of their area × 0.6 × √(g h ΔT/T), h half the height of the box, 1120 J/(m³ K).</para>
/// </summary>
public sealed class ExamplesByHandTests
{
    // Market stall, everything on, 35 °C. The urn's inverter gives its rated 500 W, the coolbox counts as 3.8 A for 0.3 of the time: 58.4 A at most, 56 A on the
    // average. Cells and bars: (4 × 1.5 + 0.4) mΩ × 56² = 20.1 W; BMS 1 mΩ, 3.1; shunt 0.75 mΩ, 2.4; main fuse and holder 0.64 mΩ, 2.0; telephones'
    // supply 20 W/0.87 less 20, 3.0; the inverter's relay and the other coil 2.4; nine metres of wire 7.0; contacts, ports and bars 3: 43 W.
    // Walls: 0.40 m² of sides and 0.16 of top, 3 mm plastic of 0.2 W/(m K) between films of 6.0 and 9.3: 3.46 W/(m² K), 1.95 W/K with the outer edges.
    // Openings 20 cm², h 0.125 m: 0.34 W/K. 43 W/2.3 W/K = 18.7 K: 53.7 °C.
    // w6, 4 AWG: 58.4² A² × 0.972 mΩ/m at 62 °C = 3.3 W/m. A skin of π × 8.3 mm, 6.1 by radiation and 7.6 by air: 0.36 W/(K m), 9.2 K; insulation 0.8 K: +10.0 K.
    // Trading, aged cells of 5 °C, 67.2 Ah: coolbox 13.5 W, till 40, telephones 23, inverter 7.7, coils 1.3: 85.5 W at 13.0 V are 6.6 A; 66 Ah until the till: 10.0 h.
    [Fact]
    public void The_market_stall() =>
        Explained("market-stall-12v", 43, 18.7, "w6", 10.0, "trading", 10.0, "till");

    // Pump house, everything on, 32 °C. The inverter (outside) gives 500 W, the pump counts as 5 A for a tenth of the time: 29.8 A at most, 25.2 A on the average. Cells and
    // bars: (8 × 1.5 + 1.2) mΩ × 25.2² = 8.4 W; telephones' supply 3.0; coils 3.1; BMS 1.7 mΩ, 1.1; fuse 0.7; shunt 0.5; wires of the trunk and the
    // inverter's, 2.2 m of 6 AWG at 1.5 mΩ/m and joints 0.1 mΩ each: 2.5; the rest 0.8: 20.1 W.
    // Walls: 0.45 and 0.20 m² of steel between films of 5.3 and 8.5: 3.27 W/(m² K), 2.12 W/K. Openings 30 cm², h 0.125 m, at 8 K: 0.35 W/K. 20.1/2.47 = 8.1 K: 40.1 °C.
    // w6, 6 AWG of tinned copper: 28.8² A² × 1.47 mΩ/m at 44 °C = 1.22 W/m; π × 6.7 mm, 6.3 and 6.5 W/(m² K): 0.27 W/(K m), 4.5 K; insulation 0.25 K: +4.8 K.
    // Mending, -5 °C, 62 Ah: drill charger 90 W/0.85, lamp 10, idle 8.6 and coils 1.6: 126 W at 26 V are 4.85 A: 12.7 h.
    [Fact]
    public void The_pump_house() =>
        Explained("pump-house-24v", 20.1, 8.1, "w6", 4.8, "mending", 12.7, "inverter");

    // Bicycle workshop, everything on, 35 °C: 25.7 A at 45 V. Cells and bars: (16 × 2.8 + 2.0) mΩ × 24.8² = 28.8 W: the tyre pump counts for a fifth; both converters 4.1 and 3.1; relay 2.2;
    // BMS 2.4 mΩ, 1.5; fuse 0.8; wires of 6 AWG, 2.5 m at 1.5 mΩ/m and joints: 3; the rest 1: 44.5 W.
    // Walls: 0.60 and 0.24 m² of plastic between films of 5.9 and 8.9: 3.35 W/(m² K), 2.87 W/K with the edges. Openings 30 cm², h 0.15 m: 0.49 W/K. 44.5/3.36 = 13.2 K: 48.2 °C.
    // w1, 6 AWG: 25.7² A² × 1.49 mΩ/m at 51 °C = 0.98 W/m; π × 6.7 mm × 13 W/(m² K): 0.27 W/(K m), 3.6 K; insulation 0.25 K: +3.8 K.
    // Charging bicycles, 5 °C, 33.6 Ah: 250 W/0.85 and 15 W are 309 W at 52.3 V, 5.9 A; 33.3 Ah until the inverter: 5.6 h.
    [Fact]
    public void The_bicycle_workshop() =>
        Explained("bicycle-workshop-48v", 44.5, 13.2, "w1", 3.8, "charging-bicycles", 5.6, "inverter");

    // First draft, everything on, 35 °C: the stall's loads over worse wires, 59.6 A and 57.1 A. Cells and bars 6.4 mΩ: 20.9 W; BMS of 1.7 mΩ 5.5; shunt, fuse 2.5 and 2.1; supply 3.0;
    // relays 2.4; w9, half a metre of 12 AWG: 49.4² × (7.45 mΩ/m × 0.5 m + 0.4 mΩ) = 10.1; other wires 7.5; contacts and ports 3.5: 57.5 W.
    // The stall's walls, films a little higher at more kelvins: 2.06 W/K, openings 0.38: 57.5/2.44 = 23.6 K: 58.6 °C.
    // w9: 49.4² A² × 7.45 mΩ/m at 128 °C = 18.2 W/m; π × 4.0 mm × 25 W/(m² K): 0.31 W/(K m), 58 K; insulation 9 K: +67 K.
    // Boiling, aged, 5 °C, 67.2 Ah: urn 450 W/0.87, till 40, idle and coils 9, losses of the wires 12: 578 W at 12.6 V are 45.9 A; 66 Ah: 1.43 h.
    [Fact]
    public void The_first_draft() =>
        Explained("first-draft-12v", 57.5, 23.6, "w9", 67, "boiling", 1.43, null);

    private static void Explained(
        string name, double watts, double airRise, string hottest, double wireRise, string mode, double hours, string? endedBy)
    {
        SolvedBox box = PackNumbers.Solve(name, File.ReadAllText(Path.Combine(Golden.Root, "examples", name + ".yaml"))).Box.ShouldNotBeNull();
        GatherContext context = new(box);
        HeatedMode everything = context.Heat.In(Modes.Everything).ShouldNotBeNull();
        everything.InsideWatts.ShouldBe(watts, 0.06 * watts);
        (everything.InsideCelsius - everything.AmbientCelsius).ShouldBe(airRise, 0.12 * airRise);

        WiredConductor[] wires = [.. box.Wiring.Of<WiredConductor>()];
        double warmest = everything.ConductorCelsius.Max();
        everything.ConductorCelsius[Array.FindIndex(wires, w => w.Conductor.Id == hottest)].ShouldBe(warmest, 0.01);
        (warmest - everything.InsideCelsius).ShouldBe(wireRise, 0.12 * wireRise);

        EnergyStudy study = context.Energy;
        ModeRun run = study.Run(study.Mode(mode), study.AgedAndCold).ShouldNotBeNull();
        (run.Seconds / 3600).ShouldBe(hours, 0.03 * hours);
        (endedBy is null || run.End.PartId == endedBy).ShouldBeTrue(run.End.ToString());
    }
}
