using UnitsNet;

namespace WireCheck.Quantities;

/// <summary>Electric quantities and the units they are written in.</summary>
public static class ElectricKinds
{
    public static QuantityKind<ElectricCurrent> Current { get; } = new("a current", "80 A", c => c.Amperes,
    [
        new("A", v => ElectricCurrent.FromAmperes(v)),
        new("mA", v => ElectricCurrent.FromMilliamperes(v)),
        new("µA", v => ElectricCurrent.FromMicroamperes(v)),
        new("kA", v => ElectricCurrent.FromKiloamperes(v)),
        new("nA", v => ElectricCurrent.FromNanoamperes(v)),
    ]);

    public static QuantityKind<ElectricPotential> Voltage { get; } = new("a voltage", "12 V", u => u.Volts,
    [
        new("V", v => ElectricPotential.FromVolts(v)),
        new("mV", v => ElectricPotential.FromMillivolts(v)),
        new("µV", v => ElectricPotential.FromMicrovolts(v)),
        new("kV", v => ElectricPotential.FromKilovolts(v)),
    ]);

    public static QuantityKind<ElectricResistance> Resistance { get; } = new("a resistance", "90 Ω", r => r.Ohms,
    [
        new("Ω", v => ElectricResistance.FromOhms(v)),
        new("mΩ", v => ElectricResistance.FromMilliohms(v)),
        new("µΩ", v => ElectricResistance.FromMicroohms(v)),
        new("kΩ", v => ElectricResistance.FromKiloohms(v)),
        new("MΩ", v => ElectricResistance.FromMegaohms(v)),
    ]);

    public static QuantityKind<LinearResistance> LinearResistance { get; } = new(
        "a resistance per length", "3.3 mΩ/m", r => r.OhmsPerMetre,
    [
        new("mΩ/m", v => new LinearResistance(v / 1000)),
        new("Ω/m", v => new LinearResistance(v)),
        new("µΩ/m", v => new LinearResistance(v / 1e6)),
        new("Ω/km", v => new LinearResistance(v / 1000)),
        new("Ω/kft", v => new LinearResistance(v / Length.FromKilofeet(1).Meters)),
        new("mΩ/ft", v => new LinearResistance(v / 1000 / Length.FromFeet(1).Meters)),
    ]);

    public static QuantityKind<Power> Power { get; } = new("a power", "45 W", p => (double)p.Watts,
    [
        new("W", v => UnitsNet.Power.FromWatts(v)),
        new("kW", v => UnitsNet.Power.FromKilowatts(v)),
        new("mW", v => UnitsNet.Power.FromMilliwatts(v)),
        new("hp", v => UnitsNet.Power.FromMechanicalHorsepower(v)),
    ]);

    public static QuantityKind<UnitsNet.Energy> Energy { get; } = new("an energy", "50 J", e => e.Joules,
    [
        new("J", v => UnitsNet.Energy.FromJoules(v)),
        new("kJ", v => UnitsNet.Energy.FromKilojoules(v)),
        new("mJ", v => UnitsNet.Energy.FromMillijoules(v)),
        new("Wh", v => UnitsNet.Energy.FromWattHours(v)),
        new("kWh", v => UnitsNet.Energy.FromKilowattHours(v)),
    ]);

    public static QuantityKind<ElectricCapacitance> Capacitance { get; } = new("a capacitance", "470 µF", c => c.Farads,
    [
        new("µF", v => ElectricCapacitance.FromMicrofarads(v)),
        new("mF", v => ElectricCapacitance.FromMillifarads(v)),
        new("F", v => ElectricCapacitance.FromFarads(v)),
        new("nF", v => ElectricCapacitance.FromNanofarads(v)),
    ]);

    public static QuantityKind<ElectricCharge> Charge { get; } = new("a capacity", "100 Ah", c => c.Coulombs,
    [
        new("Ah", v => ElectricCharge.FromAmpereHours(v)),
        new("mAh", v => ElectricCharge.FromMilliampereHours(v)),
        new("C", v => ElectricCharge.FromCoulombs(v)),
        new("As", v => ElectricCharge.FromCoulombs(v)),
    ]);

    public static QuantityKind<JouleIntegral> JouleIntegral { get; } = new(
        "a melting energy", "520 A²s", i => i.AmpereSquaredSeconds,
    [
        new("A²s", v => new JouleIntegral(v)),
        new("A² s", v => new JouleIntegral(v)),
    ]);
}
