using WireCheck.Circuit.Solving;
using WireCheck.Circuit.Wiring;
using WireCheck.States;

namespace WireCheck.Facts.Gather;

/// <summary>
/// Between which nodes a voltage means something: what is wired together, and the output pair of a converter that runs.
/// </summary>
internal static class JoinedNodes
{
    /// <summary>True when the voltage between two nodes is held by something at a point.</summary>
    internal static bool Are(OperatingPoint point, int first, int second, GatherContext context)
    {
        Solution solution = point.Solution;
        int a = solution.Island(first);
        int b = solution.Island(second);
        if (a == b)
        {
            return true;
        }

        foreach (WiredConverter converter in context.Wiring.Of<WiredConverter>())
        {
            int plus = solution.Island(converter.Stage.OutA);
            int minus = solution.Island(converter.Stage.OutB);
            if (((a == plus && b == minus) || (a == minus && b == plus)) && Runs(converter.Part.Id, point))
            {
                return true;
            }
        }

        return false;
    }

    private static bool Runs(string id, OperatingPoint point)
    {
        foreach (InputState input in point.Inputs)
        {
            if (input.Id == id)
            {
                return input.On;
            }
        }

        return false;
    }
}
