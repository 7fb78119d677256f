using WireCheck.Circuit;
using WireCheck.Circuit.Elements;

namespace WireCheck.Bench;

/// <summary>A bank of cells in a grid, each with its links to its neighbours: two nodes for each cell.</summary>
internal static class Bank
{
    /// <summary>Cells side by side are joined at both poles; the groups are joined in series cell by cell.</summary>
    internal static Network Make(int series, int parallel)
    {
        Network network = new();
        Random random = new(1);
        int zero = network.AddNode("zero");
        int[] below = new int[parallel];
        Array.Fill(below, zero);
        for (int group = 0; group < series; group++)
        {
            int[] bottom = [.. below.Select(_ => network.AddNode("bottom"))];
            int[] top = [.. below.Select(_ => network.AddNode("top"))];
            for (int i = 0; i < parallel; i++)
            {
                network.Add(new Resistance("link", below[i], bottom[i], 1e-4 * (1 + random.NextDouble())));
                network.Add(new Source("cell", top[i], bottom[i], 3.3 + (0.01 * random.NextDouble()), 0.02 * (1 + random.NextDouble())));
                if (i > 0)
                {
                    network.Add(new Resistance("side", bottom[i - 1], bottom[i], 1e-4 * (1 + random.NextDouble())));
                    network.Add(new Resistance("side", top[i - 1], top[i], 1e-4 * (1 + random.NextDouble())));
                }
            }

            below = top;
        }

        int end = network.AddNode("end");
        Array.ForEach(below, node => network.Add(new Resistance("end link", node, end, 1e-4)));
        network.Add(new Resistance("load", end, zero, series * 3.3 / (parallel * 2)));
        return network;
    }
}
