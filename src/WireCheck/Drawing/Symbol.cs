namespace WireCheck.Drawing;

/// <summary>What a symbol looks like; the shapes are those of IEC 60617 where it has one.</summary>
public enum SymbolShape
{
    Cells,
    Bms,
    Fuse,
    Breaker,
    Switch,
    PushButton,
    Contact,
    RestContact,
    Coil,
    Shunt,
    Meter,
    Diode,
    Resistor,
    Converter,
    Inverter,
    Port,
    Load,
    Charger,
    Panel,
    Vehicle,
}

/// <summary>A terminal of a symbol.</summary>
/// <param name="Name">Name of the terminal: <c>87</c>, <c>in+</c>.</param>
/// <param name="Node">The node it lies on.</param>
public sealed record SymbolPin(string Name, string Node);

/// <summary>One line of words beside a symbol or a wire.</summary>
/// <param name="Words">The words as they come from the description; whoever writes them escapes them.</param>
/// <param name="Part">The part that the line introduces, or null for a line that says more of the same.</param>
public sealed record Caption(string Words, string? Part = null);

/// <summary>A part on the sheet, or one pole, contact or coil of it, drawn between two pins.</summary>
/// <param name="Part">Id of the part.</param>
/// <param name="Shape">What it looks like.</param>
/// <param name="Captions">What stands beside it, first its id.</param>
/// <param name="Top">The pin towards the positive rail.</param>
/// <param name="Bottom">The pin towards the negative rail.</param>
/// <param name="Sides">Other pins that a wire ends on.</param>
/// <param name="Passes">Current goes on behind it on the same side of the box, as behind a fuse; a load ends the branch.</param>
public sealed record Symbol(
    string Part,
    SymbolShape Shape,
    IReadOnlyList<Caption> Captions,
    SymbolPin Top,
    SymbolPin Bottom,
    IReadOnlyList<SymbolPin> Sides,
    bool Passes);

/// <summary>A conductor leg, or a joint without a conductor.</summary>
/// <param name="Id">Its id.</param>
/// <param name="From">Node at one end.</param>
/// <param name="To">Node at the other end.</param>
/// <param name="Captions">What stands beside it: size, length, joint.</param>
/// <param name="IsJoint">A joint, drawn as a dot on the line.</param>
public sealed record DrawnWire(string Id, string From, string To, IReadOnlyList<Caption> Captions, bool IsJoint)
{
    /// <summary>The node at the other end.</summary>
    public string Other(string node) => node == From ? To : From;
}

/// <summary>A busbar: one node with a name.</summary>
/// <param name="Part">Its id, which is also its node.</param>
/// <param name="Captions">What stands beside it.</param>
public sealed record DrawnBar(string Part, IReadOnlyList<Caption> Captions);
