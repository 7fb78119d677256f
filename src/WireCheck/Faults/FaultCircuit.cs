using WireCheck.Circuit.Elements;
using WireCheck.Circuit.Solving;
using WireCheck.Circuit.Topology;
using WireCheck.Circuit.Wiring;
using WireCheck.Description;
using WireCheck.Quantities;
using WireCheck.States;

namespace WireCheck.Faults;

/// <summary>
/// A box wired once more, as a short meets it: every contact that can be closed is closed, whatever takes power is off,
/// and the sources of one case feed. A supply with a limit feeds up to that limit and takes nothing from its input.
/// </summary>
internal sealed class FaultCircuit
{
    private readonly Conditions _lowestResistance;
    private readonly Conditions _highestResistance;

    internal FaultCircuit(Pack pack, WiringData data, IReadOnlyList<Corner> corners)
    {
        Wiring = BoxWiring.Build(pack, data);
        _lowestResistance = corners.First(c => c is { Charge: Charge.Full, HighestResistance: false }).Conditions;
        _highestResistance = corners.First(c => c is { Charge: Charge.Empty, HighestResistance: true }).Conditions;
        Network = new ShortedNetwork(Wiring.Network);
        Sources = SourcePoint.In(Wiring);
        foreach (WiredPart part in Wiring.Parts)
        {
            SwitchOff(part);
        }
    }

    internal BoxWiring Wiring { get; }

    internal ShortedNetwork Network { get; }

    internal IReadOnlyList<SourcePoint> Sources { get; }

    /// <summary>
    /// Every case: all sources at their highest; then at their lowest each bank and each supply alone. Where a relay
    /// changes over, each once more with such relays at rest.
    /// </summary>
    internal List<FaultCase> Cases()
    {
        List<FaultCase> cases = [];
        bool changesOver = Wiring.Parts.Any(p => p is WiredRelay { Rest: not null });
        foreach (bool atRest in changesOver ? new[] { false, true } : [false])
        {
            cases.Add(new FaultCase(AllSources, true, atRest, [.. Sources.Select(s => s.PartId)], true));
            foreach (SourcePoint source in Sources)
            {
                cases.Add(new FaultCase(source.PartId, false, atRest, [source.PartId], Wiring[source.PartId] is WiredBank));
            }
        }

        return cases;
    }

    /// <summary>The name of the case in which everything feeds.</summary>
    internal const string AllSources = "all sources";

    /// <summary>Puts the box into a case, solves it without a fault and factors it; false when it has no answer.</summary>
    internal bool SetUp(FaultCase faultCase)
    {
        Conditions conditions = faultCase.Highest ? _lowestResistance : _highestResistance;
        foreach (WiredPart part in Wiring.Parts)
        {
            part.SetConditions(conditions);
            bool feeds = faultCase.Sources.Contains(part.Part.Id);
            switch (part)
            {
                case WiredRelay { Rest: not null } relay:
                    relay.Energised = !faultCase.AtRest;
                    break;
                case WiredBank bank:
                    SetBank(bank, faultCase.Highest, feeds);
                    break;
                case WiredVehicle vehicle:
                    vehicle.SetState(!feeds ? SourceState.Absent : faultCase.Highest ? SourceState.Powered : SourceState.Unpowered);
                    break;
                case WiredPanel panel:
                    panel.SetState(feeds ? SourceState.Powered : SourceState.Absent);
                    break;
                case WiredCharger charger:
                    charger.SetState(feeds ? SourceState.Powered : SourceState.Absent);
                    charger.Leakage.Amps = 0;
                    break;
                case WiredConverter converter:
                    converter.Stage.On = feeds;
                    break;
            }
        }

        return Network.Prepare();
    }

    private static void SetBank(WiredBank bank, bool highest, bool feeds)
    {
        double top = bank.Cells.Window.Value.To.Volts;
        foreach (Source cell in bank.CellElements)
        {
            cell.Connected = feeds;
            if (highest)
            {
                cell.Emf = top;
            }
        }
    }

    /// <summary>Closes what can be closed and lets nothing draw a current of its own.</summary>
    private static void SwitchOff(WiredPart part)
    {
        switch (part)
        {
            case WiredSwitch wired:
                wired.Closed = true;
                break;
            case WiredRelay relay:
                relay.Energised = true;
                break;
            case WiredBms bms:
                bms.SetConducting(true);
                break;
            case WiredLoad load:
                load.SetIdle(true);
                break;
        }

        foreach (Element element in part.Elements)
        {
            switch (element)
            {
                case ConstantCurrentSink sink:
                    sink.Amps = 0;
                    break;
                case ConstantPowerSink sink:
                    (sink.On, sink.OffLeakageAmps) = (false, 0);
                    break;
                case ConverterStage stage:
                    (stage.On, stage.OffLeakageAmps, stage.Share) = (false, 0, 0);
                    break;
            }
        }
    }
}
