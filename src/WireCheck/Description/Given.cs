using WireCheck.Text;

namespace WireCheck.Description;

/// <summary>Where a value of the description came from.</summary>
public enum Origin
{
    /// <summary>Written at the part itself or under <c>defaults</c>.</summary>
    Written,

    /// <summary>Left out by the builder and taken from the part class: told as assumed where it decides a finding.</summary>
    PartClass,
}

/// <summary>A value that knows where it stands and whether it was written or taken from a part class.</summary>
/// <typeparam name="T">The value's type: a UnitsNet quantity, a range, a word.</typeparam>
/// <param name="Value">The value.</param>
/// <param name="Position">Its place, in the description or in the parts library.</param>
/// <param name="Origin">Written or assumed.</param>
public sealed record Given<T>(T Value, Position Position, Origin Origin)
{
    /// <summary>True when the builder did not write it.</summary>
    public bool Assumed => Origin != Origin.Written;
}
