namespace WireCheck.Tests.Rules;

/// <summary>The rules of an inverter's mains side: what they say of each declaration, and that they ask where nothing is declared.</summary>
public sealed class InverterRuleTests
{
    private const string Declared = "isolated: yes, outlet_breaker: 2 A, place: outside";

    private static readonly string Good =
        File.ReadAllText(Path.Combine(CaseFolderTests.Folder, "inverter-over-voltage-at-full", "good.yaml"));

    [Theory]
    [InlineData("isolated: yes, outlet_breaker: 2 A, place: outside", "")]
    [InlineData("isolated: yes, outlet_breaker: 2 A, place: outside, neutral: bonded, residual_current_device: yes, outlets: 3", "")]
    [InlineData("isolated: yes, outlet_breaker: 2 A, place: outside, outlets: 2", "danger neutral-bond-and-residual-device")]
    [InlineData("isolated: yes, outlet_breaker: 2 A, place: outside, neutral: bonded", "danger neutral-bond-and-residual-device")]
    [InlineData("isolated: yes, outlet_breaker: 2 A, place: outside, neutral: bonded, residual_current_device: no", "danger neutral-bond-and-residual-device")]
    [InlineData("outlet_breaker: 2 A, place: outside, neutral: bonded, residual_current_device: yes", "advice bonding-a-non-isolated-inverter")]
    [InlineData("outlet_breaker: 2 A, place: outside", "")]
    [InlineData("isolated: yes, outlet_breaker: 2 A, place: outside, mains_inlet: yes", "advice mains-and-inverter-can-meet")]
    [InlineData("isolated: yes, outlet_breaker: 2 A, place: outside, mains_inlet: yes, transfer: none", "danger mains-and-inverter-can-meet")]
    [InlineData("isolated: yes, outlet_breaker: 2 A, place: outside, mains_inlet: no", "")]
    [InlineData("isolated: yes, outlet_breaker: 2 A", "advice ac-side-careless")]
    [InlineData("isolated: yes, place: outside", "advice ac-side-careless")]
    [InlineData("isolated: yes, place: outside, outlet_breaker: 16 A", "danger ac-side-careless")]
    [InlineData("isolated: yes, place: outside, outlets: 0", "")]
    [InlineData("isolated: yes, place: outside, ac_wiring: {size: 1.5 mm²}", "")]
    [InlineData("isolated: yes, outlet_breaker: 2 A, ac_wiring: {segregated: yes}", "")]
    public void What_is_declared_decides(string declaration, string expected)
    {
        Found(Good.Replace(Declared, declaration, StringComparison.Ordinal)).ShouldBe(expected);
    }

    [Fact]
    public void A_metal_case_with_a_bond_wants_the_earth_pins_on_the_case()
    {
        const string Bonded = Declared + ", neutral: bonded, residual_current_device: yes";
        string metal = Good.Replace("walls: plastic", "walls: sheet-steel", StringComparison.Ordinal);

        Found(metal.Replace(Declared, Bonded, StringComparison.Ordinal)).ShouldBe("advice neutral-bond-and-residual-device");
        Found(metal.Replace(Declared, Bonded + ", earth: none", StringComparison.Ordinal)).ShouldBe("danger neutral-bond-and-residual-device");
        Found(metal.Replace(Declared, Bonded + ", earth: case", StringComparison.Ordinal)).ShouldBe("");
    }

    [Theory]
    [InlineData("", "advice mains-and-inverter-can-meet")]
    [InlineData(", mains_inlet: no", "")]
    [InlineData(", mains_inlet: yes, transfer: both-poles", "")]
    [InlineData(", outlets: 0", "")]
    public void A_mains_charger_inside_the_box_asks_whether_the_outlets_can_be_fed_by_the_wall_too(string declared, string expected)
    {
        string inside = Good.Replace(Declared, Declared + declared, StringComparison.Ordinal).Replace(
            "conductors:",
            "chargers:\n  built-in: {part: mains-14v6-5a}\nconductors:\n  wc1: {from: built-in.out+, to: plus.6, size: 14 AWG, length: 300 mm}\n"
            + "  wc2: {from: built-in.out-, to: minus.6, size: 14 AWG, length: 300 mm}",
            StringComparison.Ordinal);

        Found(inside).ShouldBe(expected);
    }

    [Fact]
    public void A_metal_appliance_on_a_floating_output_is_found()
    {
        Found(Good.Replace("urn: {at: inverter, power: 280 W}", "urn: {at: inverter, power: 280 W, metal: yes}", StringComparison.Ordinal))
            .ShouldBe("danger neutral-bond-and-residual-device");
    }

    [Theory]
    [InlineData("outside_links: [{between: [minus, vehicle], what: plug to the vehicle, resistance: 10 mΩ}]")]
    [InlineData("outside_links: [{between: [bms.P-, earth], what: aerial, resistance: 1 Ω}]")]
    public void A_link_from_the_negative_to_earth_is_a_bond(string link)
    {
        Found(Good.Replace("isolated: yes", "isolated: no", StringComparison.Ordinal) + "\n" + link)
            .ShouldBe("danger bonding-a-non-isolated-inverter");
        Found(Good.Replace("isolated: yes", "isolated: no", StringComparison.Ordinal)).ShouldBe("");
    }

    [Theory]
    [InlineData("cut_off: 10.2 V", "")] // 0.2 V above the BMS's 10 V is enough
    [InlineData("cut_off: 10.15 V", "fault cut-offs-in-wrong-order")]
    [InlineData("cut_off: 10.9 V", "fault cut-offs-in-wrong-order")] // the alarm at 10.8 V comes too late
    [InlineData("restart: 10.2 V", "fault cut-offs-in-wrong-order")]
    public void The_order_from_the_top_is_alarm_inverter_bms(string setting, string expected)
    {
        Found(Good.Replace(Declared, Declared + ", " + setting, StringComparison.Ordinal)).ShouldBe(expected);
    }

    private static string Found(string text)
    {
        CheckOutcome outcome = PackCheck.Standard.Check("box.yaml", text, new CheckOptions(null, new DateOnly(2027, 1, 1)));
        outcome.Problems.Select(p => p.ToString()).ShouldBeEmpty();
        return string.Join(", ", outcome.Report!.Findings.Findings
            .Where(f => f.Part == "inverter" && f.Rule is "neutral-bond-and-residual-device" or "bonding-a-non-isolated-inverter"
                or "mains-and-inverter-can-meet" or "ac-side-careless" or "cut-offs-in-wrong-order")
            .Select(f => $"{f.Severity.ToString().ToLowerInvariant()} {f.Rule}"));
    }
}
