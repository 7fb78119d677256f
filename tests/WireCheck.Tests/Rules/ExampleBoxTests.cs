using WireCheck.Findings;

namespace WireCheck.Tests.Rules;

/// <summary>The example boxes: the good ones pass with nothing found, the first draft with every mistake and no more.</summary>
public class ExampleBoxTests
{
    private static readonly DateOnly Today = new(2027, 1, 1);

    /// <summary>Mistakes of the first draft: rule, part.</summary>
    private static readonly string[] Mistakes =
    [
        "aluminium-clad-wire-as-copper w24",
        "battery-fuse-missing-or-far w1",
        "bms-current-below-demand bms",
        "bms-relied-on-as-the-fuse bms", // for w25, which has no fuse
        "conductor-over-ampacity w9",
        "conductor-without-upstream-fuse w25",
        "dc-break-rating-low master",
        "drop-causes-cut-out inverter", // what w9 and the long w1 do at the inverter's surge
        "drop-over-percent coolbox",
        "fault-not-cleared-in-time w17", // the thin wires, in shorts that their fuses leave to last
        "fault-not-cleared-in-time w18",
        "fault-not-cleared-in-time w9",
        "fuse-over-conductor f-usb",
        "holder-weaker-than-fuse f-cool",
        "inverter-feed-drop inverter", // and at its rated power
        "inverter-outgrows-the-box inverter", // the same w9
        "live-pins-exposed lamp-out",
        "negative-return-thin-or-single w17",
        "negative-return-thin-or-single w9",
        "relay-holding-drain k-dc",
        "same-plug-two-jobs inlet",
        "same-plug-two-jobs lamp-out",
        "sealed-box-overheats pack", // the inverter at its rated power, through aged cells and w9
        "series-count-mismatch mains",
        "socket-over-contact-rating till-out",
        "terminal-unconnected gauge",
        "termination-unfit-for-a-carried-box w23",
    ];

    [Theory]
    [InlineData("market-stall-12v")]
    [InlineData("pump-house-24v")]
    [InlineData("bicycle-workshop-48v")]
    public void A_box_built_with_care_passes_with_nothing_found(string name)
    {
        Findings(name).ShouldBeEmpty();
    }

    [Fact]
    public void Every_mistake_of_the_first_draft_is_found_and_nothing_else()
    {
        Findings("first-draft-12v").ShouldBe(Mistakes);
    }

    private static string[] Findings(string name)
    {
        string text = File.ReadAllText(Path.Combine(Golden.Root, "examples", name + ".yaml"));
        CheckOutcome outcome = PackCheck.Standard.Check(name, text, new CheckOptions(null, Today));
        outcome.Problems.Select(p => p.ToString()).ShouldBeEmpty();
        return [.. outcome.Report!.Findings.Findings.Select(f => $"{f.Rule} {f.Part}").Order(StringComparer.Ordinal)];
    }
}
