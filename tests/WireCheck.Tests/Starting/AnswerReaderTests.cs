using WireCheck.Starting;

namespace WireCheck.Tests.Starting;

public sealed class AnswerReaderTests
{
    private static readonly AnswerWords Right = new() { Volts = "24 V", Capacity = "100Ah", Loads = ["pump = 120 W"] };

    [Fact]
    public void Answers_are_read_with_their_units()
    {
        List<string> mistakes = [];

        StartingAnswers answers = AnswerReader.Read(
            Right with { Inverter = "0.5 kW", MainsLoads = ["urn=450W"], Charging = ["mains, vehicle"], Panel = "80 W", Loads = ["pump=120W@stackable-30"] },
            mistakes).ShouldNotBeNull();

        mistakes.ShouldBeEmpty();
        answers.Volts.ShouldBe(24);
        answers.AmpHours.ShouldBe(100, 1e-6);
        answers.InverterWatts.ShouldBe(500);
        answers.SolarWatts.ShouldBe(80);
        answers.FromMains.ShouldBeTrue();
        answers.FromVehicle.ShouldBeTrue();
        answers.Loads.ShouldBe([new AskedLoad("pump", 120, "stackable-30")]);
        answers.MainsLoads.ShouldBe([new AskedLoad("urn", 450)]);
    }

    [Theory]
    [InlineData("36", "'36' is no voltage of a box; say 12, 24 or 48 V")]
    [InlineData("", "'' is no voltage of a box; say 12, 24 or 48 V")]
    public void A_voltage_that_no_box_has_is_told(string volts, string mistake) => Mistakes(Right with { Volts = volts }).ShouldBe([mistake]);

    [Theory]
    [InlineData("100", "'100' is not a capacity; write it as 100 Ah")]
    [InlineData("0 Ah", "'0 Ah' is not a capacity; write it as 100 Ah")]
    public void A_capacity_without_its_unit_or_of_nothing_is_told(string capacity, string mistake) =>
        Mistakes(Right with { Capacity = capacity }).ShouldBe([mistake]);

    [Theory]
    [InlineData("pump", "'pump' names no load; write it as coolbox=45W, or coolbox=45W@vehicle-socket to choose its socket")]
    [InlineData("pump=much", "'much' is not a power; write it as 45 W")]
    [InlineData("main=5W", "'main' is the name of another part of the box; choose another")]
    [InlineData("lamp-2=5W", "'lamp-2' ends as wires do here; write it without - before the number")]
    [InlineData("a b=5W", "'a b' cannot name a load; use letters, digits and -, and none of case, earth, vehicle, pack")]
    [InlineData("pump=5W@stackable-3", "'stackable-3' is no class of socket; did you mean 'stackable-30'?")]
    public void A_load_that_cannot_be_read_is_told(string load, string mistake) => Mistakes(Right with { Loads = [load] }).ShouldBe([mistake]);

    [Fact]
    public void Two_loads_of_one_name_and_mains_loads_without_an_inverter_are_told() =>
        Mistakes(Right with { MainsLoads = ["pump=5W"] }).ShouldBe(
            ["'pump' names two loads", "loads on mains voltage need an inverter; say its power"]);

    [Fact]
    public void A_box_that_feeds_nothing_is_told() =>
        Mistakes(Right with { Loads = [] }).ShouldBe(["the box feeds nothing; name a load, a supply for telephones or an inverter"]);

    [Fact]
    public void A_way_to_charge_that_is_misspelt_is_told_with_the_nearest() =>
        Mistakes(Right with { Charging = ["solr"] }).ShouldBe(["'solr' is no way to charge; say mains, solar or vehicle; did you mean 'solar'?"]);

    [Fact]
    public void A_title_of_two_lines_is_told() =>
        Mistakes(Right with { Title = "Box\nrules: []" }).ShouldBe(["a title is one line of at most 100 characters"]);

    private static List<string> Mistakes(AnswerWords words)
    {
        List<string> mistakes = [];
        AnswerReader.Read(words, mistakes).ShouldBeNull();
        return mistakes;
    }
}
