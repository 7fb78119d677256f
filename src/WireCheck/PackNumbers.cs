using WireCheck.Circuit.Wiring;
using WireCheck.Description;
using WireCheck.Knowledge;
using WireCheck.States;
using WireCheck.Text;

namespace WireCheck;

/// <summary>The other front door: text in, a solved box out, nothing judged.</summary>
public static class PackNumbers
{
    /// <summary>Reads and solves a description; null with its problems when it is wrong.</summary>
    /// <param name="file">Name of the file as messages print it.</param>
    /// <param name="text">Its text.</param>
    public static (SolvedBox? Box, IReadOnlyList<Problem> Problems) Solve(string file, string text)
    {
        ReadResult description = PackReader.Read(file, text, LibraryClasses.Embedded);
        return description.Pack is { } pack
            ? (SolvedBox.Solve(pack, new WiringData(Library.Embedded)), [])
            : (null, description.Problems);
    }
}
