using WireCheck.Facts;

namespace WireCheck.Tests.Facts.Gather;

/// <summary>Conductors of one way that are worth and bear the same have one that speaks for all.</summary>
public sealed class ConductorRunsTests
{
    [Fact]
    public void Wires_before_and_behind_a_switch_are_told_together_and_what_differs_stays_apart()
    {
        // w5 leads to the switch and w6 from it to the coil, both 18 AWG with the coil's current; w7 is the coil's return.
        FactTable facts = GatheredBox.Facts(GatheredBox.Plain);

        facts.Value("w6", "same_as").ShouldNotBeNull().Value.ShouldBe("w5");
        facts.Value("w5", "same_as").ShouldBeNull();
        ((IEnumerable<string>)facts.Value("w5", "alike").ShouldNotBeNull().Value).ShouldBe(["w6"]);
        facts.Value("w7", "same_as").ShouldBeNull();
        facts.Value("w1", "same_as").ShouldBeNull();
        ((IEnumerable<string>)facts.Value("w1", "alike").ShouldNotBeNull().Value).ShouldBeEmpty();
    }

    [Fact]
    public void Another_size_speaks_for_itself()
    {
        FactTable facts = GatheredBox.Facts(GatheredBox.Plain.Replace(
            "w6: {from: master.2, to: k1.86, size: 18 AWG", "w6: {from: master.2, to: k1.86, size: 16 AWG", StringComparison.Ordinal));

        facts.Value("w6", "same_as").ShouldBeNull();
    }

    [Fact]
    public void Equal_wires_side_by_side_are_told_together()
    {
        FactTable facts = GatheredBox.Facts(GatheredBox.Plain + "\n  w10: {from: k1.87, to: lamp.+, size: 10 AWG, length: 500 mm}");

        facts.Value("w10", "same_as").ShouldNotBeNull().Value.ShouldBe("w3");
    }
}
