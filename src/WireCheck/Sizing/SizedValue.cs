namespace WireCheck.Sizing;

/// <summary>A value of the description that sizing may choose: where it stands and what it may be.</summary>
public sealed class SizedValue
{
    /// <summary>Section of the description, such as <c>conductors</c>.</summary>
    public required string Section { get; init; }

    /// <summary>Id of the part as the file writes it; a daisy chain of wire has one for all its legs.</summary>
    public required string Id { get; init; }

    /// <summary>Kind of part in the singular.</summary>
    public required string Kind { get; init; }

    /// <summary>Keys that lead to the value inside the part: <c>size</c>, <c>rating</c>, <c>part</c>, or <c>holder</c> and <c>rating</c>.</summary>
    public required IReadOnlyList<string> Keys { get; init; }

    /// <summary>Ids under which findings name the part.</summary>
    public required IReadOnlyList<string> PartIds { get; init; }

    /// <summary>What it may be, smallest first; never empty.</summary>
    public required IReadOnlyList<SizeOption> Options { get; init; }

    /// <summary>The value that stands now, as the tool writes it.</summary>
    public required string Written { get; init; }

    /// <summary>Metal in m³ of what stands now.</summary>
    public double WrittenMetal { get; init; }

    /// <summary>Price of what stands now; null when none is given.</summary>
    public double? WrittenPrice { get; init; }

    /// <summary>Smallest option that may be chosen; more than 0 for a part that may only grow.</summary>
    public int Lowest { get; init; }

    /// <summary>Why it may only grow; null when it may shrink too.</summary>
    public string? OnlyGrows { get; init; }

    /// <summary>Option to begin with: what bears the current alone.</summary>
    public int Start { get; init; }

    /// <summary>Where it stands, in the words of messages: <c>size of w1</c>.</summary>
    public string Words => $"{string.Join(' ', Keys)} of {Id}";

    /// <summary>True for wire.</summary>
    public bool IsWire => Kind == "conductor";

    /// <summary>Place of what stands now among the options; -1 when it may not be chosen.</summary>
    public int WrittenIndex
    {
        get
        {
            for (int i = 0; i < Options.Count; i++)
            {
                if (Options[i].Text == Written)
                {
                    return i;
                }
            }

            return -1;
        }
    }
}
