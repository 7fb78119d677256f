using WireCheck.Circuit.Elements;

namespace WireCheck.Tests.Circuit.Elements;

/// <summary>Each element's curve: points worked by hand, its slope against a difference quotient, and no jumps.</summary>
public class ElementCurveTests
{
    private static readonly PanelPoints Points = new(22.1, 18.2, 5.85, 5.5);

    public static TheoryData<string> Kinds => [.. Curves().Keys];

    [Theory]
    [MemberData(nameof(Kinds))]
    public void The_slope_is_that_of_the_curve(string kind)
    {
        Element element = Curves()[kind];
        foreach (double volts in new[] { -3.3, 0.137, 0.61, 3.7, 12.13, 13.931, 19.77 })
        {
            const double Step = 1e-6;
            element.Current(volts, out double slope);
            double quotient = (element.Current(volts + Step, out _) - element.Current(volts - Step, out _)) / (2 * Step);
            slope.ShouldBe(quotient, 1e-7 + (1e-4 * Math.Abs(quotient)));
        }
    }

    [Theory]
    [MemberData(nameof(Kinds))]
    public void The_curve_has_no_jump(string kind)
    {
        Element element = Curves()[kind];
        for (double volts = -5; volts < 25; volts += 0.01)
        {
            const double Near = 1e-9;
            double steepest = 1e-6 + (Near * 4e3);
            Math.Abs(element.Current(volts + Near, out _) - element.Current(volts, out _)).ShouldBeLessThan(
                steepest + (Near * Math.Abs(element.Current(volts, out _)) * 100));
        }
    }

    [Fact]
    public void A_resistance_follows_ohms_law()
    {
        new Resistance("r", 0, 1, 0.25).Current(3, out double slope).ShouldBe(12);
        slope.ShouldBe(4);
    }

    [Theory]
    [InlineData(0)]
    [InlineData(-1)]
    [InlineData(double.NaN)]
    public void A_resistance_of_nothing_is_refused(double ohms) =>
        Should.Throw<ArgumentOutOfRangeException>(() => new Resistance("r", 0, 1, ohms));

    [Fact]
    public void A_source_gives_by_its_voltage_over_its_resistance()
    {
        // (13.2 - 12.7) V / 0.05 Ω = 10 A out of A, so -10 A into it.
        Source source = new("s", 0, 1, 13.2, 0.05);
        source.Current(12.7, out _).ShouldBe(-10, 1e-12);
        source.Connected = false;
        source.Current(12.7, out _).ShouldBe(0);
    }

    [Fact]
    public void Constant_power_takes_less_current_at_more_voltage()
    {
        // (90 W / 0.9 + 2 W) / 12 V = 8.5 A.
        ConstantPowerSink sink = new("p", 0, 1) { Watts = 90, Efficiency = 0.9, IdleWatts = 2, On = true };
        sink.Current(12, out double slope).ShouldBe(8.5, 1e-12);
        slope.ShouldBe(-8.5 / 12, 1e-12);
    }

    [Fact]
    public void A_fitted_diode_drops_its_rated_voltage_at_its_rated_current()
    {
        Diode diode = new("d", 0, 1, DiodeModel.Fit(0.55, 30, 1.05, 0.2));
        diode.Current(0.55, out _).ShouldBe(30, 1e-9);
        diode.Current(-10, out _).ShouldBe(-diode.Model.SaturationAmps, 1e-18);
    }

    [Fact]
    public void A_diode_without_the_resistance_follows_the_exponential()
    {
        // I = 1e-9 A (exp(0.5 / 0.026) - 1) = 0.225 A; the nano-ohm in series takes 2e-10 V and so 2e-9 A off.
        Diode diode = new("d", 0, 1, new DiodeModel(1e-9, 0.026, 1e-9));
        diode.Current(0.5, out _).ShouldBe(1e-9 * (Math.Exp(0.5 / 0.026) - 1), 4e-9);
    }

    [Fact]
    public void A_lit_panel_passes_through_its_three_points_and_its_power_is_greatest_near_the_second()
    {
        PanelCurve panel = new("pv", 0, 1, Points) { Connected = true, Lit = true };
        panel.Current(0, out _).ShouldBe(-5.85, 1e-9);
        panel.Current(18.2, out _).ShouldBe(-5.5, 1e-6);
        panel.Current(22.1, out _).ShouldBe(0, 1e-6);
    }

    [Fact]
    public void A_panel_whose_greatest_power_lies_outside_its_corners_is_refused() =>
        Should.Throw<ArgumentException>(() => new PanelCurve("pv", 0, 1, new PanelPoints(20, 21, 5, 4)));

    [Fact]
    public void A_power_limited_charger_gives_its_power_between_its_two_other_limits()
    {
        // 14.6 V, 20 A, 120 W: at 10 V 120 / 10 = 12 A; at 5 V the current limit, 20 A; at 14.55 V 0.05 / 0.01 = 5 A.
        ChargerOutput charger = new("c", 0, 1) { Volts = 14.6, LimitAmps = 20, PowerLimitWatts = 120, SlopeOhms = 0.01, Connected = true };
        charger.Current(10, out _).ShouldBe(-12, 1e-12);
        charger.Current(5, out _).ShouldBe(-20, 1e-12);
        charger.Current(14.55, out _).ShouldBe(-5, 1e-9);
    }

    private static Dictionary<string, Element> Curves() => new()
    {
        ["resistance"] = new Resistance("r", 0, 1, 3.3),
        ["contact"] = new Contact("k", 0, 1, 1e-3) { Closed = true },
        ["source"] = new Source("s", 0, 1, 13, 0.05),
        ["constant current"] = new ConstantCurrentSink("i", 0, 1, 2),
        ["constant power"] = new ConstantPowerSink("p", 0, 1) { Watts = 60, IdleWatts = 1, Efficiency = 0.9, On = true },
        ["constant power, off"] = new ConstantPowerSink("p", 0, 1) { Watts = 60, OffLeakageAmps = 1e-3 },
        ["diode"] = new Diode("d", 0, 1, DiodeModel.Fit(0.5, 10, 1.1, 0.3)),
        ["charger"] = new ChargerOutput("c", 0, 1) { Volts = 14.4, LimitAmps = 10, SlopeOhms = 0.02, PowerLimitWatts = 130, Connected = true },
        ["panel, lit"] = new PanelCurve("pv", 0, 1, Points) { Connected = true, Lit = true },
        ["panel, dark"] = new PanelCurve("pv", 0, 1, Points) { Connected = true, DarkLeakageAmps = 1e-3 },
        ["panel of dark junctions"] = new PanelCurve("pv", 0, 1, Points)
        {
            Connected = true, DarkDiodes = new DiodeModel(1e-9, 36 * 1.2 * 0.02585, 0.1), DarkShuntOhms = 300,
        },
        ["converter input"] = new ConverterStage("dc", 0, 1, 2, 3) { IdleWatts = 30, On = true },
    };
}
