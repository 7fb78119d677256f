using WireCheck.Numbers;
using WireCheck.Circuit.Wiring;
using WireCheck.Description;
using WireCheck.Knowledge;
using WireCheck.States;
using WireCheck.Text;

namespace WireCheck.Tests.Faults.SingleFaults;

/// <summary>One thing wrong at a time, and what it does to the rest of the box.</summary>
public sealed class SingleFaultTests
{
    private static readonly IReadOnlyList<SingleFaultRow> Stall = Rows(Example("market-stall-12v"));

    [Theory]
    [InlineData("f-cool open", "coolbox")]
    [InlineData("w15 off", "coolbox")]
    [InlineData("f-usb open", "usb, phones")]
    [InlineData("w19 off", "usb, phones")]
    [InlineData("w9 off", "inverter, urn")]
    [InlineData("w26 off", "")]
    [InlineData("f-pre open", "")]
    [InlineData("bms stuck open", "inverter, usb, coolbox, till, lamp, phones, urn")]
    public void What_is_behind_a_fault_goes_dark_and_nothing_else(string fault, string dark)
    {
        string.Join(", ", Row(Stall, fault).Dark).ShouldBe(dark);
    }

    [Fact]
    public void In_a_box_built_with_care_no_single_fault_overloads_a_conductor_or_a_load()
    {
        Stall.Where(r => r.Conductors.Count > 0 || r.Consumers.Count > 0 || r.StaysOn.Count > 0).Select(r => r.What).ShouldBeEmpty();
    }

    [Fact]
    public void A_welded_relay_without_an_isolator_leaves_its_inverter_on()
    {
        Row(Rows(Case("load-stays-on-when-relay-welds", "bad")), "k-inv welded").StaysOn.ShouldBe(["inverter"]);
        Row(Rows(Case("load-stays-on-when-relay-welds", "good")), "k-inv welded").StaysOn.ShouldBeEmpty();
    }

    [Fact]
    public void A_charger_that_loses_its_battery_gives_the_loads_what_it_gives_without_one()
    {
        SingleFaultRow row = Row(Rows(Case("charger-loses-its-battery", "bad")), "bms open while mains charges");

        row.Consumers.Select(c => c.Id).ShouldContain("heater");

        // 18 V at its output, nothing lost on the way to a load that does not draw.
        row.Consumers.First(c => c.Id == "heater").Volts.ShouldBe(18, 0.05);
        row.Consumers.First(c => c.Id == "heater").Limit.ShouldBe(16);
    }

    [Fact]
    public void A_charger_that_goes_too_high_is_held_by_the_bms_alone()
    {
        SingleFaultRow row = Row(Rows(Case("bms-alone-stops-overcharge", "bad")), "bms stuck closed");

        row.Consumers.ShouldHaveSingleItem().ShouldBe(new OverdrivenConsumer("bank", 14.8, 14.6));
    }

    [Theory]
    [InlineData("minus.2")]
    [InlineData("minus.6")]
    [InlineData("minus")]
    public void A_wire_on_a_bonded_case_drives_the_bank_into_the_bond(string bond)
    {
        // Whether a wire ends on the same stud, on no wire's stud, or the bar is named without a stud.
        string bonded = Case("positive-to-metal-case", "good").Replace("walls: sheet-steel,", $"walls: sheet-steel, bonded_to: {bond},", StringComparison.Ordinal);
        SingleFaultRow row = Row(Rows(bonded), "w2 on the case");

        // Four empty, aged and cold cells of some milliohms with half a metre of 6 AWG: more than any wire of the box stands.
        row.Conductors.ShouldHaveSingleItem().Amps.ShouldBeGreaterThan(200);
        Rows(Case("positive-to-metal-case", "good")).Select(r => r.What).ShouldNotContain("w2 on the case", "an unbonded case closes no loop");
    }

    [Fact]
    public void One_of_two_doubled_returns_that_comes_off_loads_the_other()
    {
        string doubled = Case("negative-return-thin-or-single", "good")
            .Replace("  w13: {from: heater.-, to: minus.4, size: 10 AWG, length: 400 mm}", """
              w13: {from: heater.-, to: minus.4, size: 18 AWG, length: 400 mm}
              w14: {from: heater.-, to: minus.5, size: 18 AWG, length: 400 mm}
            """, StringComparison.Ordinal)
            .Replace("power: 200 W", "power: 240 W", StringComparison.Ordinal);

        Row(Rows(doubled), "w13 off").Conductors.Select(c => c.Id).ShouldBe(["w14"]);
    }

    private static SingleFaultRow Row(IReadOnlyList<SingleFaultRow> rows, string what) => rows.Single(r => r.What == what);

    private static IReadOnlyList<SingleFaultRow> Rows(string text)
    {
        ProblemList problems = new();
        Pack? pack = PackReader.Read("box.yaml", text, problems);
        problems.InOrder().Select(p => p.ToString()).ShouldBeEmpty();
        return SingleFaultNumbers.Of(SolvedBox.Solve(pack.ShouldNotBeNull(), new WiringData(Library.Embedded)));
    }

    private static string Case(string rule, string name) =>
        File.ReadAllText(Path.Combine(Golden.Root, "tests", "WireCheck.Tests", "Rules", "Cases", rule, name + ".yaml"));

    private static string Example(string name) => File.ReadAllText(Path.Combine(Golden.Root, "examples", name + ".yaml"));
}
