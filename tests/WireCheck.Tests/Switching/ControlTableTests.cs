using System.Globalization;
using System.Text;
using WireCheck.Reports.Numbers;
using WireCheck.Switching;

namespace WireCheck.Tests.Switching;

/// <summary>The control tables of the four examples: each whole as a golden file, and what matters most line by line.</summary>
public sealed class ControlTableTests
{
    [Theory]
    [InlineData("market-stall-12v")]
    [InlineData("first-draft-12v")]
    [InlineData("pump-house-24v")]
    [InlineData("bicycle-workshop-48v")]
    public void The_control_table_of_an_example_stands_line_by_line(string name)
    {
        SwitchingStudy study = StudiedBox.Of(StudiedBox.Example(name));
        using StringWriter words = new(CultureInfo.InvariantCulture);
        StatesText.Write(words, name, study);
        Golden.ShouldMatch(words.ToString(), $"Switching/Golden/{name}.txt");
        using MemoryStream json = new();
        StatesJson.Write(json, name + ".yaml", name, study);
        Golden.ShouldMatch(Encoding.UTF8.GetString(json.ToArray()), $"Switching/Golden/{name}.json");
    }
}
