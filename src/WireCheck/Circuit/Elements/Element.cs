namespace WireCheck.Circuit.Elements;

/// <summary>
/// Something between two nodes. Its current is a function of the voltage of node A above node B; positive current
/// flows into the element at A and out at B, so a positive product of the two is power taken.
/// </summary>
public abstract class Element(string name, int a, int b)
{
    /// <summary>Name for messages.</summary>
    public string Name { get; } = name;

    public int A { get; } = a;

    public int B { get; } = b;

    /// <summary>Number in its network, set when it is added.</summary>
    public int Index { get; internal set; } = -1;

    /// <summary>
    /// True when the element joins its ends so firmly that both lie in one island: resistances, closed contacts,
    /// connected sources. What conducts only at some voltages does not.
    /// </summary>
    public virtual bool Ties => false;

    /// <summary>
    /// True unless the element is open or unplugged. Across such elements a voltage has a meaning, even where they
    /// hardly conduct, as a diode in reverse.
    /// </summary>
    public virtual bool Reaches => true;

    /// <summary>True when the current is a straight line over the voltage.</summary>
    public virtual bool IsLinear => false;

    /// <summary>Current at a voltage, A, and its slope there, S.</summary>
    public abstract double Current(double volts, out double slope);

    /// <summary>
    /// The same for a voltage in two parts, whose sum it is. A source overrides it: the difference to its own voltage
    /// is far smaller than either, and rounding the sum first would lose it.
    /// </summary>
    public virtual double CurrentInTwoParts(double volts, double rest, out double slope) => Current(volts + rest, out slope);
}
