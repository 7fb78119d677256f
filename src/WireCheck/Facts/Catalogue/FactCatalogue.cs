using System.Diagnostics.CodeAnalysis;
using System.Reflection;

namespace WireCheck.Facts.Catalogue;

/// <summary>
/// Every fact there is. It finds them by looking at the types of this folder and the one above: public static fields of type
/// <see cref="Fact"/>, and public static properties that hold a <see cref="FactGroup"/>.
/// </summary>
public static class FactCatalogue
{
    /// <summary>The kind under which facts about the whole box stand.</summary>
    public const string PackKind = "pack";

    /// <summary>The kind of a stud or clamp on which several conductors meet; its id is <c>bank.+</c> or <c>plus.1</c>.</summary>
    public const string TerminalKind = "terminal";

    private const string WholeAssembly = "The program keeps this assembly whole when it is compiled to machine code.";

    /// <summary>All facts, by kind and then by name.</summary>
    public static IReadOnlyList<Fact> All { get; } = Collect();

    /// <summary>All kinds that have facts, in alphabetical order.</summary>
    public static IReadOnlyList<string> Kinds { get; } = [.. All.Select(f => f.Kind).Distinct(StringComparer.Ordinal)];

    /// <summary>The facts of one kind by name; empty when there is no such kind.</summary>
    public static IReadOnlyList<Fact> For(string kind) => [.. All.Where(f => f.Kind == kind)];

    [UnconditionalSuppressMessage("Trimming", "IL2026", Justification = WholeAssembly)]
    [UnconditionalSuppressMessage("Trimming", "IL2070", Justification = WholeAssembly)]
    private static IReadOnlyList<Fact> Collect()
    {
        Type[] types = [.. typeof(FactCatalogue).Assembly.GetTypes()
            .Where(t => t.Namespace is "WireCheck.Facts" or "WireCheck.Facts.Catalogue" && t != typeof(FactCatalogue))];

        IEnumerable<Fact> single = types
            .SelectMany(t => t.GetFields(BindingFlags.Public | BindingFlags.Static))
            .Where(f => f.FieldType == typeof(Fact))
            .Select(f => (Fact)f.GetValue(null)!);

        IEnumerable<Fact> shared = types
            .SelectMany(t => t.GetProperties(BindingFlags.Public | BindingFlags.Static))
            .Where(p => p.PropertyType.IsAssignableTo(typeof(FactGroup)))
            .SelectMany(p => ((FactGroup)p.GetValue(null)!).Facts);

        return [.. single.Concat(shared)
            .OrderBy(f => f.Kind, StringComparer.Ordinal)
            .ThenBy(f => f.Name, StringComparer.Ordinal)];
    }
}
