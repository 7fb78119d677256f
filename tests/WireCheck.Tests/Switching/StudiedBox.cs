using WireCheck.Circuit.Wiring;
using WireCheck.Description;
using WireCheck.Knowledge;
using WireCheck.Switching;

namespace WireCheck.Tests.Switching;

/// <summary>Reads a description and studies its switches.</summary>
internal static class StudiedBox
{
    internal static WiringData Data { get; } = new(Library.Embedded);

    internal static Pack Read(string text)
    {
        ReadResult result = PackReader.Read("box.yaml", text, LibraryClasses.Embedded);
        result.Problems.Select(p => p.ToString()).ShouldBeEmpty();
        return result.Pack.ShouldNotBeNull();
    }

    internal static SwitchingStudy Of(string text) => SwitchingStudy.Of(Read(text), Data);

    internal static string Example(string name) => File.ReadAllText(Path.Combine(Golden.Root, "examples", name + ".yaml"));
}
