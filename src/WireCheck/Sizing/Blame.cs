using WireCheck.Findings;
using WireCheck.Rules;

namespace WireCheck.Sizing;

/// <summary>
/// Which values a finding asks to raise: those of the part it is about, or those of the parts that its numbers and words name.
/// Which of them helps is found by trying, once for each rule.
/// </summary>
internal sealed class Blame(SizeSearch search)
{
    /// <summary>How the values of a finding's own part are called among the ways to blame.</summary>
    private const string Itself = "";

    private readonly Dictionary<string, Way> _learned = new(StringComparer.Ordinal);

    /// <summary>
    /// Values to raise by a step because of a finding; empty when raising none of those it names makes a difference.
    /// </summary>
    /// <param name="choice">The present choice.</param>
    /// <param name="finding">What stands.</param>
    /// <param name="frozen">A value that must not change; -1 for none.</param>
    /// <param name="wireOnly">Only wire may be raised.</param>
    /// <param name="known">Only what has helped with the same rule before, which needs no trying.</param>
    internal IReadOnlyList<int> Raise(int[] choice, Finding finding, int frozen, bool wireOnly, bool known)
    {
        List<Way> ways = WaysOf(finding);
        if (wireOnly)
        {
            ways.RemoveAll(w => !search.Values[w.Values[0]].IsWire);
        }

        if (_learned.TryGetValue(finding.Rule, out Way? learned)
            && ways.Find(w => w.Fact == learned.Fact && w.Key == learned.Key) is { } way
            && Movable(choice, way.Values, frozen) is { Count: > 0 } again && !Harms(choice, again, 1))
        {
            return again;
        }

        foreach (Way candidate in known ? [] : ways)
        {
            List<int> movable = Movable(choice, candidate.Values, frozen);
            if (movable.Count > 0 && Helps(choice, finding, movable))
            {
                _learned[finding.Rule] = candidate;
                return movable;
            }
        }

        return [];
    }

    /// <summary>Every value that a finding names, its own part's first.</summary>
    internal IReadOnlyList<int> Named(Finding finding)
    {
        List<int> named = [];
        foreach (Way way in WaysOf(finding))
        {
            foreach (int value in way.Values)
            {
                if (!named.Contains(value))
                {
                    named.Add(value);
                }
            }
        }

        return named;
    }

    private List<int> Movable(int[] choice, IReadOnlyList<int> values, int frozen)
    {
        List<int> movable = [];
        foreach (int value in values)
        {
            if (value != frozen && choice[value] + 1 < search.Values[value].Options.Count)
            {
                movable.Add(value);
            }
        }

        return movable;
    }

    /// <summary>True when one step, three, or all that there are make the finding go, or bring it nearer to its limit.</summary>
    private bool Helps(int[] choice, Finding finding, List<int> values)
    {
        FindingKey key = FindingKey.Of(finding);
        double? room = search.Try(choice).Room(key);
        int before = NamesIn(finding);
        foreach (int steps in Strides)
        {
            Trial trial = search.Try(Raised(choice, values, steps));
            if (Harms(search.Try(choice), trial))
            {
                continue;
            }

            if (trial.Find(key) is not { } still || still.Severity < finding.Severity || NamesIn(still) < before
                || (room is { } had && trial.Room(key) is { } has && has > had + (Least * trial.Scale(key))))
            {
                return true;
            }
        }

        return false;
    }

    /// <summary>
    /// True when raising brings a finding that was not there and that no value is named in: the next larger class does not suit
    /// the box, such as a BMS that lets more pass than its cells allow. Wire is not asked: it is solved for elsewhere.
    /// </summary>
    private bool Harms(int[] choice, List<int> values, int steps) =>
        !values.TrueForAll(v => search.Values[v].IsWire) && Harms(search.Try(choice), search.Try(Raised(choice, values, steps)));

    private bool Harms(Trial before, Trial after) =>
        after.Standing.Exists(f => before.Find(FindingKey.Of(f)) is null && Named(f).Count == 0 && after.Room(FindingKey.Of(f)) is null);

    private int[] Raised(int[] choice, List<int> values, int steps)
    {
        int[] raised = (int[])choice.Clone();
        foreach (int value in values)
        {
            raised[value] = Math.Min(choice[value] + steps, search.Values[value].Options.Count - 1);
        }

        return raised;
    }

    /// <summary>Wire first, since a thicker wire seldom breaks another rule; the part itself before those that it names.</summary>
    private List<Way> WaysOf(Finding finding)
    {
        List<Way> ways = [];
        AddWays(ways, Itself, search.OfPart(finding.Part));
        foreach (JudgedValue value in finding.Values)
        {
            if (value.Value is string word)
            {
                AddWays(ways, value.Name, search.OfPart(IdIn(word)));
            }
            else if (value.Value is IReadOnlyList<string> words)
            {
                List<int> all = [];
                foreach (string one in words)
                {
                    all.AddRange(search.OfPart(IdIn(one)));
                }

                AddWays(ways, value.Name, all);
            }
        }

        ways.Sort((a, b) => a.Order.CompareTo(b.Order));
        return ways;
    }

    /// <summary>One way for each key, so that the rating of a fuse and that of its holder are told apart.</summary>
    private void AddWays(List<Way> ways, string fact, IReadOnlyList<int> values)
    {
        List<string> keys = [];
        foreach (int value in values)
        {
            string key = string.Join(' ', search.Values[value].Keys);
            if (!keys.Contains(key))
            {
                keys.Add(key);
            }
        }

        foreach (string key in keys)
        {
            List<int> held = [];
            foreach (int value in values)
            {
                if (string.Join(' ', search.Values[value].Keys) == key && !held.Contains(value))
                {
                    held.Add(value);
                }
            }

            bool wire = search.Values[held[0]].IsWire;
            ways.Add(new Way(fact, key, held, ((wire ? 0 : 1) * 1000) + ways.Count));
        }
    }

    private static int NamesIn(Finding finding)
    {
        int count = 0;
        foreach (JudgedValue value in finding.Values)
        {
            count += value.Value is IReadOnlyList<string> names ? names.Count : 0;
        }

        return count;
    }

    /// <summary>The id at the beginning of words such as <c>w1 (6 AWG, 60 A)</c>.</summary>
    private static string IdIn(string words)
    {
        int end = words.IndexOf(' ', StringComparison.Ordinal);
        return end < 0 ? words : words[..end];
    }

    private static readonly int[] Strides = [1, 3, int.MaxValue / 2];

    /// <summary>Less gain than this, as a part of the limit, is rounding.</summary>
    private const double Least = 1e-7;

    private sealed record Way(string Fact, string Key, IReadOnlyList<int> Values, int Order);
}
