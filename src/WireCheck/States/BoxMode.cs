using WireCheck.Circuit.Wiring;

namespace WireCheck.States;

/// <summary>What a load does in a mode.</summary>
public enum LoadUse
{
    /// <summary>Not plugged in.</summary>
    Absent,

    /// <summary>Plugged in, taking its standby current.</summary>
    Standby,

    /// <summary>Taking what it is described to take.</summary>
    Full,

    /// <summary>Taking its surge.</summary>
    Surge,
}

/// <summary>A position of every switch, plug and load in which the box is solved.</summary>
public sealed class BoxMode
{
    /// <summary>Id from the description, or one of the names the program adds.</summary>
    public required string Id { get; init; }

    /// <summary>What it is, in a few words.</summary>
    public required string Words { get; init; }

    /// <summary>True when the description does not hold it.</summary>
    public required bool Added { get; init; }

    /// <summary>False for the moment of a surge, which heats nothing and is judged for voltage only.</summary>
    public bool Steady { get; init; } = true;

    /// <summary>Ids of closed switches.</summary>
    public required IReadOnlySet<string> ClosedSwitches { get; init; }

    /// <summary>State of each charger, vehicle and panel that is not absent.</summary>
    public required IReadOnlyDictionary<string, SourceState> Sources { get; init; }

    /// <summary>Use of each load; a load that is not named is absent.</summary>
    public required IReadOnlyDictionary<string, LoadUse> Loads { get; init; }

    /// <summary>Power in watts of loads, converters and inverters that the mode names; wins over <see cref="Loads"/>.</summary>
    public IReadOnlyDictionary<string, double> Watts { get; init; } = new Dictionary<string, double>();

    /// <summary>True when an inverter, or a converter without any described load, gives at least its rated power.</summary>
    public bool OutletsAtRatedPower { get; init; }

    /// <summary>Id of the inverter that gives its surge; null when none does.</summary>
    public string? SurgingInverter { get; init; }

    /// <summary>State of a source.</summary>
    public SourceState Source(string id) => Sources.GetValueOrDefault(id, SourceState.Absent);

    /// <summary>Use of a load.</summary>
    public LoadUse Load(string id) => Loads.GetValueOrDefault(id, LoadUse.Absent);

    /// <summary>The same mode with other switches closed.</summary>
    public BoxMode WithSwitches(IReadOnlySet<string> closed) => new()
    {
        Id = Id,
        Words = Words,
        Added = Added,
        Steady = Steady,
        ClosedSwitches = closed,
        Sources = Sources,
        Loads = Loads,
        Watts = Watts,
        OutletsAtRatedPower = OutletsAtRatedPower,
        SurgingInverter = SurgingInverter,
    };

    /// <summary>The same mode with other powers and sources.</summary>
    public BoxMode With(IReadOnlyDictionary<string, double> watts, IReadOnlyDictionary<string, SourceState> sources) => new()
    {
        Id = Id,
        Words = Words,
        Added = Added,
        Steady = Steady,
        ClosedSwitches = ClosedSwitches,
        Sources = sources,
        Loads = Loads,
        Watts = watts,
        OutletsAtRatedPower = OutletsAtRatedPower,
        SurgingInverter = SurgingInverter,
    };

    /// <summary>The same mode with one load at its standby.</summary>
    internal BoxMode Without(string loadId)
    {
        Dictionary<string, double> watts = new(Watts);
        watts.Remove(loadId);
        return new BoxMode
        {
            Id = Id,
            Words = Words,
            Added = Added,
            Steady = Steady,
            ClosedSwitches = ClosedSwitches,
            Sources = Sources,
            Loads = new Dictionary<string, LoadUse>(Loads) { [loadId] = LoadUse.Standby },
            Watts = watts,
            OutletsAtRatedPower = OutletsAtRatedPower,
            SurgingInverter = SurgingInverter,
        };
    }

    public override string ToString() => Id;
}
