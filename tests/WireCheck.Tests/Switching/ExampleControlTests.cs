using WireCheck.Switching;

namespace WireCheck.Tests.Switching;

/// <summary>
/// What the switches of the four examples do, worked out by hand from the wiring of each description: every part that can be
/// live stands in exactly one of the groups.
/// </summary>
public sealed class ExampleControlTests
{
    /// <summary>Every wire leaves the cells through the isolator; all loads hang behind relays whose coils the master feeds.</summary>
    private static readonly string[] StallLoads = ["inverter", "usb", "socket", "till-out", "lamp-out", "coolbox", "till", "lamp", "phones", "urn"];

    [Fact]
    public void On_the_market_stall_the_isolator_or_the_master_kills_all_but_the_gauge()
    {
        ControlTable table = Unplugged("market-stall-12v");

        // The gauge's fuse is taken from the cells' side of the isolator, and the description says it is meant.
        Groups(table, stayLive: ["gauge"], dead: ["inlet"], killed: StallLoads);
        Killers(table, StallLoads, "isolator", "master");
        table.Row("gauge").ShouldNotBeNull().Meant.ShouldBeTrue();
        table.KillEverything.ShouldBe(["isolator", "master"]);

        // The precharge resistor lies across the inverter's relay only; it reaches no load on the DC bar.
        OtherWay(table, ["isolator", "precharge"], "inverter");
    }

    [Fact]
    public void In_the_first_draft_the_gauge_has_one_lead_only_and_never_lives()
    {
        ControlTable table = Unplugged("first-draft-12v");

        // The gauge has a lead to the cells' positive and none to their negative, so that nothing can flow through it.
        Groups(table, stayLive: [], dead: ["gauge", "inlet"], killed: StallLoads);
        Killers(table, StallLoads, "isolator", "master");
        table.KillEverything.ShouldBe(["isolator", "master"]);
        OtherWay(table, ["isolator", "precharge"], "inverter");
    }

    [Fact]
    public void In_the_pump_house_each_switch_kills_its_own_branch_and_the_isolator_all()
    {
        ControlTable table = Unplugged("pump-house-24v");
        string[] master = ["pump-out", "lamp-out", "pump", "lamp"];
        string[] tools = ["inverter", "drill-charger"];
        string[] always = ["usb", "phones"];

        Groups(table, stayLive: ["gauge"], dead: ["roof"], killed: [.. master, .. tools, .. always]);

        // The master feeds the lamps and the pump's coil; the tools switch feeds the inverter's coil; USB hangs on the bar.
        Killers(table, master, "isolator", "master");
        Killers(table, tools, "isolator", "tools");
        Killers(table, always, "isolator");
        table.KillEverything.ShouldBe(["isolator"]);
        OtherWay(table, ["isolator", "precharge"], "inverter");
    }

    [Fact]
    public void On_the_roof_of_the_pump_house_the_panel_feeds_the_bar_past_the_isolator()
    {
        ControlTable sun = Plugged("pump-house-24v", "controller giving power");

        // The controller joins the bar on the loads' side of the isolator, so that it is live in the sun with all open.
        foreach (string id in new[] { "roof", "usb", "phones" })
        {
            ControlRow row = sun.Row(id).ShouldNotBeNull(id);
            row.WithAllOpen.ShouldBeTrue(id);
            row.LiveStates.ShouldBe(sun.States, id);
        }

        // What has a relay or a switch of its own in the way still needs it.
        Killers(sun, ["pump-out", "lamp-out", "pump", "lamp"], "master");
        Killers(sun, ["inverter", "drill-charger"], "tools");
        Unchanged("pump-house-24v", "controller without power");
    }

    [Fact]
    public void In_the_bicycle_workshop_one_relay_kills_every_converter()
    {
        ControlTable table = Unplugged("bicycle-workshop-48v");
        string[] loads =
        [
            "inverter", "conv", "usb", "pump-out", "lamp-out", "fan-out", "tyre-pump", "lamp", "fan", "phones", "grinder", "battery-charger",
        ];

        Groups(table, stayLive: ["gauge"], dead: ["inlet"], killed: loads);
        Killers(table, loads, "isolator", "master");
        table.KillEverything.ShouldBe(["isolator", "master"]);

        // All inputs hang on the contact that the precharge resistor bridges; the converters do not run until it has closed.
        OtherWay(table, ["isolator", "precharge"], "inverter", "conv", "usb");
    }

    [Theory]
    [InlineData("market-stall-12v")]
    [InlineData("first-draft-12v")]
    [InlineData("bicycle-workshop-48v")]
    public void A_charger_at_the_inlet_feeds_the_bar_behind_the_isolator_and_is_blocked_when_dead(string name)
    {
        ControlTable unplugged = Unplugged(name);
        ControlTable charging = Plugged(name, "mains giving power");

        // The blocking diode lets the charger onto the bar, where the isolator no longer stands in the way.
        charging.Row("inlet").ShouldNotBeNull().WithAllOpen.ShouldBeTrue();
        foreach (ControlRow row in unplugged.Rows.Where(r => r.Point.Kind != LivePointKind.Rail && r.WithAllClosed && !r.WithAllOpen))
        {
            charging.Row(row.Point.Id).ShouldNotBeNull().KilledBy.ShouldBe(["master"], row.Point.Id);
        }

        // The same diode keeps the bank's voltage off the pins of a charger without mains.
        Unchanged(name, "mains without power");
    }

    private static ControlTable Unplugged(string name) => StudiedBox.Of(StudiedBox.Example(name)).Unplugged;

    private static ControlTable Plugged(string name, string plugs) =>
        StudiedBox.Of(StudiedBox.Example(name)).Tables.Single(t => t.Plugs.Id == plugs);

    /// <summary>Each part in one group: live with all open, dead with all closed, or killed by some switch.</summary>
    private static void Groups(ControlTable table, string[] stayLive, string[] dead, string[] killed)
    {
        ControlRow[] parts = [.. table.Rows.Where(r => r.Point.Kind != LivePointKind.Rail)];
        Ids(parts.Where(r => r.WithAllOpen)).ShouldBe(stayLive);
        Ids(parts.Where(r => r.NoSwitchKills)).ShouldBe(stayLive);
        Ids(parts.Where(r => r.LiveStates == 0)).ShouldBe(dead);
        Ids(parts.Where(r => r.WithAllClosed && !r.WithAllOpen)).ShouldBe(killed, ignoreOrder: true);
    }

    private static void Killers(ControlTable table, string[] parts, params string[] switches)
    {
        foreach (string id in parts)
        {
            table.Row(id).ShouldNotBeNull(id).KilledBy.ShouldBe(switches, id);
        }
    }

    /// <summary>The parts that those closed switches alone make live though not all of their usual ones are closed.</summary>
    private static void OtherWay(ControlTable table, string[] closed, params string[] parts)
    {
        IEnumerable<ControlRow> live = table.Rows.Where(r => r.Point.Kind != LivePointKind.Rail
            && r.LiveWhen.ShouldNotBeNull().Any(t => t.Closed.SequenceEqual(closed) && t.Open.Count == 0));
        Ids(live).ShouldBe(parts);
    }

    private static void Unchanged(string name, string plugs)
    {
        ControlTable unplugged = Unplugged(name);
        ControlTable other = Plugged(name, plugs);
        for (int i = 0; i < unplugged.Rows.Count; i++)
        {
            other.Rows[i].LiveStates.ShouldBe(unplugged.Rows[i].LiveStates, other.Rows[i].Point.Id);
            other.Rows[i].KilledBy.ShouldBe(unplugged.Rows[i].KilledBy, other.Rows[i].Point.Id);
        }
    }

    private static string[] Ids(IEnumerable<ControlRow> rows) => [.. rows.Select(r => r.Point.Id)];
}
