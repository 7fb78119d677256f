using WireCheck.Quantities;
using WireCheck.Text;

namespace WireCheck.Description.Reader;

/// <summary>Where a value stands and what it may be.</summary>
/// <param name="Subject">The part it belongs to, as messages name it.</param>
/// <param name="Key">Its key, with the keys above it: <c>coil.resistance</c>.</param>
/// <param name="Bounds">What a number may be, in SI units.</param>
/// <param name="Problems">Where to note what is wrong.</param>
internal sealed record ValueSite(string Subject, string Key, Bounds Bounds, ProblemList Problems);

/// <summary>Reads one type of value from a node of the file.</summary>
internal abstract class ValueReader<T>
{
    /// <summary>A value as a builder writes it.</summary>
    public abstract string Example { get; }

    /// <summary>What stands in for a value that is missing or wrong, so that reading goes on.</summary>
    public abstract T StandIn { get; }

    /// <summary>Reads a node; false, with a problem noted, when it holds no such value.</summary>
    public virtual bool TryRead(YamlNode node, ValueSite site, out T value)
    {
        value = StandIn;
        if (node is not YamlScalar scalar)
        {
            site.Problems.Add(node.Position, InputMessages.NotASingleValue(site.Subject, site.Key, node.InWords));
            return false;
        }

        if (scalar.Text.Trim().Length == 0 || scalar is { Quoted: false, Text: "~" or "null" })
        {
            site.Problems.Add(node.Position, InputMessages.EmptyText(site.Subject, site.Key));
            return false;
        }

        if (ReadText(scalar.Text, site, out value) is not string wrong)
        {
            return true;
        }

        value = StandIn;
        site.Problems.Add(node.Position, wrong);
        return false;
    }

    /// <summary>Reads the characters of a value; the message of what is wrong with them, or null.</summary>
    protected abstract string? ReadText(string text, ValueSite site, out T value);
}
