using WireCheck.Text;

namespace WireCheck.Description.Reader;

/// <summary>What all readers of one file share.</summary>
/// <param name="Problems">Where to note what is wrong.</param>
/// <param name="Classes">The parts library.</param>
/// <param name="References">References to resolve when all parts are read.</param>
internal sealed record ReadContext(ProblemList Problems, IPartClasses Classes, ReferenceList References)
{
    /// <summary>Nothing is read: every reader is walked with nothing in it, to learn which keys it knows.</summary>
    internal bool Recording { get; init; }

    /// <summary>The same, with problems and references thrown away: for a mapping whose absence is already told.</summary>
    internal ReadContext Muted() => this with { Problems = new ProblemList(), References = new ReferenceList() };
}

/// <summary>One of the mappings that lie over each other to make a part.</summary>
/// <param name="Map">The mapping.</param>
/// <param name="Origin">Whether its values count as written or assumed.</param>
/// <param name="Subject">What messages call it: the part's id, its class or the defaults.</param>
internal sealed record Layer(YamlMap Map, Origin Origin, string Subject);

/// <summary>The class that a part names.</summary>
/// <param name="Name">Its name, or null when none is named.</param>
/// <param name="Found">False when the class, or one that it names in turn, cannot be found.</param>
internal sealed record ClassUse(string? Name, bool Found);
