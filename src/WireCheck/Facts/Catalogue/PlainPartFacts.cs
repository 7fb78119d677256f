namespace WireCheck.Facts.Catalogue;

/// <summary>Facts about shunts.</summary>
public static class ShuntFacts
{
    public static readonly Fact Current = Fact.Worst("shunt", "current", "A", "Largest steady current through it.");

    public static readonly Fact Rated = Fact.Number("shunt", "rated", "A", "Rated current.");
}

/// <summary>Facts about diodes.</summary>
public static class DiodeFacts
{
    public static readonly Fact Current = Fact.Worst("diode", "current", "A", "Largest steady forward current.");

    public static readonly Fact Rated = Fact.Number("diode", "rated", "A", "Rated forward current.");

    public static readonly Fact StandOff = Fact.Number(
        "diode", "stand_off", "V", "Highest voltage of a source whose positive pole reaches its cathode: what it must hold back when its anode is dead.");

    public static readonly Fact RatedVoltage = Fact.Number("diode", "rated_voltage", "V", "Highest reverse voltage it bears.");

    public static readonly Fact Power = Fact.Worst("diode", "power", "W", "Largest heat in it.");
}

/// <summary>Facts about resistors.</summary>
public static class ResistorFacts
{
    public static readonly Fact Power = Fact.Worst("resistor", "power", "W", "Largest steady heat in it.");

    public static readonly Fact Rated = Fact.Number("resistor", "rated", "W", "Continuous power rating.");
}

/// <summary>Facts about panels.</summary>
public static class PanelFacts
{
    public static readonly Fact OpenCircuit = Fact.Number("panel", "open_circuit", "V", "Open-circuit voltage.");
}

/// <summary>Facts about vehicle outlets.</summary>
public static class VehicleFacts
{
    public static readonly Fact FuseRating = Fact.Number("vehicle", "fuse_rating", "A", "Rating of its own fuse.");

    public static readonly Fact Current = Fact.Worst("vehicle", "current", "A", "Largest current it delivers.");
}
