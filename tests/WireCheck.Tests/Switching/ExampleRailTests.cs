using WireCheck.Switching;

namespace WireCheck.Tests.Switching;

/// <summary>
/// Every rail of the four examples with the ways to make it live, worked out by hand from the wiring of each description.
/// A rail is named by one of its terminals; each stands here once.
/// </summary>
public sealed class ExampleRailTests
{
    private const string Always = "always";
    private const string Never = "never";

    /// <summary>The bank feeds the bar through the isolator; two relays, worked by the master, feed the inverter and the outlets.</summary>
    private static readonly (string Terminal, string When)[] Stall =
    [
        ("main.2", Always), // ahead of the isolator
        ("plus", "isolator"), // behind it; both relays and both small switches hang here
        ("master.2", "isolator + master"), // the coils' feed
        ("dc", "isolator + master"), // behind k-dc, whose coil the master feeds
        ("inverter.in+", "isolator + master or isolator + precharge"), // behind k-inv, or round it by the resistor
        ("r-pre.1", "isolator + master or isolator + precharge"), // from its own button, or back through the resistor
        ("inlet.+", Never), // the blocking diode lets nothing out
        ("usb.out+", "isolator + master"), // the converter hangs on dc
    ];

    [Fact]
    public void The_rails_of_the_market_stall() => Rails("market-stall-12v", PlugCase.Unplugged, Stall);

    /// <summary>The same wiring, but that the gauge has a positive lead only: its other terminal follows through the gauge itself.</summary>
    [Fact]
    public void The_rails_of_the_first_draft() => Rails("first-draft-12v", PlugCase.Unplugged, [.. Stall, ("gauge.-", Always)]);

    /// <summary>The charger comes to the bar behind the isolator, through the diode, so that the isolator no longer counts.</summary>
    [Theory]
    [InlineData("market-stall-12v")]
    [InlineData("first-draft-12v")]
    public void The_rails_of_the_stall_while_it_is_charged(string name)
    {
        (string, string)[] charging =
        [
            ("main.2", Always), // by the bank
            ("plus", Always), // by the charger
            ("master.2", "master"),
            ("dc", "master"),
            ("inverter.in+", "master or precharge"),
            ("r-pre.1", "master or precharge"),
            ("inlet.+", Always), // the charger's own rail
            ("usb.out+", "master"),
        ];

        Rails(name, "mains giving power", name == "first-draft-12v" ? [.. charging, ("gauge.-", Always)] : charging);
    }

    [Fact]
    public void The_rails_of_the_pump_house()
    {
        Rails("pump-house-24v", PlugCase.Unplugged,
        [
            ("main.2", Always), // ahead of the isolator
            ("b-usb.1", "isolator"), // the bar behind it
            ("lamp.+", "isolator + master"), // the master feeds the lamps itself
            ("tools.2", "isolator + tools"), // the coil of k-inv
            ("pump.+", "isolator + master"), // behind k-pump, whose coil hangs on the lamps' rail
            ("inverter.in+", "isolator + tools or isolator + precharge"), // behind k-inv, or round it by the resistor
            ("r-pre.1", "isolator + tools or isolator + precharge"),
            ("phones.+", "isolator"), // the USB supply hangs on the bar
            ("controller.pv+", Never), // the controller lets nothing back to the panel
            ("panel.+", Never), // the panel is plugged in at the roof; its own leads are not drawn
            ("panel.-", Never),
        ]);
    }

    [Fact]
    public void The_rails_of_the_pump_house_in_the_sun()
    {
        Rails("pump-house-24v", "controller giving power",
        [
            ("main.2", Always),
            ("b-usb.1", Always), // the controller feeds the bar past the isolator
            ("lamp.+", "master"),
            ("tools.2", "tools"),
            ("pump.+", "master"),
            ("inverter.in+", "tools or precharge"),
            ("r-pre.1", "tools or precharge"),
            ("phones.+", Always),
            ("controller.pv+", Always), // the panel's own rail
            ("panel.+", Never),
            ("panel.-", Never),
        ]);
    }

    [Fact]
    public void The_rails_of_the_bicycle_workshop()
    {
        Rails("bicycle-workshop-48v", PlugCase.Unplugged,
        [
            ("main.2", Always), // ahead of the isolator
            ("plus", "isolator"), // behind it
            ("master.2", "isolator + master"), // the coil of k-main
            ("live", "isolator + master or isolator + precharge"), // behind k-main, or round it by the resistor
            ("r-pre.1", "isolator + master or isolator + precharge"),
            ("twelve", "isolator + master"), // the converter does not start through the precharge resistor
            ("usb.out+", "isolator + master"),
            ("inlet.+", Never), // the blocking diode lets nothing out
        ]);
    }

    [Fact]
    public void The_rails_of_the_bicycle_workshop_while_it_is_charged()
    {
        Rails("bicycle-workshop-48v", "mains giving power",
        [
            ("main.2", Always),
            ("plus", Always), // by the charger, behind the isolator
            ("master.2", "master"),
            ("live", "master or precharge"),
            ("r-pre.1", "master or precharge"),
            ("twelve", "master"),
            ("usb.out+", "master"),
            ("inlet.+", Always),
        ]);
    }

    private static void Rails(string name, string plugs, (string Terminal, string When)[] expected)
    {
        ControlTable table = StudiedBox.Of(StudiedBox.Example(name)).Tables.Single(t => t.Plugs.Id == plugs);
        ControlRow[] rails = [.. table.Rows.Where(r => r.Point.Kind == LivePointKind.Rail)];
        List<string> named = [];
        foreach ((string terminal, string when) in expected)
        {
            ControlRow rail = rails.Where(r => r.Point.Terminals.Contains(terminal)).ShouldHaveSingleItem(terminal);
            named.Add(rail.Point.Id);
            Words(rail).ShouldBe(when, terminal);
        }

        named.Order(StringComparer.Ordinal).ShouldBe(rails.Select(r => r.Point.Id).Order(StringComparer.Ordinal));
    }

    private static string Words(ControlRow rail) => rail.LiveWhen.ShouldNotBeNull() switch
    {
        [] => Never,
        [{ Closed: [], Open: [] }] => Always,
        IReadOnlyList<LiveTerm> terms => string.Join(" or ", terms.Select(t => string.Join(" + ", [.. t.Closed, .. t.Open.Select(o => "not " + o)]))),
    };
}
