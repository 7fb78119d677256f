namespace WireCheck.Description;

/// <summary>How a box is placed while it works.</summary>
public enum EnclosurePlacing
{
    /// <summary>On its bottom, free all around.</summary>
    Standing,

    /// <summary>Carried by its handle or hung up: free on all six faces.</summary>
    Hanging,

    /// <summary>On its bottom, with its largest side strapped to something: a rack, a trolley, a wall.</summary>
    Strapped,

    /// <summary>Worn with its largest side against a body.</summary>
    AgainstBody,

    /// <summary>In a closed bag or case that stands on its bottom.</summary>
    InBag,
}
