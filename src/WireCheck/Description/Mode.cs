using UnitsNet;
using WireCheck.Text;

namespace WireCheck.Description;

/// <summary>A state the box is used in: which switches are closed, what is plugged and what is drawn.</summary>
public sealed class Mode
{
    public required string Id { get; init; }

    public required Position Position { get; init; }

    /// <summary>Ids of closed switches; all others are open.</summary>
    public IReadOnlyList<Given<string>> Closed { get; init; } = [];

    /// <summary>Ids of chargers, vehicles and panels that are plugged in. Loads are plugged where they draw.</summary>
    public IReadOnlyList<Given<string>> Plugged { get; init; } = [];

    /// <summary>Power each named load, converter or inverter delivers; loads not named draw their standby.</summary>
    public IReadOnlyList<ModeDraw> Draws { get; init; } = [];

    /// <summary>How long it lasts each time; null when it is not part of the day.</summary>
    public Given<Duration>? For { get; init; }
}

/// <summary>What a part uses in a mode.</summary>
/// <param name="PartId">Id of a load, converter or inverter.</param>
/// <param name="Power">Power used (of a converter or inverter: at its output).</param>
public sealed record ModeDraw(Given<string> PartId, Given<Power> Power);
