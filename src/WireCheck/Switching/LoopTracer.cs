using WireCheck.Circuit.Elements;
using WireCheck.Circuit.Solving;
using WireCheck.Circuit.Wiring;

namespace WireCheck.Switching;

/// <summary>One step of a loop.</summary>
/// <param name="PartId">The part, conductor or outside link.</param>
/// <param name="Element">The element the current passes.</param>
internal readonly record struct LoopStep(string PartId, Element Element);

/// <summary>Follows the current of a solved state from a source through a part and back.</summary>
internal sealed class LoopTracer
{
    /// <summary>A current below this is rounding, A.</summary>
    private const double SmallestAmps = 1e-9;

    private readonly List<Element>[] _at;
    private readonly List<ConverterStage>[] _outputs;
    private readonly string?[] _owner;

    internal LoopTracer(SwitchedBox box)
    {
        int nodes = box.Wiring.Network.NodeCount;
        _at = new List<Element>[nodes];
        _outputs = new List<ConverterStage>[nodes];
        for (int node = 0; node < nodes; node++)
        {
            (_at[node], _outputs[node]) = ([], []);
        }

        _owner = new string?[box.Wiring.Network.Elements.Count];
        foreach (WiredPart part in box.Wiring.Parts)
        {
            foreach (Element element in part.Elements)
            {
                _owner[element.Index] = part.Part.Id;
            }
        }

        HashSet<Element> burdens = [.. box.Burdens.OfType<Element>()];
        foreach (Element element in box.Wiring.Network.Elements)
        {
            if (burdens.Contains(element))
            {
                continue;
            }

            _owner[element.Index] ??= element.Name;
            _at[element.A].Add(element);
            _at[element.B].Add(element);
            if (element is ConverterStage stage)
            {
                _outputs[stage.OutA].Add(stage);
                _outputs[stage.OutB].Add(stage);
            }
        }
    }

    /// <summary>
    /// The way of the current that enters a part at <paramref name="plus"/> and leaves it at <paramref name="minus"/>: from
    /// the source to the part, the part itself, and back. Where ways part the larger current is followed.
    /// </summary>
    internal (List<LoopStep> Feed, List<LoopStep> Back, string? Source) Trace(Solution solution, int plus, int minus)
    {
        List<LoopStep> feed = [];
        string? source = Walk(solution, plus, minus, against: true, feed);
        feed.Reverse();
        List<LoopStep> back = [];
        string? sink = Walk(solution, minus, plus, against: false, back);
        return (feed, back, source ?? sink);
    }

    /// <summary>Ids in the order of the current, the source first, each once in a row.</summary>
    internal static List<string> Ids(string? source, IEnumerable<LoopStep> feed, string part, IEnumerable<LoopStep> back)
    {
        List<string> ids = [];
        void Add(string id)
        {
            if (ids.Count == 0 || ids[^1] != id)
            {
                ids.Add(id);
            }
        }

        if (source is not null)
        {
            Add(source);
        }

        foreach (LoopStep step in feed)
        {
            Add(step.PartId);
        }

        Add(part);
        foreach (LoopStep step in back)
        {
            Add(step.PartId);
        }

        if (ids.Count > 1 && ids[^1] == source)
        {
            ids.RemoveAt(ids.Count - 1);
        }

        return ids;
    }

    /// <summary>Walks against or with the current until a source; returns its id, or null at a dead end.</summary>
    private string? Walk(Solution solution, int start, int never, bool against, List<LoopStep> taken)
    {
        HashSet<int> seen = [start, never];
        int node = start;
        while (true)
        {
            (Element? element, int next, double most, bool gives) = (null, -1, SmallestAmps, false);
            foreach (Element each in _at[node])
            {
                double leaving = (each.A == node ? 1 : -1) * solution.Current(each);
                double amps = against ? -leaving : leaving;
                int other = each.A == node ? each.B : each.A;
                bool source = (each is Source or ChargerOutput or PanelCurve) && solution.Current(each) < 0;
                if (amps > most && (source || !seen.Contains(other)))
                {
                    (element, next, most, gives) = (each, other, amps, source);
                }
            }

            foreach (ConverterStage stage in _outputs[node])
            {
                double amps = solution.OutputCurrent(stage);
                bool right = against ? stage.OutA == node : stage.OutB == node;
                if (right && amps > most)
                {
                    (element, next, most, gives) = (stage, against ? stage.A : stage.B, amps, false);
                }
            }

            if (element is null)
            {
                return null;
            }

            string owner = _owner[element.Index]!;
            if (gives)
            {
                return owner;
            }

            taken.Add(new LoopStep(owner, element));
            if (!seen.Add(next))
            {
                return null;
            }

            node = next;
        }
    }
}
