using WireCheck.Circuit.Elements;
using WireCheck.Circuit.Wiring;

namespace WireCheck.Facts.Gather;

/// <summary>
/// The way the current of a consumer takes from a source and back to it. Where ways part, the larger current is followed:
/// an approximation where two ways share a current.
/// </summary>
public sealed class CurrentPath
{
    private CurrentPath(IReadOnlyList<FlowBranch> branches, string? sourceId)
    {
        Branches = branches;
        SourceId = sourceId;
    }

    /// <summary>From the source's positive to the consumer, then from the consumer to the source's negative.</summary>
    public IReadOnlyList<FlowBranch> Branches { get; }

    /// <summary>The bank or charger it starts from; null when no current flows.</summary>
    public string? SourceId { get; }

    /// <summary>Ids of parts and conductors in the order of the current, each once in a row.</summary>
    public IReadOnlyList<string> PartIds
    {
        get
        {
            List<string> ids = [];
            foreach (FlowBranch branch in Branches)
            {
                if (ids.Count == 0 || ids[^1] != branch.PartId)
                {
                    ids.Add(branch.PartId);
                }
            }

            return ids;
        }
    }

    /// <summary>Follows the current that enters a consumer at <paramref name="plus"/> and leaves it at <paramref name="minus"/>.</summary>
    public static CurrentPath Of(CurrentFlow flow, int plus, int minus)
    {
        List<FlowBranch> feed = [];
        string? source = Walk(plus, n => flow.Into(n), b => b.From, b => b.Gives, StageInput, feed);
        feed.Reverse();
        List<FlowBranch> back = [];
        string? sink = Walk(minus, n => flow.OutOf(n), b => b.To, b => b.Gives, StageReturn, back);
        return new CurrentPath([.. feed, .. back], source ?? sink);

        // A converter's output is fed from its input: the way goes on there.
        static int? StageInput(FlowBranch branch) => branch.Element is ConverterStage stage ? stage.A : null;
        static int? StageReturn(FlowBranch branch) => branch.Element is ConverterStage stage ? stage.B : null;
    }

    private static string? Walk(
        int start,
        Func<int, IReadOnlyList<FlowBranch>> choices,
        Func<FlowBranch, int> next,
        Func<FlowBranch, bool> isSource,
        Func<FlowBranch, int?> throughStage,
        List<FlowBranch> taken)
    {
        HashSet<int> seen = [start];
        int node = start;
        while (true)
        {
            FlowBranch? largest = choices(node).Where(b => !b.Takes).MaxBy(b => b.Amps);
            if (largest is null)
            {
                return null;
            }

            if (isSource(largest))
            {
                if (throughStage(largest) is not { } input)
                {
                    return largest.PartId;
                }

                taken.Add(largest);
                node = input;
            }
            else
            {
                taken.Add(largest);
                node = next(largest);
            }

            if (!seen.Add(node))
            {
                return null;
            }
        }
    }

    /// <summary>The part that takes the largest share of the voltage along the way, and that share, V; null on an empty way.</summary>
    public (string PartId, double Volts)? GreatestDrop(CurrentFlow flow) =>
        Branches.Where(b => !b.Gives)
            .GroupBy(b => b.PartId, StringComparer.Ordinal)
            .Select(g => ((string, double)?)(g.Key, g.Sum(b => flow.Point.Volts(b.From, b.To))))
            .MaxBy(d => d!.Value.Item2);
}
