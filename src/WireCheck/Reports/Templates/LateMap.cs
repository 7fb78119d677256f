using Scriban;
using Scriban.Parsing;
using Scriban.Runtime;

namespace WireCheck.Reports.Templates;

/// <summary>
/// A map of which some entries are made when a template first asks for them: what the studies computed takes longer
/// than the check itself, and the short text shows none of it.
/// </summary>
internal sealed class LateMap : ScriptObject
{
    private readonly Dictionary<string, Func<object?>> _late = new(StringComparer.Ordinal);

    /// <summary>A map with these late entries; the others are set as in any map.</summary>
    internal LateMap(params (string Name, Func<object?> Make)[] entries)
    {
        foreach ((string name, Func<object?> make) in entries)
        {
            _late.Add(name, make);
            SetValue(name, null, false);
        }
    }

    public override bool TryGetValue(TemplateContext? context, SourceSpan span, string member, out object? value)
    {
        if (_late.Remove(member, out Func<object?>? make))
        {
            SetValue(member, make(), true);
        }

        return base.TryGetValue(context, span, member, out value);
    }
}
