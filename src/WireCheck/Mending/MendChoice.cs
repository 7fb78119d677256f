using WireCheck.Edits;
using WireCheck.Findings;
using WireCheck.Rules;

namespace WireCheck.Mending;

/// <summary>A value that is written, and the finding that asks for it.</summary>
/// <param name="Edit">The value.</param>
/// <param name="Finding">The finding that decided it.</param>
/// <param name="Against">The finding that wanted another value for the same key, and that value; null when none did.</param>
public sealed record MendChoice(ValueEdit Edit, Finding Finding, (Finding Finding, string Value)? Against);

/// <summary>Chooses among the edits of all findings: for each value at most one.</summary>
internal static class MendChoices
{
    /// <summary>
    /// The edits of the findings that stand, in the order of the report. Where two want one value to be different, the safer one
    /// wins; where neither is, the finding that comes first.
    /// </summary>
    internal static IReadOnlyList<MendChoice> Of(IReadOnlyList<Finding> findings, DescriptionEdits text)
    {
        List<(string Place, OfferedEdit Offer, MendChoice Choice)> chosen = [];
        foreach (Finding finding in findings)
        {
            if (finding.Waived is not null)
            {
                continue;
            }

            foreach (OfferedEdit offer in finding.Edits)
            {
                ValueEdit edit = text.Canonical(new ValueEdit(offer.Part, offer.Key, offer.Value));
                string place = $"{edit.PartId}\n{edit.Key}";
                int held = chosen.FindIndex(c => c.Place == place);
                if (held < 0)
                {
                    chosen.Add((place, offer, new MendChoice(edit, finding, null)));
                }
                else if (chosen[held].Offer.Value != offer.Value)
                {
                    (_, OfferedEdit before, MendChoice choice) = chosen[held];
                    chosen[held] = SaferOf.IsSafer(offer, before)
                        ? (place, offer, new MendChoice(edit, finding, (choice.Finding, before.Value)))
                        : (place, before, choice with { Against = (finding, offer.Value) });
                }
            }
        }

        return [.. chosen.Select(c => c.Choice)];
    }
}
