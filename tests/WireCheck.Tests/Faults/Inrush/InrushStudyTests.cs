using WireCheck.Circuit.Wiring;
using WireCheck.Description;
using WireCheck.Faults.Inrush;
using WireCheck.Knowledge;
using WireCheck.States;
using WireCheck.Text;

namespace WireCheck.Tests.Faults.Inrush;

/// <summary>What flows into discharged capacitors in a whole box.</summary>
public sealed class InrushStudyTests
{
    private static readonly string Plain = Case("contact-welds-on-capacitor-inrush", "bad");
    private static readonly string Precharged = Case("contact-welds-on-capacitor-inrush", "good");

    [Fact]
    public void The_inductance_of_a_single_loop_is_that_of_all_its_wire()
    {
        // w1 90, w2 150, w2b 150, w3 150, w4 120, w5 150, w6 300, w7 350 mm make 1.46 m at 0.7 µH/m.
        Event(Plain, "k-inv").Loop!.Henries.ShouldBe(1.46 * 0.7e-6, 1e-9);
    }

    [Fact]
    public void The_resistance_of_the_loop_is_that_of_its_parts_and_grows_with_the_capacitors_own()
    {
        double ohms = Event(Plain, "k-inv").Loop!.Ohms;
        double more = Event(Plain.Replace("isolated: yes", "isolated: yes, input_esr: 25 mΩ", StringComparison.Ordinal), "k-inv").Loop!.Ohms;

        // The class has 15 mΩ.
        (more - ohms).ShouldBe(10e-3, 1e-7);
    }

    [Fact]
    public void Peak_energy_and_integral_belong_together()
    {
        InrushEvent inrush = Event(Plain, "k-inv");

        inrush.Farads.ShouldBe(2.2e-3, 1e-12);
        inrush.EnergyJoules.ShouldBe(0.5 * 2.2e-3 * inrush.StepVolts * inrush.StepVolts, 1e-12);
        inrush.JouleIntegral.ShouldBe(inrush.EnergyJoules / inrush.Loop!.Ohms, 1e-9);
        inrush.PeakAmps.ShouldBeLessThan(inrush.StepVolts / inrush.Loop.Ohms);
        inrush.Fuses.Select(f => f.FuseId).ShouldBe(["main"]);
        inrush.Fuses[0].Share.ShouldBe(1, 1e-4);
    }

    [Fact]
    public void A_switch_whose_relay_has_not_moved_yet_charges_nothing()
    {
        InrushStudy study = Study(Plain);

        study.Of("isolator").ShouldBeNull("the relay closes after it");
        study.Of("master").ShouldBeNull("it carries the coil only");
    }

    [Fact]
    public void Several_capacitors_behind_one_contact_sum()
    {
        InrushEvent inrush = Study(Example("bicycle-workshop-48v")).Of("k-main").ShouldNotBeNull();

        inrush.Capacitors.Select(c => c.PartId).ShouldBe(["inverter", "conv", "usb"], ignoreOrder: true);
        inrush.Farads.ShouldBe(2.2e-3 + 470e-6 + 100e-6, 1e-9);
    }

    [Fact]
    public void A_precharge_is_found_by_where_its_resistor_lies_and_leaves_five_per_cent_to_the_contact()
    {
        InrushStudy study = Study(Precharged);
        Precharge precharge = study.Precharges.ShouldHaveSingleItem();

        precharge.ResistorId.ShouldBe("r-pre");
        precharge.ContactId.ShouldBe("k-inv");
        precharge.WorkedBy.ShouldBe(["precharge"]);
        precharge.EnergyJoules.ShouldBe(0.5 * 2.2e-3 * precharge.HighestVolts * precharge.HighestVolts, 1e-9);

        // 47 Ω with 2.2 mF: 0.1034 s; three of them to 95 %, a little more for what the idle inverter leaks.
        precharge.SecondsTo(0.95).ShouldBe(0.1034 * Math.Log(20), 0.01);
        InrushEvent left = study.Of("k-inv").ShouldNotBeNull();
        left.PrechargedBy.ShouldBe("r-pre");
        left.StepVolts.ShouldBe(0.05 * Event(Plain, "k-inv").StepVolts, 1e-3);
    }

    [Fact]
    public void An_inverter_that_starts_during_the_precharge_holds_it_down_to_its_cut_off()
    {
        Precharge precharge = Study(Precharged.Replace(", enabled_by: k-inv", "", StringComparison.Ordinal)).Precharges.ShouldHaveSingleItem();

        precharge.HeldDownBy.ShouldBe("inverter");
        precharge.FinalVolts.ShouldBe(10.2, 1e-9);
    }

    [Fact]
    public void A_resistor_without_a_switch_of_its_own_lies_across_the_contact_at_all_times()
    {
        string across = Precharged
            .Replace("  w11: {from: f-pre.2, to: precharge.1,", "  w11: {from: f-pre.2, to: r-pre.1,", StringComparison.Ordinal);

        Study(across).Precharges.ShouldHaveSingleItem().AlwaysAcross.ShouldBeTrue();
    }

    [Fact]
    public void A_resistor_from_plus_to_minus_is_no_precharge()
    {
        string bleeder = Precharged
            .Replace("between: [r-pre.2, k-inv.87]", "between: [r-pre.2, minus.4]", StringComparison.Ordinal);

        Study(bleeder).Precharges.ShouldBeEmpty();
    }

    [Fact]
    public void A_soft_start_lets_its_limit_through_until_the_charge_is_in()
    {
        InrushEvent inrush = Event(Plain.Replace("isolated: yes", "isolated: yes, inrush_limit: 20 A", StringComparison.Ordinal), "k-inv");

        inrush.PeakAmps.ShouldBe(20, 1e-9);
        inrush.JouleIntegral.ShouldBe(20 * 2.2e-3 * inrush.StepVolts, 1e-9);
    }

    [Fact]
    public void The_study_leaves_the_box_as_it_found_it()
    {
        SolvedBox box = Solve(Precharged);
        _ = new InrushStudy(box).Events;

        box.Wiring.Of<WiredRelay>().ShouldAllBe(r => r.Held == null);
        box.Wiring.Of<WiredFuse>().ShouldAllBe(f => !f.LeftOpen);
    }

    private static InrushEvent Event(string text, string contact) => Study(text).Of(contact).ShouldNotBeNull();

    private static InrushStudy Study(string text) => new(Solve(text));

    private static SolvedBox Solve(string text)
    {
        ProblemList problems = new();
        Pack? pack = PackReader.Read("box.yaml", text, problems);
        problems.InOrder().Select(p => p.ToString()).ShouldBeEmpty();
        return SolvedBox.Solve(pack.ShouldNotBeNull(), new WiringData(Library.Embedded));
    }

    private static string Case(string rule, string name) =>
        File.ReadAllText(Path.Combine(Golden.Root, "tests", "WireCheck.Tests", "Rules", "Cases", rule, name + ".yaml"));

    private static string Example(string name) => File.ReadAllText(Path.Combine(Golden.Root, "examples", name + ".yaml"));
}
