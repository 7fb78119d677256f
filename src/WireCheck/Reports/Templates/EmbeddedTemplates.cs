namespace WireCheck.Reports.Templates;

/// <summary>The tool's own templates, which also lie as files beside the library.</summary>
internal static class EmbeddedTemplates
{
    /// <summary>The text of a template.</summary>
    internal static string Read(string name)
    {
        using Stream stored = typeof(EmbeddedTemplates).Assembly.GetManifestResourceStream($"templates/{name}")
            ?? throw new InvalidOperationException($"the library has no template '{name}'");
        using StreamReader reader = new(stored);
        return reader.ReadToEnd();
    }
}
