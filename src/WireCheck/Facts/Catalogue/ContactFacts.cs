namespace WireCheck.Facts.Catalogue;

/// <summary>Facts about the contact of a switch or a relay.</summary>
public sealed class ContactFacts : FactGroup
{
    private ContactFacts(string kind)
        : base(kind)
    {
        Current = Worst("current", "A", "Largest steady current through its contact (of a relay: from 30 to 87).");
        RatedCurrent = Number("rated_current", "A", "Continuous current its contact is rated for.");
        RatedVoltage = Number("rated_voltage", "V", "Highest direct voltage its contact may open; absent when only an alternating voltage is printed.");
        AcOnly = YesNo("ac_only", "Only an alternating voltage is printed on it.");
        OpenVoltage = Worst("open_voltage", "V", "Highest voltage its contact can have across it when it has opened.");
        OpeningCurrent = Worst("opening_current", "A", "Largest current its contact carries in a state that one switch can end by opening it.");
        BreakCurrent = Number("break_current", "A", "Direct current it may open at its rated voltage; absent when the maker gives none.");
        NominalVoltage = Number("nominal_voltage", "V", "Nominal voltage of the bank behind it.");
    }

    public Fact Current { get; }

    public Fact RatedCurrent { get; }

    public Fact RatedVoltage { get; }

    public Fact AcOnly { get; }

    public Fact OpenVoltage { get; }

    public Fact OpeningCurrent { get; }

    public Fact BreakCurrent { get; }

    public Fact NominalVoltage { get; }

    public static ContactFacts Switch { get; } = new("switch");

    public static ContactFacts Relay { get; } = new("relay");
}
