using WireCheck.Quantities;

namespace WireCheck.Starting;

/// <summary>Asks on a terminal for what was not said on the command line. A wrong answer is told and asked again.</summary>
/// <param name="input">Where the answers come from.</param>
/// <param name="output">Where the questions go.</param>
public sealed class Interview(TextReader input, TextWriter output)
{
    /// <summary>The words with everything that was missing; null when the answers ended before the questions.</summary>
    public AnswerWords? Complete(AnswerWords words)
    {
        output.WriteLine("A few questions; an empty line takes what stands in brackets.");
        try
        {
            return Ask(words);
        }
        catch (EndOfStreamException)
        {
            return null;
        }
    }

    private AnswerWords Ask(AnswerWords words)
    {
        words = words with
        {
            Volts = words.Volts ?? One("Voltage of the bank: 12, 24 or 48 V?", "12", (t, m) => AnswerReader.Volts(t, m)),
            Capacity = words.Capacity ?? One("Its capacity?", "100 Ah", (t, m) => AnswerReader.Number(t, ElectricKinds.Charge, m)),
            Loads = words.Loads.Count > 0 ? words.Loads : Several(
                "What runs at 12 V? Name and power, such as coolbox=45W; one a line, an empty line when there is no more."),
            Usb = words.Usb || One("A supply for telephones?", "yes", YesOrNo) is "yes" or "y",
            Inverter = words.Inverter ?? NotNone(One("An inverter of how many watts?", "none", (t, m) => OrNone(t, ElectricKinds.Power, m))),
        };
        words = words with
        {
            MainsLoads = words.Inverter is null || words.MainsLoads.Count > 0 ? words.MainsLoads : Several(
                "What runs on it? Such as urn=450W; one a line, an empty line when there is no more."),
            Charging = words.Charging.Count > 0 ? words.Charging : [One(
                "Charged from what? mains, solar, vehicle; several with commas.", "mains", (t, m) => AnswerReader.Charging([t], m))],
        };
        return words with
        {
            Panel = words.Panel ?? (words.Charging.Any(c => c.Contains("solar", StringComparison.Ordinal))
                ? One("Power of the panel?", "100 W", (t, m) => AnswerReader.Number(t, ElectricKinds.Power, m))
                : null),
        };
    }

    private string One(string question, string otherwise, Action<string, ICollection<string>> judge)
    {
        while (true)
        {
            output.Write($"{question} [{otherwise}] ");
            string typed = Line();
            string answer = typed.Length == 0 ? otherwise : typed;
            List<string> mistakes = [];
            judge(answer, mistakes);
            if (mistakes.Count == 0)
            {
                return answer;
            }

            Tell(mistakes);
        }
    }

    private List<string> Several(string question)
    {
        output.WriteLine(question);
        List<string> said = [];
        while (true)
        {
            output.Write("  ");
            string typed = Line();
            if (typed.Length == 0)
            {
                return said;
            }

            List<string> mistakes = [];
            AnswerReader.Loads([typed], mistakes);
            if (mistakes.Count == 0)
            {
                said.Add(typed);
            }

            Tell(mistakes);
        }
    }

    private string Line() => input.ReadLine()?.Trim() ?? throw new EndOfStreamException();

    private void Tell(IEnumerable<string> mistakes)
    {
        foreach (string mistake in mistakes)
        {
            output.WriteLine($"  {mistake}");
        }
    }

    private static void YesOrNo(string text, ICollection<string> mistakes)
    {
        if (text is not ("yes" or "y" or "no" or "n"))
        {
            mistakes.Add("say yes or no");
        }
    }

    private static void OrNone<T>(string text, QuantityKind<T> kind, ICollection<string> mistakes)
    {
        if (text != "none")
        {
            AnswerReader.Number(text, kind, mistakes);
        }
    }

    private static string? NotNone(string text) => text == "none" ? null : text;
}
