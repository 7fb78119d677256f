namespace WireCheck.Facts.Gather;

/// <summary>The list of gatherers, one for each kind of part; a test holds it complete.</summary>
public static class Gatherers
{
    /// <summary>One gatherer for each kind.</summary>
    public static IReadOnlyList<IGatherer> All { get; } =
    [
        new ConductorGatherer(), new FuseGatherer(), new BusbarGatherer(), new JointGatherer(),
        new CellsGatherer(), new BmsGatherer(), new SwitchGatherer(), new RelayGatherer(), new ShuntGatherer(), new MeterGatherer(),
        new DiodeGatherer(), new ResistorGatherer(), new ConverterGatherer(), new InverterGatherer(), new PortGatherer(),
        new LoadGatherer(), new ChargerGatherer(), new VehicleGatherer(), new PanelGatherer(),
    ];

    /// <summary>By the kind of part they gather for.</summary>
    internal static IReadOnlyDictionary<Type, IGatherer> ByType { get; } = All.ToDictionary(g => g.PartType);
}
