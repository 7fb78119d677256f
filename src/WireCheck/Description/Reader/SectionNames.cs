namespace WireCheck.Description.Reader;

/// <summary>Names of sections that the reader treats in a way of their own.</summary>
internal static class SectionNames
{
    internal const string Breakers = "breakers";
    internal const string Conductors = "conductors";
}
