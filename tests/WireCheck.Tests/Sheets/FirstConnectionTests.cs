using WireCheck.Quantities;
using WireCheck.Sheets;
using WireCheck.Starting;

namespace WireCheck.Tests.Sheets;

/// <summary>The order of first connection is gone through step by step, as somebody with only the sheet would.</summary>
public sealed class FirstConnectionTests
{
    public static TheoryData<string> Boxes =>
    [
        "market-stall-12v.yaml", "pump-house-24v.yaml", "bicycle-workshop-48v.yaml", "first-draft-12v.yaml", "new 12", "new 24", "new 48",
    ];

    [Theory]
    [MemberData(nameof(Boxes))]
    public void Every_voltage_a_step_names_is_there_in_the_state_the_steps_before_have_made(string name)
    {
        string text = TextOf(name);
        StepReplay replay = new(text);
        int read = 0;
        foreach (IReadOnlyList<string> row in Steps(name, text))
        {
            string step = string.Join(" | ", row);
            foreach ((double told, string red, string black, double? there) in replay.Take(row[1], row[2]))
            {
                there.ShouldNotBeNull($"{red} to {black} is dead: {step}");
                there.Value.ShouldBe(told, 0.0051, $"{red} to {black}: {step}");
                read++;
            }
        }

        read.ShouldBeGreaterThan(15);
    }

    [Theory]
    [MemberData(nameof(Boxes))]
    public void Everything_that_was_opened_or_taken_out_is_closed_and_fitted_before_the_box_is_used(string name)
    {
        string text = TextOf(name);
        StepReplay replay = new(text);
        HashSet<string> opened = [];
        foreach (IReadOnlyList<string> row in Steps(name, text).TakeWhile(r => !r[1].StartsWith("Bring the box", StringComparison.Ordinal)))
        {
            HashSet<string> before = [.. replay.On];
            replay.Do(row[1]);
            opened.UnionWith(before.Except(replay.On));
        }

        opened.ShouldNotBeEmpty();
        replay.On.ShouldBe(replay.AllThatStay, ignoreOrder: true);
    }

    [Theory]
    [MemberData(nameof(Boxes))]
    public void Nothing_closes_onto_empty_capacitors_that_have_a_precharge(string name)
    {
        string text = TextOf(name);
        StepReplay replay = new(text);
        bool filled = false;
        bool wasLive = true;
        int fills = 0;
        foreach (IReadOnlyList<string> row in Steps(name, text).TakeWhile(r => !r[1].StartsWith("Bring the box", StringComparison.Ordinal)))
        {
            replay.Do(row[1]);
            if (row[1].StartsWith("Hold ", StringComparison.Ordinal))
            {
                replay.IsInverterLive.ShouldBeTrue(row[1]);
                filled = true;
                continue;
            }

            bool isLive = replay.IsInverterLive;
            if (!wasLive && isLive)
            {
                filled.ShouldBeTrue(row[1]);
                fills++;
            }

            (wasLive, filled) = (isLive, false);
        }

        fills.ShouldBe(2, "once behind the small fuse and once behind the main fuse");
    }

    [Fact]
    public void A_gauge_without_a_negative_is_told_to_be_dead_and_not_to_be_set()
    {
        Steps("first-draft-12v.yaml", TextOf("first-draft-12v.yaml")).Single(r => r[1].StartsWith("Set gauge", StringComparison.Ordinal))[2]
            .ShouldBe("gauge is dead, from gauge.+ to gauge.-: wire it before it can be set");
    }

    [Fact]
    public void Each_step_that_uses_the_box_names_its_mode_and_the_switches_that_make_it()
    {
        List<string> steps = [.. Steps("market-stall-12v.yaml", TextOf("market-stall-12v.yaml")).Select(r => r[1])];

        steps.ShouldContain("Bring the box into boiling: isolator, master closed; urn 450 W, till 40 W. Plug in one outlet after the other, the smallest first.");
        steps.ShouldContain(s => s.StartsWith("Stay in boiling, the heaviest without a charger, for 20 min", StringComparison.Ordinal));
        steps.ShouldContain(s => s.StartsWith("Charge with mains as in overnight: isolator closed, master open, plugged in mains.", StringComparison.Ordinal));
        steps.ShouldContain(s => s.StartsWith("Close master. The switches then stand as in trading, boiling, packing-up, idle", StringComparison.Ordinal));
    }

    private static IReadOnlyList<IReadOnlyList<string>> Steps(string name, string text) => SheetBooks.Of(name, text).Named("first-connection").Rows;

    private static string TextOf(string name) => name.StartsWith("new ", StringComparison.Ordinal)
        ? NewBoxes.GetOrAdd(name, n => Made(int.Parse(n[4..], System.Globalization.CultureInfo.InvariantCulture)))
        : File.ReadAllText(Path.Combine(Golden.Root, "examples", name));

    private static readonly System.Collections.Concurrent.ConcurrentDictionary<string, string> NewBoxes = new();

    private static string Made(int volts) => new StartingBox(PackCheck.Standard).Make(
        new StartingAnswers
        {
            Volts = volts,
            AmpHours = 100,
            Loads = [new AskedLoad("coolbox", 45), new AskedLoad("lamp", 10)],
            Usb = true,
            InverterWatts = 500,
            FromMains = true,
            SolarWatts = 200,
        },
        SizeSystem.Awg).Text.ShouldNotBeNull();
}
