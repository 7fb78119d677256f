namespace WireCheck.Facts.Catalogue;

/// <summary>What every part has: whether its terminals are wired.</summary>
public sealed class ConnectionFacts : FactGroup
{
    private ConnectionFacts(string kind)
        : base(kind)
    {
        Connected = YesNo("connected", "At least one of its terminals is reached by a conductor, a joint, a plug or another part.");
        UnconnectedTerminals = Names(
            "unconnected_terminals",
            "Terminals that nothing reaches although at least one other terminal of the part is reached; cell taps, sense leads told in short, an enable input, a lamp return and unused contacts are left out.");
        UnusedContacts = Names(
            "unused_contacts",
            "Terminals of a second pole, or the rest contact 87a of a change-over relay, that nothing reaches.");
    }

    public Fact Connected { get; }

    public Fact UnconnectedTerminals { get; }

    public Fact UnusedContacts { get; }

    public static ConnectionFacts Cells { get; } = new("cells");

    public static ConnectionFacts Bms { get; } = new("bms");

    public static ConnectionFacts Fuse { get; } = new("fuse");

    public static ConnectionFacts Breaker { get; } = new("breaker");

    public static ConnectionFacts Switch { get; } = new("switch");

    public static ConnectionFacts Relay { get; } = new("relay");

    public static ConnectionFacts Shunt { get; } = new("shunt");

    public static ConnectionFacts Meter { get; } = new("meter");

    public static ConnectionFacts Diode { get; } = new("diode");

    public static ConnectionFacts Resistor { get; } = new("resistor");

    public static ConnectionFacts Busbar { get; } = new("busbar");

    public static ConnectionFacts Converter { get; } = new("converter");

    public static ConnectionFacts Inverter { get; } = new("inverter");

    public static ConnectionFacts Port { get; } = new("port");

    public static ConnectionFacts Load { get; } = new("load");

    public static ConnectionFacts Charger { get; } = new("charger");

    public static ConnectionFacts Vehicle { get; } = new("vehicle");

    public static ConnectionFacts Panel { get; } = new("panel");

    /// <summary>The group for a kind; null for kinds without terminals of their own.</summary>
    public static ConnectionFacts? Of(string kind) => ByKind.GetValueOrDefault(kind);

    private static readonly Dictionary<string, ConnectionFacts> ByKind = new ConnectionFacts[]
    {
        Cells, Bms, Fuse, Breaker, Switch, Relay, Shunt, Meter, Diode, Resistor, Busbar,
        Converter, Inverter, Port, Load, Charger, Vehicle, Panel,
    }.ToDictionary(g => g.Kind, StringComparer.Ordinal);
}
