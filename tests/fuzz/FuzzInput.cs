namespace WireCheck.Fuzz;

/// <summary>What one run of <c>check</c> is given: files in an empty folder and a command line.</summary>
/// <param name="Number">Its place in the row of inputs of a seed.</param>
/// <param name="Files">Name of each file and its bytes.</param>
/// <param name="Arguments">What follows <c>check</c>; paths are those of <paramref name="Files"/>.</param>
internal sealed record FuzzInput(int Number, IReadOnlyDictionary<string, byte[]> Files, IReadOnlyList<string> Arguments)
{
    /// <summary>Writes the files into a folder, and beside them the command line.</summary>
    internal void WriteTo(string folder)
    {
        Directory.CreateDirectory(folder);
        foreach ((string name, byte[] bytes) in Files)
        {
            File.WriteAllBytes(Path.Combine(folder, name), bytes);
        }

        File.WriteAllText(Path.Combine(folder, "command.txt"), $"check {string.Join(' ', Arguments)}\n");
    }
}
