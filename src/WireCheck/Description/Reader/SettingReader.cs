using WireCheck.Text;

namespace WireCheck.Description.Reader;

/// <summary>Reads an overridden threshold: <c>3 %</c>, or <c>{value: 3 %, because: the runs are long}</c>.</summary>
internal static class SettingReader
{
    private const string Value = "value";
    private const string Because = "because";

    /// <summary>The threshold as written; null when there is none.</summary>
    internal static YamlScalar? ValueOf(YamlNode node) => Filled(node is YamlMap map ? map.Find(Value) : node);

    /// <summary>The reason; null when none is given.</summary>
    internal static string? ReasonOf(YamlNode node) => Filled((node as YamlMap)?.Find(Because))?.Text.Trim();

    /// <summary>A mapping holds both and nothing else: a reason is what it is written for.</summary>
    internal static void NoteOtherKeys(YamlEntry setting, ProblemList problems)
    {
        if (setting.Value is not YamlMap map)
        {
            return;
        }

        foreach (YamlEntry entry in map.Entries)
        {
            if (entry.Key.Text is not (Value or Because))
            {
                problems.Add(entry.Key.Position, InputMessages.SettingKey(setting.Key.Text, entry.Key.Text));
            }
        }

        if (ReasonOf(map) is null)
        {
            problems.Add(map.Position, InputMessages.SettingNeedsReason(setting.Key.Text));
        }
    }

    private static YamlScalar? Filled(YamlNode? node) => node is YamlScalar { IsEmpty: false } scalar ? scalar : null;
}
