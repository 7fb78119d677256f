using WireCheck.Description;
using WireCheck.Description.Kinds;
using WireCheck.Facts;
using WireCheck.Rules;
using WireCheck.Text;

namespace WireCheck.Findings;

/// <summary>Which findings the waivers of a description accept on a day, and the facts about those waivers.</summary>
/// <param name="waivers">The waivers, in the order of the file.</param>
/// <param name="today">The day of the check.</param>
internal sealed class WaiverBook(IReadOnlyList<Waiver> waivers, DateOnly today)
{
    private readonly int[] _matches = new int[waivers.Count];

    /// <summary>The first waiver that holds for a judgement, or null; every one that names it is counted as matching.</summary>
    internal Waived? Match(Judgement judgement)
    {
        Waived? waived = null;
        for (int i = 0; i < waivers.Count; i++)
        {
            Waiver waiver = waivers[i];
            if (waiver.Rule.Value != judgement.Rule.Id || (waiver.Part is not null && !Names(waiver.Part.Value, judgement.Subject.Id)))
            {
                continue;
            }

            _matches[i]++;
            if (waived is null && !IsExpired(waiver))
            {
                waived = new Waived(waiver.Because.Value, waiver.Until?.Value);
            }
        }

        return waived;
    }

    /// <summary>The facts about each waiver, to be taken after every judgement was matched.</summary>
    internal IReadOnlyList<FactSubject> Subjects(IReadOnlyCollection<string> ruleIds)
    {
        List<FactSubject> subjects = [];
        for (int i = 0; i < waivers.Count; i++)
        {
            Waiver waiver = waivers[i];
            string id = waiver.Part is null ? waiver.Rule.Value : $"{waiver.Rule.Value} on {waiver.Part.Value}";
            FactSubject subject = new(WaiverFacts.Kind, id, waiver.Position);
            subject.Set(WaiverFacts.Rule, waiver.Rule.Value);
            subject.Set(WaiverFacts.Because, waiver.Because.Value);
            subject.Set(WaiverFacts.Expired, IsExpired(waiver));
            subject.Set(WaiverFacts.KnownRule, ruleIds.Contains(waiver.Rule.Value));
            subject.Set(WaiverFacts.Matches, (double)_matches[i]);
            SetWhenThere(subject, WaiverFacts.Part, waiver.Part?.Value);
            SetWhenThere(subject, WaiverFacts.Until, waiver.Until?.Value.ToString("yyyy-MM-dd", System.Globalization.CultureInfo.InvariantCulture));
            SetWhenThere(subject, WaiverFacts.NearestRule, NearestName.Find(waiver.Rule.Value, ruleIds));
            subjects.Add(subject);
        }

        return subjects;
    }

    /// <summary>True for the part itself, and for each leg of a daisy chain, which is called after it: <c>w9/1</c>.</summary>
    private static bool Names(string part, string id) =>
        id.StartsWith(part, StringComparison.Ordinal) && (id.Length == part.Length || id[part.Length] == Conductor.BeforeLeg);

    private bool IsExpired(Waiver waiver) => waiver.Until is not null && waiver.Until.Value < today;

    private static void SetWhenThere(FactSubject subject, Fact fact, string? value)
    {
        if (value is not null)
        {
            subject.Set(fact, value);
        }
    }
}
