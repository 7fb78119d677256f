using WireCheck.Circuit.Elements;
using WireCheck.Circuit.Solving;
using WireCheck.Circuit.Topology;
using WireCheck.Circuit.Wiring;
using WireCheck.Description;
using WireCheck.States;

namespace WireCheck.Measured;

/// <summary>
/// Readings from the bench beside the prediction. The band of each is what the box solves to over all corners (full, nominal
/// and empty, new and aged), widened by what a hand meter may be off.
/// </summary>
public sealed class ReadingStudy(SolvedBox box, WiringGraph graph)
{
    private readonly double _share = box.Wiring.Data.Assumed("meter_error");
    private readonly double _leastVolts = box.Wiring.Data.Assumed("meter_least_volts");
    private readonly double _liveVolts = box.Wiring.Data.Assumed("live_above");
    private readonly double _leastAmps = box.Wiring.Data.Assumed("meter_least_amps");

    /// <summary>Every reading whose mode has a solution, in the order of the description.</summary>
    public IReadOnlyList<ReadingBand> Bands => _bands ??= [.. box.Pack.Measured.Select(BandOf).OfType<ReadingBand>()];

    private IReadOnlyList<ReadingBand>? _bands;

    private ReadingBand? BandOf(Reading reading)
    {
        List<OperatingPoint> points = [.. box.In(reading.Mode.Value).Where(p => p.Solution.Outcome == SolveOutcome.Solved)];
        if (points.Count == 0)
        {
            return null;
        }

        return reading.Volts is { } volts ? Voltage(reading, volts.Value.Volts, points)
            : reading.Amps is { } amps && reading.Through is { } through ? Current(reading, through.Value, Math.Abs(amps.Value.Amperes), points)
            : null;
    }

    private ReadingBand Voltage(Reading reading, double signed, List<OperatingPoint> points)
    {
        int first = NodeOf(reading.Between[0]);
        int second = NodeOf(reading.Between[1]);
        double reads = Math.Abs(signed);
        OperatingPoint most = points[0];
        double low = double.PositiveInfinity;
        double high = 0;
        foreach (OperatingPoint point in points)
        {
            double volts = Math.Abs(point.Volts(first, second));
            low = Math.Min(low, volts);
            if (volts >= high)
            {
                (high, most) = (volts, point);
            }
        }

        double off = (reads * _share) + _leastVolts;
        ReadingBand band = new(reading, reads, low - off, high + off, [], null)
        {
            // A size alone may be written with the probes either way; who writes a minus has read one.
            Reversed = signed < 0 && low > off && points.TrueForAll(p => p.Volts(first, second) > 0),
        };
        if (low > _liveVolts && reads < low / 2)
        {
            return band with { Missing = true, MayBeOpen = OnTheWayTo(first, second, most) };
        }

        return band.Above
            ? band with { Suspects = new JointSuspects(box.Wiring, graph, most).Between(first, second, reads - high) }
            : band;
    }

    private ReadingBand Current(Reading reading, string part, double reads, List<OperatingPoint> points)
    {
        double low = double.PositiveInfinity;
        double high = 0;
        foreach (OperatingPoint point in points)
        {
            double amps = Math.Abs(AmpsThrough(box.Wiring[part], point));
            low = Math.Min(low, amps);
            high = Math.Max(high, amps);
        }

        double off = (reads * _share) + _leastAmps;
        ReadingBand band = new(reading, reads, low - off, high + off, [], null);
        if (band.Below && FedByCharger(part, points[0]))
        {
            return band with { Tapers = true };
        }

        double misfit = band.Above ? reads - high : band.Below ? reads - low : 0;
        return misfit == 0 ? band : band with { Consumer = new ConsumerSuspects(box, points[0]).Explaining(misfit) };
    }

    private int NodeOf(TerminalReference at) => box.Wiring.NodeUnderProbe(at.PartId, at.Terminal);

    /// <summary>What can be open on the way from the bank to either of two nodes.</summary>
    private IReadOnlyList<string> OnTheWayTo(int first, int second, OperatingPoint point)
    {
        if (box.Wiring.Of<WiredBank>().FirstOrDefault() is not { } bank)
        {
            return [];
        }

        JointSuspects ways = new(box.Wiring, graph, point);
        return
        [
            .. ways.Parts(box.Wiring.Node(bank.Part.Id, "+"), first)
                .Concat(ways.Parts(second, box.Wiring.Node(bank.Part.Id, "-")))
                .Where(id => box.Wiring[id] is WiredFuse or WiredSwitch or WiredRelay).Distinct(),
        ];
    }

    /// <summary>Whether a part is a charger that gives power in a mode, or lies on its way to the bank.</summary>
    private bool FedByCharger(string part, OperatingPoint point)
    {
        foreach (WiredCharger charger in box.Wiring.Of<WiredCharger>().Where(c => point.Mode.Source(c.Part.Id) == SourceState.Powered))
        {
            if (charger.Part.Id == part || charger.Charger.At?.Value == part || box.Wiring[part] is WiredBank)
            {
                return true;
            }

            JointSuspects ways = new(box.Wiring, graph, point);
            foreach (WiredBank bank in box.Wiring.Of<WiredBank>())
            {
                if (ways.Parts(charger.Leakage.A, box.Wiring.Node(bank.Part.Id, "+")).Contains(part)
                    || ways.Parts(charger.Leakage.B, box.Wiring.Node(bank.Part.Id, "-")).Contains(part))
                {
                    return true;
                }
            }
        }

        return false;
    }

    /// <summary>Of a bank what its strings carry together, of any other part the largest current in it, A.</summary>
    private static double AmpsThrough(WiredPart part, OperatingPoint point)
    {
        if (part is WiredBank bank)
        {
            return bank.CellElements.Take(bank.Columns).Sum(c => point.Amps(c));
        }

        double most = 0;
        foreach (Element element in part.Elements)
        {
            double amps = Math.Abs(point.Amps(element));
            most = Math.Max(most, amps);
        }

        return most;
    }
}
