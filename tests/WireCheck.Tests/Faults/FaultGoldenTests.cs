using System.Globalization;
using System.Text;
using WireCheck.Facts;
using WireCheck.Numbers;
using WireCheck.Reports.Numbers;
using WireCheck.States;

namespace WireCheck.Tests.Faults;

/// <summary>
/// Everything the fault studies tell of the examples and of boxes with one mistake, kept as it was: what changes shows here, and the diff
/// is then read. Most of these numbers were not worked by hand; the other tests of this folder hold those that were.
/// </summary>
public sealed class FaultGoldenTests
{
    /// <summary>How the names begin of the facts that the fault studies give.</summary>
    private static readonly string[] Beginnings =
    [
        "fault_", "inrush_", "precharge", "plug_in_", "without_battery_", "overcharge_", "case_fault", "near_metal", "passage_", "worst_margin",
        "short_margin", "on_when_welded", "feeds_inverter", "melting_", "always_across", "comes_first", "held_", "off_", "seconds_to_", "pulse_",
        "same_class_", "other_class_", "highest_fault", "current_with_return_lost", "in_return", "second_source", "lead_",
    ];

    public static TheoryData<string> Examples => ["market-stall-12v", "pump-house-24v", "bicycle-workshop-48v", "first-draft-12v"];

    /// <summary>Boxes with a mistake, each bringing a part of the studies that the examples do not reach.</summary>
    public static TheoryData<string> Mistakes =>
    [
        "bms-alone-stops-overcharge",
        "bms-relied-on-as-the-fuse",
        "charger-loses-its-battery",
        "contact-welds-on-capacitor-inrush",
        "inrush-blows-fuse",
        "load-stays-on-when-relay-welds",
        "negative-return-thin-or-single",
        "parallel-string-without-own-fuse",
        "positive-to-metal-case",
        "precharge-defeated-or-left-in",
        "protection-out-of-order",
        "two-source-wire-fused-once",
        "wall-passage-not-said",
    ];

    [Theory]
    [MemberData(nameof(Examples))]
    public void The_faults_of_an_example_are_as_they_were(string name)
    {
        string text = File.ReadAllText(Path.Combine(Golden.Root, "examples", name + ".yaml"));
        SolvedBox box = PackNumbers.Solve(name + ".yaml", text).Box.ShouldNotBeNull();
        using StringWriter writer = new();
        FaultsText.Write(writer, name, FaultNumbers.Of(box));
        SingleFaultText.Write(writer, SingleFaultNumbers.Of(box));
        Golden.ShouldMatch(writer.ToString(), $"Faults/Golden/{name}.txt");
    }

    [Theory]
    [MemberData(nameof(Mistakes))]
    public void The_fault_facts_of_a_mistake_are_as_they_were(string rule)
    {
        string folder = Path.Combine(Golden.Root, "tests", "WireCheck.Tests", "Rules", "Cases", rule);
        CheckOutcome outcome = PackCheck.Standard.Check(
            "bad.yaml", File.ReadAllText(Path.Combine(folder, "bad.yaml")), new CheckOptions(folder, new DateOnly(2027, 1, 1)));
        StringBuilder words = new();
        foreach (FactSubject subject in outcome.Report.ShouldNotBeNull().Facts.Subjects)
        {
            foreach ((string name, FactValue value) in subject.Values.OrderBy(v => v.Key, StringComparer.Ordinal).Where(v => IsOfFaults(v.Key)))
            {
                words.Append(CultureInfo.InvariantCulture, $"{subject.Kind} {subject.Id} {name}: {Told(value.Value)}\n");
            }
        }

        Golden.ShouldMatch(words.ToString(), $"Faults/Golden/{rule}.txt");
    }

    private static bool IsOfFaults(string fact) => Array.Exists(Beginnings, b => fact.StartsWith(b, StringComparison.Ordinal));

    private static string Told(object value) => value switch
    {
        double number => number.ToString("G5", CultureInfo.InvariantCulture),
        IReadOnlyList<string> names => string.Join(", ", names),
        _ => Convert.ToString(value, CultureInfo.InvariantCulture)!,
    };
}
