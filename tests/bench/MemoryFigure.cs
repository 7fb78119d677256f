using System.Globalization;

namespace WireCheck.Bench;

/// <summary>What a warm check of each example allocates, as times the text it reads.</summary>
internal static class MemoryFigure
{
    internal static void Print()
    {
        foreach (string file in Directory.EnumerateFiles(Path.Combine(Repository.Root, "examples"), "*.yaml").Order(StringComparer.Ordinal))
        {
            string text = File.ReadAllText(file);
            CheckOptions options = new(Path.GetDirectoryName(file), new DateOnly(2027, 1, 1));
            PackCheck.Standard.Check(file, text, options);
            long before = GC.GetTotalAllocatedBytes(precise: true);
            PackCheck.Standard.Check(file, text, options);
            long taken = GC.GetTotalAllocatedBytes(precise: true) - before;
            long kept = GC.GetTotalMemory(forceFullCollection: true);
            Console.WriteLine(string.Create(CultureInfo.InvariantCulture,
                $"{Path.GetFileName(file)}: a warm check allocates {taken / 1e6:0.0} MB, {taken / (double)text.Length:0} times its text; {kept / 1e6:0} MB are kept by the process"));
        }
    }
}
