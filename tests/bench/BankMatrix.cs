using WireCheck.Circuit;
using WireCheck.Circuit.Elements;

namespace WireCheck.Bench;

/// <summary>The nodal matrix of a linear network: a diagonal, and each pair of nodes once.</summary>
internal sealed record BankMatrix(int Size, double[] Diagonal, List<(int Row, int Column)> Pairs, double[] Siemens)
{
    internal static BankMatrix Of(Network network)
    {
        int size = network.NodeCount - 1;
        double[] diagonal = new double[size];
        List<(int Row, int Column)> pairs = [];
        List<double> siemens = [];
        foreach (Element element in network.Elements)
        {
            element.Current(0, out double slope);
            (int a, int b) = (element.A - 1, element.B - 1);
            if (a >= 0)
            {
                diagonal[a] += slope;
            }

            if (b >= 0)
            {
                diagonal[b] += slope;
            }

            if (a >= 0 && b >= 0)
            {
                pairs.Add((a, b));
                siemens.Add(slope);
            }
        }

        return new BankMatrix(size, diagonal, pairs, [.. siemens]);
    }

    /// <summary>Writes both halves as triplets, as <c>superlu.py</c> reads them.</summary>
    internal void Write(string file)
    {
        using BinaryWriter writer = new(File.Create(file));
        int count = Size + (2 * Pairs.Count);
        writer.Write((long)Size);
        writer.Write((long)count);
        foreach (Func<(int Row, int Column), int> first in new Func<(int, int), int>[] { p => p.Item1, p => p.Item2 })
        {
            for (int i = 0; i < Size; i++)
            {
                writer.Write(i);
            }

            foreach ((int Row, int Column) pair in Pairs)
            {
                writer.Write(first(pair));
                writer.Write(first((pair.Column, pair.Row)));
            }
        }

        Array.ForEach(Diagonal, writer.Write);
        foreach (double value in Siemens)
        {
            writer.Write(-value);
            writer.Write(-value);
        }
    }
}
