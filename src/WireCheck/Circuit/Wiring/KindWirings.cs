using WireCheck.Description;

namespace WireCheck.Circuit.Wiring;

/// <summary>The list of kinds that can be wired; a test holds it complete.</summary>
public static class KindWirings
{
    /// <summary>One wiring for each kind of part.</summary>
    public static IReadOnlyList<IKindWiring> All { get; } =
    [
        new CellsWiring(), new BmsWiring(), new FuseWiring(), new SwitchWiring(), new RelayWiring(), new ShuntWiring(),
        new MeterWiring(), new DiodeWiring(), new ResistorWiring(), new BusbarWiring(), new ConverterWiring(),
        new InverterWiring(), new PortWiring(), new LoadWiring(), new ChargerWiring(), new VehicleWiring(),
        new PanelWiring(), new JointWiring(), new ConductorWiring(),
    ];

    private static readonly Dictionary<Type, IKindWiring> ByType = All.ToDictionary(w => w.PartType);

    /// <summary>The wiring of a part's kind.</summary>
    public static IKindWiring For(Part part) => ByType[part.GetType()];
}
