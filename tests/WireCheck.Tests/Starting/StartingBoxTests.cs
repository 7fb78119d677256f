using WireCheck.Quantities;
using WireCheck.Rules;
using WireCheck.Starting;

namespace WireCheck.Tests.Starting;

/// <summary>Whatever is asked for, what is written passes the check; what cannot be built is told and not written.</summary>
public sealed class StartingBoxTests
{
    private static readonly AskedLoad[][] LoadSets =
    [
        [],
        [new AskedLoad("lamp", 10)],
        [new AskedLoad("coolbox", 45), new AskedLoad("lamp", 10), new AskedLoad("radio", 100)],
    ];

    private static readonly StartingBox Maker = new(PackCheck.Standard);

    /// <summary>Every voltage with every capacity, with an inverter and without, and two sets of loads; the ways to charge and the wire go round.</summary>
    public static TheoryData<int, int, int, int> Grid
    {
        get
        {
            TheoryData<int, int, int, int> grid = [];
            foreach (int volts in AnswerReader.Voltages)
            {
                foreach (int capacity in (int[])[50, 100, 280])
                {
                    foreach (int inverter in (int[])[0, 600])
                    {
                        grid.Add(volts, capacity, inverter, 1);
                        grid.Add(volts, capacity, inverter, inverter == 0 ? 2 : 0);
                    }
                }
            }

            return grid;
        }
    }

    [Theory]
    [MemberData(nameof(Grid))]
    public void Every_combination_of_answers_becomes_a_box_that_passes_the_check(int volts, int capacity, int inverter, int loads)
    {
        int turn = (volts / 12) + (capacity / 50) + (inverter / 300) + loads;
        StartingAnswers answers = Answers(volts, capacity) with
        {
            InverterWatts = inverter,
            Loads = LoadSets[loads],
            Usb = inverter == 0 || turn % 2 == 0,
            FromMains = turn % 3 != 1,
            SolarWatts = turn % 3 == 0 ? 0 : 100,
            FromVehicle = turn % 4 == 0,
        };

        StartedBox box = Maker.Make(answers, turn % 2 == 0 ? SizeSystem.Metric : SizeSystem.Awg);

        box.Text.ShouldNotBeNull(string.Join('\n', box.Left));
        CheckOutcome outcome = PackCheck.Standard.Check("new.yaml", box.Text, new CheckOptions(null, new DateOnly(2027, 1, 1)));
        outcome.Problems.ShouldBeEmpty();
        outcome.Report!.Findings.Findings.Where(f => f.Severity != Severity.Advice).ShouldBeEmpty();
        outcome.Report.Findings.Findings.Count.ShouldBe(box.Left.Count);
    }

    [Theory]
    [InlineData(12)]
    [InlineData(24)]
    [InlineData(48)]
    public void In_a_usual_box_nothing_at_all_is_found(int volts)
    {
        StartingAnswers answers = Answers(volts, 100) with
        {
            Loads = LoadSets[2], Usb = true, InverterWatts = volts == 12 ? 300 : 500, FromMains = true, SolarWatts = 200,
        };

        Maker.Make(answers).Left.ShouldBeEmpty();
    }

    [Fact]
    public void The_same_answers_make_the_same_bytes()
    {
        StartingAnswers answers = Answers(24, 100) with { Loads = LoadSets[1], FromMains = true };

        Maker.Make(answers).Text.ShouldBe(new StartingBox(PackCheck.Standard).Make(answers).Text);
    }

    [Fact]
    public void What_no_part_of_the_library_can_carry_is_told_and_not_written()
    {
        StartedBox box = Maker.Make(Answers(12, 280) with { InverterWatts = 2000 });

        box.Text.ShouldBeNull();
        box.Left.ShouldContain("the library has no BMS of 12 V that carries 215 A for hours");
    }

    [Fact]
    public void A_bank_that_its_loads_ask_too_much_of_becomes_a_larger_one()
    {
        // 600 W at 10.6 V and an efficiency of 88 % are 64 A, more than the 50 A that a cell of 50 Ah gives.
        StartedBox box = Maker.Make(Answers(12, 50) with { InverterWatts = 600, FromMains = true });

        box.Text.ShouldNotBeNull().ShouldContain("part: lfp-prismatic-100ah");
    }

    [Fact]
    public void A_title_cannot_add_keys_or_comments()
    {
        StartingAnswers answers = Answers(12, 100) with { Loads = LoadSets[1], FromMains = true, Title = "A \"box\": {{ 1 + 1 }} # \\ 'x'" };

        string text = Maker.Make(answers).Text.ShouldNotBeNull();

        PackCheck.Standard.Check("new.yaml", text, new CheckOptions(null, new DateOnly(2027, 1, 1))).Report!.PackTitle.ShouldBe(answers.Title);
    }

    private static StartingAnswers Answers(int volts, double capacity) => new() { Volts = volts, AmpHours = capacity };
}
