using WireCheck.Circuit.Elements;
using WireCheck.Description.Kinds;

namespace WireCheck.Circuit.Wiring;

/// <summary>A BMS: one contact per path and its own consumption.</summary>
public sealed class WiredBms : WiredPart
{
    internal WiredBms(Bms bms, Contact path, Contact? chargePath, ConstantCurrentSink? standby)
        : base(bms)
    {
        Bms = bms;
        Path = path;
        ChargePath = chargePath;
        Standby = standby;
    }

    public Bms Bms { get; }

    /// <summary>
    /// Between the cell side and the pack side; positive current flows from the cell side to the pack side.
    /// On the low side a discharge is therefore negative, on the high side positive.
    /// </summary>
    public Contact Path { get; }

    /// <summary>The charge path of a separate-port BMS, from the cell side to the charge terminal.</summary>
    public Contact? ChargePath { get; }

    /// <summary>What it draws from the cells; null when it has no reference to draw to.</summary>
    public ConstantCurrentSink? Standby { get; }

    /// <summary>Discharge current through the pack terminal, A; negative while it charges.</summary>
    public double DischargeSign => Bms.Side.Value == BmsSide.Low ? -1 : 1;

    public override IEnumerable<Element> Elements =>
        [Path, .. ChargePath is null ? Array.Empty<Element>() : [ChargePath], .. Standby is null ? Array.Empty<Element>() : [Standby]];

    /// <summary>Opens or closes every path.</summary>
    public void SetConducting(bool conducts)
    {
        Path.Closed = conducts;
        if (ChargePath is not null)
        {
            ChargePath.Closed = conducts;
        }
    }
}

/// <summary>How a BMS becomes elements.</summary>
public sealed class BmsWiring : KindWiring<Bms>
{
    public override WiredPart AddElements(Bms part, WiringBuilder builder)
    {
        bool low = part.Side.Value == BmsSide.Low;
        int cellSide = builder.Node(part.Id, low ? "B-" : "B+");
        Contact path = new(part.Id, cellSide, builder.Node(part.Id, low ? "P-" : "P+"), part.OnResistance.Value.Ohms)
        {
            Closed = true,
        };
        builder.Add(path);
        Contact? charge = null;
        if (part.Port.Value == BmsPort.Separate)
        {
            double ohms = (part.ChargeOnResistance ?? part.OnResistance).Value.Ohms;
            charge = builder.Add(new Contact(
                part.Id + ".charge", cellSide, builder.Node(part.Id, low ? "C-" : "C+"), ohms) { Closed = true });
        }

        return new WiredBms(part, path, charge, AddStandby(part, builder, low, cellSide));
    }

    /// <summary>
    /// A low-side BMS draws from its top sense lead, or from the bank's + where none is drawn, to B-. A
    /// high-side one draws from B+ to s0, or to the bank's - where none is drawn.
    /// </summary>
    private static ConstantCurrentSink? AddStandby(Bms part, WiringBuilder builder, bool low, int cellSide)
    {
        string sense = low ? FormattableString.Invariant($"s{part.Series.Value}") : "s0";
        Cells? bank = builder.Pack.Of<Cells>().FirstOrDefault();
        int? far = TerminalReferences.IsWired(builder.Pack, part.Id, sense) ? builder.Node(part.Id, sense)
            : bank is null ? null
            : builder.Node(bank.Id, low ? "+" : "-");
        if (far is null || part.Standby.Value.Amperes <= 0)
        {
            return null;
        }

        double amps = part.Standby.Value.Amperes;
        string name = part.Id + ".standby";
        return builder.Add(low
            ? new ConstantCurrentSink(name, far.Value, cellSide, amps)
            : new ConstantCurrentSink(name, cellSide, far.Value, amps));
    }
}
