namespace WireCheck.Starting;

/// <summary>Something that the box is to feed.</summary>
/// <param name="Name">Its id in the description.</param>
/// <param name="Watts">Power in W that it takes while it runs, more than 0.</param>
/// <param name="Socket">Class of its socket; null for the smallest that carries its current.</param>
public sealed record AskedLoad(string Name, double Watts, string? Socket = null);

/// <summary>What a builder wants, before anything is chosen.</summary>
public sealed record StartingAnswers
{
    /// <summary>Title of the box.</summary>
    public string Title { get; init; } = "My power box";

    /// <summary>Nominal voltage of the bank in V: 12, 24 or 48.</summary>
    public required int Volts { get; init; }

    /// <summary>Least capacity of the bank in Ah; more than 0.</summary>
    public required double AmpHours { get; init; }

    /// <summary>Loads at 12 V, each with a port of its own.</summary>
    public IReadOnlyList<AskedLoad> Loads { get; init; } = [];

    /// <summary>A supply for telephones.</summary>
    public bool Usb { get; init; }

    /// <summary>Power in W of the inverter; 0 for none.</summary>
    public double InverterWatts { get; init; }

    /// <summary>Loads at the inverter; one of nine tenths of its power is taken where it has none.</summary>
    public IReadOnlyList<AskedLoad> MainsLoads { get; init; } = [];

    /// <summary>A mains charger at an inlet.</summary>
    public bool FromMains { get; init; }

    /// <summary>Power in W of a panel, as on its label; 0 for none.</summary>
    public double SolarWatts { get; init; }

    /// <summary>A charger fed by the 12 V outlet of a vehicle.</summary>
    public bool FromVehicle { get; init; }

    /// <summary>Cells in series: one for each 3 V.</summary>
    internal int Series => Volts / VoltsOfCell;

    /// <summary>A cell of 3.2 V counts as 3 V in the name of a system.</summary>
    private const int VoltsOfCell = 3;
}
