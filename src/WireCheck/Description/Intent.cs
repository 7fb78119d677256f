using UnitsNet;
using WireCheck.Text;

namespace WireCheck.Description;

/// <summary>What the builder means a load's current to pass through, and the drop allowed.</summary>
public sealed class PathIntent
{
    /// <summary>Id of the load.</summary>
    public required string LoadId { get; init; }

    public required Position Position { get; init; }

    /// <summary>Ids of parts the whole current must pass.</summary>
    public IReadOnlyList<Given<string>> Through { get; init; } = [];

    /// <summary>Allowed drop from the bank to the load, both poles; null takes the rule set's.</summary>
    public Given<Ratio>? Drop { get; init; }
}

/// <summary>A finding the builder accepts, with the reason.</summary>
public sealed class Waiver
{
    public required Position Position { get; init; }

    public required Given<string> Rule { get; init; }

    /// <summary>Id of the part it is accepted for; null means every part.</summary>
    public Given<string>? Part { get; init; }

    public required Given<string> Because { get; init; }

    /// <summary>Last day it holds; null means always.</summary>
    public Given<DateOnly>? Until { get; init; }
}

/// <summary>A reading from the bench.</summary>
public sealed class Reading
{
    public required Position Position { get; init; }

    public required Given<string> Mode { get; init; }

    /// <summary>The two terminals a voltage was read between; empty for a current.</summary>
    public IReadOnlyList<TerminalReference> Between { get; init; } = [];

    /// <summary>Id of the part a current was read through; null for a voltage.</summary>
    public Given<string>? Through { get; init; }

    public Given<ElectricPotential>? Volts { get; init; }

    public Given<ElectricCurrent>? Amps { get; init; }
}

/// <summary>Something outside the box that joins two of its nodes: a data lead's shield, a vehicle chassis.</summary>
public sealed class OutsideLink
{
    public required Position Position { get; init; }

    public required TerminalReference First { get; init; }

    public required TerminalReference Second { get; init; }

    /// <summary>What it is, in the builder's words.</summary>
    public required Given<string> What { get; init; }

    public required Given<ElectricResistance> Resistance { get; init; }
}
