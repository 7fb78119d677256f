namespace WireCheck.Facts;

/// <summary>What a fact's value is.</summary>
public enum FactType
{
    /// <summary>A number in the fact's SI unit.</summary>
    Number,

    /// <summary>A word or a name.</summary>
    Word,

    /// <summary>Yes or no.</summary>
    YesNo,

    /// <summary>Names in order, such as the chain of parts a current flows through.</summary>
    Names,
}

/// <summary>
/// The definition of a fact: something known about one part, under a name that rules use as <c>it.name</c>.
/// </summary>
/// <param name="Kind">Kind of part it is about, as <see cref="Description.Part.Kind"/>, or "pack".</param>
/// <param name="Name">snake_case name.</param>
/// <param name="Type">What its value is.</param>
/// <param name="Unit">SI unit symbol of a number ("A", "V", "Ω", "m", "m²", "°C", "W", "s", "" for a pure number).</param>
/// <param name="Sentence">What it is, in one sentence.</param>
public sealed record Fact(string Kind, string Name, FactType Type, string Unit, string Sentence)
{
    /// <summary>True when each value comes from a mode and corner, so that <c>name_mode</c> and <c>name_corner</c> exist beside it.</summary>
    public bool HasPlace { get; init; }

    /// <summary>A number of the description or the library, the same in every state.</summary>
    public static Fact Number(string kind, string name, string unit, string sentence) =>
        new(kind, name, FactType.Number, unit, sentence);

    /// <summary>The worst of a number over the states; comes with its mode and corner.</summary>
    public static Fact Worst(string kind, string name, string unit, string sentence) =>
        new(kind, name, FactType.Number, unit, sentence) { HasPlace = true };

    public static Fact Word(string kind, string name, string sentence) =>
        new(kind, name, FactType.Word, "", sentence);

    public static Fact YesNo(string kind, string name, string sentence) =>
        new(kind, name, FactType.YesNo, "", sentence);

    public static Fact Names(string kind, string name, string sentence) =>
        new(kind, name, FactType.Names, "", sentence);
}
