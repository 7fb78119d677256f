namespace WireCheck.Sizing;

/// <summary>Judges the box with other values in it.</summary>
public interface IBoxJudge
{
    /// <summary>What the rules say of the box with these values.</summary>
    /// <param name="values">The values that are chosen.</param>
    /// <param name="texts">What each becomes.</param>
    /// <param name="whole">
    /// Everything anew; else what hardly hangs on sizes, the states of switches and the energy of a day, is taken from the box as
    /// it is written.
    /// </param>
    Trial Judge(IReadOnlyList<SizedValue> values, IReadOnlyList<string> texts, bool whole);
}

/// <summary>The values to choose and what has been tried: a choice is judged once.</summary>
internal sealed class SizeSearch(IReadOnlyList<SizedValue> values, IBoxJudge judge)
{
    private readonly Dictionary<string, Trial> _tried = new(StringComparer.Ordinal);
    private readonly Dictionary<string, List<int>> _ofPart = IndexOf(values);

    internal IReadOnlyList<SizedValue> Values { get; } = values;

    /// <summary>Whether everything is worked out anew for each trial.</summary>
    internal bool Whole { get; set; }

    /// <summary>How often the box has been judged.</summary>
    internal int Checks { get; private set; }

    /// <summary>Places of the values that belong to a part.</summary>
    internal IReadOnlyList<int> OfPart(string id) => _ofPart.TryGetValue(id, out List<int>? held) ? held : [];

    /// <summary>What the rules say of a choice: the place of an option for each value.</summary>
    internal Trial Try(int[] choice)
    {
        string key = (Whole ? "w" : "") + string.Join(',', choice);
        if (!_tried.TryGetValue(key, out Trial? trial))
        {
            string[] texts = new string[choice.Length];
            for (int i = 0; i < choice.Length; i++)
            {
                texts[i] = Values[i].Options[choice[i]].Text;
            }

            trial = judge.Judge(Values, texts, Whole);
            Checks++;
            _tried[key] = trial;
        }

        return trial;
    }

    /// <summary>The choice with one value changed.</summary>
    internal static int[] With(int[] choice, int value, int option)
    {
        int[] other = (int[])choice.Clone();
        other[value] = option;
        return other;
    }

    private static Dictionary<string, List<int>> IndexOf(IReadOnlyList<SizedValue> values)
    {
        Dictionary<string, List<int>> index = new(StringComparer.Ordinal);
        for (int i = 0; i < values.Count; i++)
        {
            foreach (string id in values[i].PartIds)
            {
                if (!index.TryGetValue(id, out List<int>? held))
                {
                    index[id] = held = [];
                }

                held.Add(i);
            }
        }

        return index;
    }
}
