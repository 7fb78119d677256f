using WireCheck.Circuit;
using WireCheck.Circuit.Solving;

namespace WireCheck.Outside.Tests.Circuit;

/// <summary>A network that a generator made, and its own answer.</summary>
internal sealed record GeneratedCircuit(int Number, Network Network, Solution Solution)
{
    /// <summary>Nodes that stand for an island apart from the reference's; a simulator needs each tied to its zero.</summary>
    internal IEnumerable<int> OtherIslands => Enumerable.Range(0, Network.NodeCount)
        .Where(node => Solution.Island(node) == node && node != Solution.Island(Network.Reference));

    /// <summary>Nodes whose voltage is compared: all but the reference.</summary>
    internal IEnumerable<int> Nodes => Enumerable.Range(0, Network.NodeCount).Where(node => node != Network.Reference);

    /// <summary>Voltage above the node that is tied to the simulator's zero, V.</summary>
    internal double Voltage(int node)
    {
        int island = Solution.Island(node);
        int zero = island == Solution.Island(Network.Reference) ? Network.Reference : island;
        return Solution.Voltage(node, zero);
    }
}
