using System.Globalization;
using System.Text.RegularExpressions;
using WireCheck.Circuit.Wiring;
using WireCheck.Description;
using WireCheck.Description.Kinds;
using WireCheck.Knowledge;
using WireCheck.States;

namespace WireCheck.Tests.Sheets;

/// <summary>Does what the words of a step say with the switches, fuses and plugs of a box, and reads what it tells to read.</summary>
internal sealed partial class StepReplay
{
    private readonly Pack _pack;
    private readonly BoxWiring _wiring;
    private readonly StateSolver _solver;
    private readonly Corner _corner;
    private readonly HashSet<string> _held = [];
    private readonly HashSet<string> _plugged = [];
    private OperatingPoint? _point;

    internal StepReplay(string text)
    {
        _pack = PackReader.Read("box.yaml", text, LibraryClasses.Embedded).Pack.ShouldNotBeNull();
        WiringData data = new(Library.Embedded) { Built = BuiltDifference.None with { CellsAtRest = true } };
        _wiring = BoxWiring.Build(_pack, data);
        _solver = new StateSolver(_wiring);
        _corner = Corner.For(_pack, data).Single(c => c.Charge == Charge.Nominal && !c.HighestResistance);

        // Until the first steps say otherwise everything is closed and fitted.
        On.UnionWith(AllThatStay);
    }

    /// <summary>Fuses that are in, breakers and switches that are closed.</summary>
    internal HashSet<string> On { get; } = [];

    /// <summary>All of those that stay where they are put.</summary>
    internal IEnumerable<string> AllThatStay =>
        _pack.Of<Fuse>().Select(f => f.Id).Concat(_pack.Of<Switch>().Where(s => s.Momentary?.Value != true).Select(s => s.Id));

    internal bool IsInverterLive => _pack.Of<Inverter>().All(i => Volts($"{i.Id}.in+", $"{i.Id}.in-") > 1);

    /// <summary>Does a step and reads every voltage it names: what it tells and what is there, which is nothing where it is dead.</summary>
    internal IReadOnlyList<(double Told, string Red, string Black, double? There)> Take(string words, string see)
    {
        Do(words);
        return [.. Read(see)];
    }

    private IEnumerable<(double Told, string Red, string Black, double? There)> Read(string see)
    {
        foreach (Match match in VoltsToRead().Matches(see))
        {
            foreach (string pair in match.Groups[2].Value.Split(", "))
            {
                string[] ends = pair.Split(" to ");
                double volts = Volts(ends[0], ends[1]);
                yield return (double.Parse(match.Groups[1].Value, CultureInfo.InvariantCulture), ends[0], ends[1], Math.Abs(volts) > 1 ? volts : null);
            }
        }
    }

    internal void Do(string words)
    {
        _point = null;
        _held.Clear();
        _plugged.Clear();
        foreach (Match match in OpenOrTake().Matches(words))
        {
            On.ExceptWith(match.Groups[1].Value.Split(", "));
        }

        foreach (Match match in CloseOrFit().Matches(words))
        {
            On.Add(match.Groups[1].Value);
        }

        foreach (Match match in Hold().Matches(words))
        {
            _held.UnionWith(match.Groups[1].Value.Split(" and "));
        }

        if (Bring().Match(words) is { Success: true } mode)
        {
            On.ExceptWith(_pack.Of<Switch>().Select(s => s.Id));
            On.UnionWith(mode.Groups[1].Value.Split(", "));
            string plugged = mode.Groups[3].Value;
            _plugged.UnionWith(plugged.Length == 0 ? [] : plugged.Split(", "));
        }
    }

    private double Volts(string red, string black)
    {
        OperatingPoint point = _point ??= Solve();
        (int above, int below) = (Node(red), Node(black));
        return point.Solution.Group(above) == point.Solution.Group(below) ? point.Volts(above, below) : 0;
    }

    private int Node(string terminal)
    {
        int dot = terminal.IndexOf('.', StringComparison.Ordinal);
        return _wiring.Node(terminal[..dot], terminal[(dot + 1)..]);
    }

    private OperatingPoint Solve()
    {
        foreach (WiredFuse fuse in _wiring.Of<WiredFuse>())
        {
            fuse.LeftOpen = !On.Contains(fuse.Part.Id);
        }

        Dictionary<string, SourceState> sources = _plugged.ToDictionary(id => id, _ => SourceState.Powered);
        foreach (Charger charger in _pack.Of<Charger>().Where(c => c.At is null && sources.Count > 0))
        {
            bool fed = charger.ChargerKind.Value == ChargerKind.Solar ? sources.Keys.Any(id => _pack.Find(id) is Panel) : sources.Keys.Any(id => _pack.Find(id) is Vehicle);
            if (fed)
            {
                sources[charger.Id] = SourceState.Powered;
            }
        }

        return _solver.Solve(
            new BoxMode
            {
                Id = "replay", Words = "", Added = true, Sources = sources,
                ClosedSwitches = On.Where(id => _pack.Find(id) is Switch).Concat(_held).ToHashSet(),
                Loads = _pack.Of<Load>().ToDictionary(l => l.Id, _ => sources.Count > 0 ? LoadUse.Standby : LoadUse.Absent),
            },
            _corner);
    }

    [GeneratedRegex(@"(?:Open every switch and breaker|Take every fuse out|Open again, in this order): ([^.]+)\.|Take the small fuse out of (\S+)")]
    private static partial Regex OpenOrTake();


    [GeneratedRegex(@"(?:Close |Fit |In place of |and fit )(\S+?)(?=\.(?:\s|$)|,| fit| itself)")]
    private static partial Regex CloseOrFit();

    [GeneratedRegex(@"^Hold (.+?) for ")]
    private static partial Regex Hold();

    [GeneratedRegex(@"^(?:Bring the box into|Charge with \S+ as in) \S+: (.+?) closed(?:, (.+?) open)?(?:, plugged in (.+?)\.|;|\.)")]
    private static partial Regex Bring();

    [GeneratedRegex(@"([\d.]+) V from ([^\s,;]+ to [^\s,;]+(?:, [^\s,;]+ to [^\s,;]+)*)")]
    private static partial Regex VoltsToRead();
}
