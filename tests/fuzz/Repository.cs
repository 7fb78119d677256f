namespace WireCheck.Fuzz;

/// <summary>The checkout the seeds are taken from.</summary>
internal static class Repository
{
    /// <summary>The folder that holds the solution, above the program or the working folder.</summary>
    internal static string Root { get; } = Find(AppContext.BaseDirectory) ?? Find(Environment.CurrentDirectory)
        ?? throw new InvalidOperationException("the solution was not found above this program");

    private static string? Find(string from)
    {
        for (DirectoryInfo? folder = new(from); folder is not null; folder = folder.Parent)
        {
            if (File.Exists(Path.Combine(folder.FullName, "WireCheck.sln")))
            {
                return folder.FullName;
            }
        }

        return null;
    }
}
