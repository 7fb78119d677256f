namespace WireCheck.Reports.Text;

/// <summary>Colours of a terminal, never the only sign of anything.</summary>
internal static class SeverityColour
{
    /// <summary>The code for a severity or "passes"; none for anything else.</summary>
    internal static string Of(string severity) => severity switch
    {
        "danger" => "\e[1;31m",
        "fault" => "\e[1;33m",
        "advice" => "\e[1;36m",
        "passes" => "\e[1;32m",
        _ => "",
    };
}
