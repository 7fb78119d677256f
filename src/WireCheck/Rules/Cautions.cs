using WireCheck.Text;

namespace WireCheck.Rules;

/// <summary>The cautions of the trade that every report ends with, from <c>rules/cautions.yaml</c>.</summary>
public static class Cautions
{
    /// <summary>One caution per item, in the order of the file.</summary>
    public static IReadOnlyList<string> Read()
    {
        const string Name = "rules/cautions.yaml";
        using Stream stream = typeof(Cautions).Assembly.GetManifestResourceStream(Name)
            ?? throw new InvalidOperationException($"{Name} is not built in");
        using StreamReader reader = new(stream);
        YamlNode? root = YamlReader.Read(Name, reader.ReadToEnd(), RuleSetReader.Limits, new ProblemList());
        return root is YamlList list
            ? [.. list.Items.OfType<YamlScalar>().Select(item => item.Text)]
            : throw new InvalidOperationException($"{Name} must be a list");
    }
}
