using WireCheck.Description;
using WireCheck.Description.Kinds;
using WireCheck.Faults.Coordination;
using WireCheck.Knowledge;
using WireCheck.Text;

namespace WireCheck.Outside.Tests.Faults.Coordination;

/// <summary>Opening times and withstand against what standards set.</summary>
public sealed class BladeCurveTests
{
    /// <summary>ISO 8820-3, type C, as a maker's sheet of a 10 A blade prints it. Standing: published.</summary>
    [Theory]
    [InlineData(1.6, 0.25, 50)]
    [InlineData(2, 0.15, 5)]
    public void A_blade_of_10_amperes_opens_within_the_gates(double multiple, double fastest, double slowest) =>
        Opens("blade", 10, multiple, fastest, slowest);

    /// <summary>ISO 8820-3, type C, as a maker's sheet of a 40 A blade prints it. Standing: published.</summary>
    [Theory]
    [InlineData(1.35, 0.75, 600)]
    [InlineData(2, 0.15, 5)]
    [InlineData(3.5, 0.08, 0.5)]
    public void A_blade_of_40_amperes_opens_within_the_gates(double multiple, double fastest, double slowest) =>
        Opens("blade", 40, multiple, fastest, slowest);

    /// <summary>ISO 8820-3, type C, up to 30 A: 110 % for 100 h, 135, 350 and 600 %. Standing: from memory.</summary>
    [Theory]
    [InlineData(1.35, 0.75, 600)]
    [InlineData(3.5, 0.04, 0.5)]
    [InlineData(6, 0.02, 0.1)]
    public void Small_blades_open_within_the_recalled_gates(double multiple, double fastest, double slowest) =>
        Opens("blade", 25, multiple, fastest, slowest);

    /// <summary>ISO 8820-3, type E. Standing: published.</summary>
    [Theory]
    [InlineData(1.35, 60, 1800)]
    [InlineData(2, 2, 50)]
    [InlineData(3.5, 0.2, 7)]
    [InlineData(6, 0.04, 1)]
    public void Large_blades_open_within_the_gates(double multiple, double fastest, double slowest) =>
        Opens("maxi-blade", 60, multiple, fastest, slowest);

    /// <summary>A maker's sheets: a 40 A blade melts at 3300 A² s, maxi blades of 30, 35 and 40 A at 4100, 6000 and 8500. Standing: published.</summary>
    [Theory]
    [InlineData("blade", 40, 3300)]
    [InlineData("maxi-blade", 30, 4100)]
    [InlineData("maxi-blade", 35, 6000)]
    [InlineData("maxi-blade", 40, 8500)]
    public void Blades_melt_at_the_energy_of_the_sheet(string name, double rating, double energy)
    {
        TimeCurrentBand band = Band(name, rating);
        band.MeltingEnergy.ShouldBe(energy);
        double amps = rating * 20;
        (amps * amps * band.Fastest(amps)).ShouldBe(energy, 1e-6 * energy);
        band.ClearingEnergy(amps).ShouldBeGreaterThanOrEqualTo(energy);
    }

    /// <summary>
    /// IEC 60949: heat that goes into the insulation raises the current that is withstood by √(1 + X √(t/S) + Y t/S), copper in PVC
    /// X = 0.29 and Y = 0.06, in XLPE 0.41 and 0.12. Losing heat to the air alone, ours lies between that and no loss at
    /// all. Standing: from memory.
    /// </summary>
    [Theory]
    [InlineData("pvc-70", 115, 0.29, 0.06, 2.5)]
    [InlineData("pvc-70", 115, 0.29, 0.06, 10)]
    [InlineData("xlpe-90", 143, 0.41, 0.12, 2.5)]
    [InlineData("xlpe-90", 143, 0.41, 0.12, 35)]
    public void Withstand_lies_between_the_adiabatic_and_the_full_one(string insulation, double k, double x, double y, double section)
    {
        ConductorDamage damage = Damage(insulation, section);
        foreach (double seconds in new[] { 0.2, 1, 3, 4.9 })
        {
            double adiabatic = k * section / Math.Sqrt(seconds);
            double full = adiabatic * Math.Sqrt(1 + (x * Math.Sqrt(seconds / section)) + (y * seconds / section));
            damage.Seconds(adiabatic).ShouldBeGreaterThanOrEqualTo(seconds * 0.99, $"{seconds} s");
            damage.Seconds(full).ShouldBeLessThanOrEqualTo(seconds * 1.01, $"{seconds} s");
        }
    }

    private static void Opens(string name, double rating, double multiple, double fastest, double slowest)
    {
        TimeCurrentBand band = Band(name, rating);
        band.Fastest(rating * multiple).ShouldBe(fastest, 1e-9);
        band.Slowest(rating * multiple).ShouldBe(slowest, 1e-9 * slowest);
    }

    private static TimeCurrentBand Band(string name, double rating)
    {
        Pack pack = Read(FormattableString.Invariant($"part: {name}, rating: {rating} A"), "pvc-105", 10);
        return TimeCurrentBand.Of(pack.Of<Fuse>().Single(), Library.Embedded, 20, 20);
    }

    private static ConductorDamage Damage(string insulation, double section)
    {
        Conductor wire = Read("part: class-t, rating: 60 A", insulation, section).Conductors[0];
        double rated = Library.Embedded.Insulation[insulation].RatedCelsius;
        double amps = Library.Embedded.Ampacity.Rate(new AmpacityQuestion(
            wire.Size.Value, Library.Embedded.Materials["copper"], rated, 30, 1)).ShouldNotBeNull().Amps;
        return ConductorDamage.Of(wire, Library.Embedded, amps, 30);
    }

    private static Pack Read(string fuse, string insulation, double section)
    {
        ProblemList problems = new();
        Pack? pack = PackReader.Read(
            "parts.yaml",
            FormattableString.Invariant($$"""
            pack: Parts
            language: 1
            surroundings: {ambient: {from: 20 °C, to: 20 °C} }
            defaults: {conductor: {material: copper, insulation: {{insulation}}, ends: crimped-ring} }
            cells: {bank: {part: lfp-prismatic-100ah, series: 4, links: {section: 20 x 2 mm, length: 70 mm} } }
            fuses: {f: { {{fuse}} } }
            loads: {lamp: {current: 1 A, window: 10 .. 15 V} }
            conductors:
              w1: {from: bank.+, to: f.1, size: {{section}} mm², length: 100 mm}
              w2: {from: f.2, to: lamp.+, size: 10 mm², length: 100 mm}
              w3: {from: lamp.-, to: bank.-, size: 10 mm², length: 100 mm}
            """),
            problems);
        problems.InOrder().Select(p => p.ToString()).ShouldBeEmpty();
        return pack.ShouldNotBeNull();
    }
}
