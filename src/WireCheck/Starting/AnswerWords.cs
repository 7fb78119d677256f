namespace WireCheck.Starting;

/// <summary>Answers as they were typed; null where nothing was said.</summary>
public sealed record AnswerWords
{
    /// <summary>Title of the box.</summary>
    public string? Title { get; init; }

    /// <summary>Nominal voltage, such as <c>24</c> or <c>24 V</c>.</summary>
    public string? Volts { get; init; }

    /// <summary>Capacity, such as <c>100 Ah</c>.</summary>
    public string? Capacity { get; init; }

    /// <summary>Loads at 12 V, each <c>name=power</c> or <c>name=power@socket</c>.</summary>
    public IReadOnlyList<string> Loads { get; init; } = [];

    /// <summary>A supply for telephones.</summary>
    public bool Usb { get; init; }

    /// <summary>Power of the inverter.</summary>
    public string? Inverter { get; init; }

    /// <summary>Loads at the inverter, each <c>name=power</c>.</summary>
    public IReadOnlyList<string> MainsLoads { get; init; } = [];

    /// <summary>Ways to charge: mains, solar, vehicle; several in one are parted by commas.</summary>
    public IReadOnlyList<string> Charging { get; init; } = [];

    /// <summary>Power of the panel.</summary>
    public string? Panel { get; init; }
}
