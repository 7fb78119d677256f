namespace WireCheck.Switching;

/// <summary>What a sneak path does.</summary>
public enum SneakKind
{
    /// <summary>A relay stays in because its own contact feeds its coil.</summary>
    HeldByOwnContact,

    /// <summary>A coil gets more than its release voltage through a lamp, a load or another coil.</summary>
    CoilFedThroughConsumer,

    /// <summary>A relay has two ends for another reason: relays that hold each other, or a coil between operate and release.</summary>
    TwoStates,

    /// <summary>A relay never comes to rest.</summary>
    Chatter,

    /// <summary>Something that should be dead is live through a lamp, a load or a coil.</summary>
    LiveThroughConsumer,

    /// <summary>Something is live through a resistor that lies across an open contact.</summary>
    ResistorAcrossContact,

    /// <summary>Something is fed by way of a link outside the box.</summary>
    FedByOutsideLink,

    /// <summary>With the BMS open, current goes on flowing round it, inside the box.</summary>
    RoundBms,

    /// <summary>With the BMS open, current goes on flowing round it by a link outside the box.</summary>
    RoundBmsByOutsideLink,

    /// <summary>Current that no shunt counts.</summary>
    RoundShunt,

    /// <summary>A source feeds another through the box.</summary>
    SourceIntoSource,
}

/// <summary>One sneak path, told as the loop it takes.</summary>
/// <param name="Kind">What it does.</param>
/// <param name="PartId">The part it concerns: the relay, the part that is live, the source that is fed.</param>
/// <param name="Plugs">What is plugged.</param>
/// <param name="Closed">Switches that are closed; the state of fewest closed switches in which it was found.</param>
/// <param name="Loop">Parts, conductors and outside links in the order of the current, from the source round to it.</param>
/// <param name="By">What makes it a sneak path: the lamp, the resistor, the link, the own contact; empty where nothing can be named.</param>
public sealed record SneakPath(
    SneakKind Kind, string PartId, string Plugs, IReadOnlyList<string> Closed, IReadOnlyList<string> Loop, IReadOnlyList<string> By)
{
    /// <summary>Volts across the coil or the burdened poles; amperes into a source that is fed.</summary>
    public double Size { get; init; }

    /// <summary>In no state is it fed any other way: it lies in series with what it is fed through.</summary>
    public bool InSeries { get; init; }

    /// <summary>The path ends by itself: a relay in it drops out once the BMS is open.</summary>
    public bool DropsOut { get; init; }

    /// <summary>The state in words: what is closed, what is plugged.</summary>
    public string When => (Closed.Count == 0 ? "with all switches open" : "with " + string.Join(", ", Closed) + " closed")
        + (Plugs == PlugCase.Unplugged ? "" : ", " + Plugs);
}
