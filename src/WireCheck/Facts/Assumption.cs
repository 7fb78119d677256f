namespace WireCheck.Facts;

/// <summary>Something the description leaves out and a part class or a named assumption gave.</summary>
/// <param name="Words">What is assumed.</param>
/// <param name="BearsOn">Names of the facts of the same part that it decides.</param>
public sealed record Assumption(string Words, string[] BearsOn);
