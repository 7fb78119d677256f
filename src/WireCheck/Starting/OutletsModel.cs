using Scriban.Runtime;

namespace WireCheck.Starting;

/// <summary>The 12 V outlets: a socket, a fuse and a pair of wires for each load, and above 12 V the converter that feeds them.</summary>
internal sealed class OutletsModel(StartingAnswers answers, BoxVolts volts, BoxValues values, Shelf shelf)
{
    /// <summary>Volts of a 12 V bank when its loads draw most, and of the converter's output.</summary>
    private const double LowOutlet = 10.6;

    private bool HasConverter => answers.Loads.Count > 0 && answers.Volts > BoxVolts.Outlets;

    /// <summary>Adds them; the current in A that they take from the bank at its lowest voltage.</summary>
    internal double Add()
    {
        double watts = answers.Loads.Sum(l => l.Watts);
        values.Set("loads", new ScriptArray(answers.Loads.Select(OneLoad)));
        values.Set("has_converter", HasConverter);
        double amps = HasConverter ? AddConverter(watts / LowOutlet) : watts / volts.Low;
        double ahead = answers.Loads.Count == 0 || HasConverter ? 0
            : volts.Assume("starting_feed_ratio") * answers.Loads.Max(l => values.Rating($"f-{l.Name}", l.Watts / LowOutlet));
        if (answers.Loads.Count > 0)
        {
            values.Wire("outlets", values.Fuse("outlets", amps, Math.Max(LeastFeed, ahead)));
        }

        return amps;
    }

    /// <summary>Rating in A below which a feed of several outlets would be nearer to theirs than they can be told apart.</summary>
    private const double LeastFeed = 5;

    private double AddConverter(double outletAmps)
    {
        string name = shelf.Class(
            "converters", "conv", c => c.Volts("output") is > 12 and < 13 && c.Word("negative") == "common" && c.Spans("window", volts.Empty, volts.Full),
            c => c.Amps("output_limit"), outletAmps, $"converter from {answers.Volts} V to 12 V for {BoxValues.Plain(Math.Ceiling(outletAmps))} A");
        values.Part("conv", name);
        if (name.Length == 0)
        {
            return 0;
        }

        PartValues converter = shelf.Find("converters", name);
        values.Wire("bar", converter.Amps("output_limit"));
        return converter.Watts("power") / converter.Share("efficiency") / volts.Low;
    }

    /// <summary>Sockets with tabs; the others have screws or studs.</summary>
    private static readonly string[] SpadeEnds = ["barrel-5-5", "barrel-5-5-2-5", "vehicle-socket", "small-latching-socket"];

    private static bool IsUsual(PartValues socket) => socket.Word("direction") == "out" && socket.Word("pins") == "shrouded"
        && !socket.Name.StartsWith("usb", StringComparison.Ordinal);

    private ScriptObject OneLoad(AskedLoad load)
    {
        double amps = load.Watts / LowOutlet;
        double rating = values.Rating($"f-{load.Name}", amps);
        string port = shelf.Class(
            "ports", $"{load.Name}-out", c => load.Socket is null ? IsUsual(c) : c.Name == load.Socket,
            c => c.Amps("rated"), rating, $"socket for {BoxValues.Plain(rating)} A");
        ScriptObject model = [];
        model.SetValue("id", load.Name, true);
        model.SetValue("watts", BoxValues.Plain(load.Watts), true);
        model.SetValue("rating", BoxValues.Plain(rating), true);
        model.SetValue("port", port, true);
        model.SetValue("size", shelf.Wire(load.Name, rating).ToString(), true);
        BranchFuse fuse = shelf.Kind($"f-{load.Name}");
        model.SetValue("fuse", fuse.Part, true);
        model.SetValue("marked", fuse.Marked, true);
        model.SetValue("fuse_end", fuse.End, true);
        model.SetValue("end", SpadeEnds.Contains(port) ? "crimped-spade" : "crimped-ring", true);
        return model;
    }
}
