using WireCheck.Physics;

namespace WireCheck.Tests.Physics;

/// <summary>What has no answer is refused, so that no division by nothing becomes a number in a report.</summary>
public sealed class RefusedInputsTests
{
    public static TheoryData<string, Action> Refused => new()
    {
        { "a table whose ambient is its rating", () => AmbientCorrection.Factor(30, 30, 90, 40) },
        { "no ampacity", () => AmbientCorrection.CircularTemperature(30, 105, 5, 0) },
        { "a capacitor through nothing", () => CapacitorCharge.Peak(50, 0) },
        { "a joule integral through nothing", () => CapacitorCharge.JouleIntegral(50, 1e-3, 0) },
        { "copper below where it would resist", () => Coil.ResistanceFactor(-Coil.CopperZero) },
        { "a coil of nothing", () => Coil.SettledTemperature(12, 0, 10, 25) },
        { "insulation round nothing", () => Conduction.CylindricalLayer(5, 1e-3, 0) },
        { "a core that conducts nothing", () => Conduction.HeatedCore(0) },
        { "a wire without resistance", () => _ = new ConductorHeating(0, 234.5, 10, 1, 25) },
        { "a wire without heat", () => _ = new ConductorHeating(1e-3, 234.5, 0, 1, 25) },
        { "a wire that gains by losing", () => _ = new ConductorHeating(1e-3, 234.5, 10, -1, 25) },
        { "a spell of no time", () => CyclicHeating.Share(0, 0.5, 60) },
        { "a body without time constant", () => CyclicHeating.Share(60, 0.5, 0) },
        { "a bar shorter than nothing", () => Resistance.OfBar(1.7e-8, -0.1, 1e-5) },
        { "a bar without section", () => Resistance.OfBar(1.7e-8, 0.1, 0) },
        { "no drop allowed", () => Resistance.CircularMilsForDrop(10, 10, 0) },
        { "a loop without resistance", () => SeriesCharge.LoopTimeConstant(0, 1e-6) },
    };

    [Theory]
    [MemberData(nameof(Refused))]
    public void It_is_refused(string what, Action asking) =>
        Should.Throw<ArgumentOutOfRangeException>(asking, what);
}
