using System.Diagnostics;
using System.Globalization;
using WireCheck.Circuit.Solving;

namespace WireCheck.Bench;

/// <summary>Order, factor and solve of a bank's matrix, beside SuperLU on the same matrix in the same run.</summary>
internal static class FactorFigure
{
    internal static void Print()
    {
        BankMatrix small = BankMatrix.Of(Bank.Make(96, 74));
        double ours = Time(small, 5);
        double theirs = SuperLu(small, 5);
        Line($"bank 96 x 74, {small.Size} unknowns: {ours * 1e3:0.0} ms here, {theirs * 1e3:0.0} ms SuperLU, ratio {ours / theirs:0.00} (at most 2)");
        BankMatrix large = BankMatrix.Of(Bank.Make(384, 296));
        double longer = Time(large, 5);
        double mebibytes = Process.GetCurrentProcess().PeakWorkingSet64 / 1048576.0;
        Line($"bank 384 x 296, {large.Size} unknowns: {longer * 1e3:0} ms, {longer / ours:0.0} times as long for 16 times the cells (at most 50), peak {mebibytes:0} MiB (below 1024)");
    }

    private static double Time(BankMatrix matrix, int repeats)
    {
        double best = double.PositiveInfinity;
        for (int repeat = 0; repeat <= repeats; repeat++)
        {
            Stopwatch watch = Stopwatch.StartNew();
            SparsePattern pattern = SparsePattern.Of(matrix.Size, matrix.Pairs);
            double ordered = watch.Elapsed.TotalMilliseconds;
            double[] diagonal = new double[matrix.Size];
            double[] entries = new double[pattern.RowColumns.Length];
            for (int i = 0; i < matrix.Size; i++)
            {
                diagonal[pattern.Place[i]] = matrix.Diagonal[i];
            }

            for (int i = 0; i < matrix.Pairs.Count; i++)
            {
                entries[pattern.Entry(matrix.Pairs[i].Row, matrix.Pairs[i].Column)] -= matrix.Siemens[i];
            }

            SymmetricFactor factor = SymmetricFactor.For(pattern);
            double made = watch.Elapsed.TotalMilliseconds;
            factor.Factor(diagonal, entries);
            double factored = watch.Elapsed.TotalMilliseconds;
            double[] right = new double[matrix.Size];
            Array.Fill(right, 1);
            factor.Solve(right);
            double all = watch.Elapsed.TotalMilliseconds;
            best = Math.Min(best, watch.Elapsed.TotalSeconds);
            Line($"  pattern {ordered:0.0} ms, entries {made - ordered:0.0} ms, factor {factored - made:0.0} ms, solve {all - factored:0.0} ms");
        }

        return best;
    }

    private static double SuperLu(BankMatrix matrix, int repeats)
    {
        string file = Path.GetTempFileName();
        try
        {
            matrix.Write(file);
            ProcessStartInfo start = new("/usr/bin/python3") { RedirectStandardOutput = true };
            start.ArgumentList.Add(Path.Combine(AppContext.BaseDirectory, "superlu.py"));
            start.ArgumentList.Add(file);
            start.ArgumentList.Add(repeats.ToString(CultureInfo.InvariantCulture));

            // Tuned for another machine, these would slow the library down and flatter the ratio.
            start.Environment.Remove("OPENBLAS_CORETYPE");
            start.Environment.Remove("OPENBLAS_L2_SIZE");
            using Process process = Process.Start(start)!;
            string[] lines = process.StandardOutput.ReadToEnd().Split('\n', StringSplitOptions.RemoveEmptyEntries);
            process.WaitForExit();
            Array.ForEach(lines, line => Console.WriteLine($"  SuperLU {line} s"));
            return lines.Min(line => double.Parse(line.Split(' ')[1], CultureInfo.InvariantCulture));
        }
        finally
        {
            File.Delete(file);
        }
    }

    private static void Line(FormattableString text) => Console.WriteLine(text.ToString(CultureInfo.InvariantCulture));
}
