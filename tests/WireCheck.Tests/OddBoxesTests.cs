namespace WireCheck.Tests;

/// <summary>Boxes that once ended the program, each drawn by chance (<c>tests/fuzz</c>) and cut down to what did it.</summary>
public class OddBoxesTests
{
    private static readonly CheckOptions Options = new(null, new DateOnly(2027, 1, 1));

    [Fact]
    public void A_joint_said_to_have_no_resistance_is_solved_as_next_to_none()
    {
        const string Head = """
            pack: Box
            language: 1
            surroundings: {ambient: 0 .. 35 °C}
            defaults: {conductor: {insulation: pvc-105, ends: crimped-ring}}
            cells: {bank: {part: lfp-prismatic-100ah, series: 1}}
            busbars: {bar: {section: 15 x 3 mm, length: 60 mm}}
            loads: {lamp: {resistance: 1 Ω}}
            conductors:
              w1: {from: bar.2, to: lamp.+, size: 14 AWG, length: 300 mm}
              w2: {from: lamp.-, to: bank.-, size: 14 AWG, length: 300 mm}

            """;

        double none = BankAmps(Head + "joints: {a: {between: [bank.+, bar.1], kind: bolted, resistance: 0 Ω}}\n");
        double some = BankAmps(Head + "joints: {a: {between: [bank.+, bar.1], kind: bolted, resistance: 0.1 mΩ}}\n");

        // 0.1 mΩ beside the lamp's 1 Ω and 20 mΩ of wire and cell.
        none.ShouldBeGreaterThan(some);
        none.ShouldBe(some, some * 2e-4);
    }

    private static double BankAmps(string text)
    {
        CheckOutcome outcome = PackCheck.Standard.Check("box.yaml", text, Options);

        outcome.Problems.ShouldBeEmpty();
        return outcome.Report.ShouldNotBeNull().Facts.Subjects.Single(s => s.Id == "bank").Find("discharge_current").ShouldNotBeNull().Value.ShouldBeOfType<double>();
    }
}
