using WireCheck.Circuit.Topology;
using WireCheck.Circuit.Wiring;
using WireCheck.Description;
using WireCheck.Description.Kinds;
using WireCheck.Facts.Catalogue;
using WireCheck.Quantities;
using WireCheck.States;

namespace WireCheck.Facts.Gather;

/// <summary>Gathers an inverter's outlet side as it is declared, what its direct-current side is bonded to, its thresholds and its idling.</summary>
internal static class InverterSideGathering
{
    /// <summary>Sets the facts of one inverter that <see cref="ConsumerFacts"/> do not hold.</summary>
    internal static void Add(WiredInverter wired, FactSubject subject, GatherContext context)
    {
        AddDeclared(wired.Inverter, subject, context);
        AddOutletWiring(wired.Inverter, subject, context);
        subject.SetNames(InverterFacts.DcBonds, EarthBonds.Of(context, wired.InputPlus, wired.InputMinus));
        AddThresholds(wired, subject, context);
        AddIdle(wired, subject, context);
    }

    private static void AddDeclared(Inverter part, FactSubject subject, GatherContext context)
    {
        SetYesNo(subject, InverterFacts.Isolated, part.Isolated);
        SetYesNo(subject, InverterFacts.ResidualCurrentDevice, part.ResidualCurrentDevice);
        SetYesNo(subject, InverterFacts.MainsInlet, part.MainsInlet);
        subject.SetNames(InverterFacts.MainsInside, context.Pack.Of<Charger>().Where(IsMainsInside).Select(c => c.Id));
        subject.SetWord(InverterFacts.Neutral, part.Neutral is { } neutral ? (neutral.Value == NeutralBond.Bonded ? "bonded" : "floating") : null);
        subject.SetNumber(InverterFacts.Outlets, part.Outlets?.Value);
        subject.SetWord(InverterFacts.Earth, part.Earth?.Value);
        subject.SetWord(InverterFacts.Transfer, part.Transfer?.Value);
        subject.SetWord(InverterFacts.Place, part.Place?.Value == PartPlace.Outside ? "outside" : "inside");
        subject.Set(InverterFacts.MetalBox, context.Pack.Surroundings.Enclosure?.Conducts == true);
        subject.SetNames(
            InverterFacts.MetalLoads,
            context.Pack.Of<Load>().Where(l => l.At?.Value == part.Id && l.Metal?.Value == true).Select(l => l.Id));
    }

    private static bool IsMainsInside(Charger charger) =>
        charger.At is null && charger.From is null && charger.ChargerKind.Value is ChargerKind.CcCv or ChargerKind.Trickle;

    private static void SetYesNo(FactSubject subject, Fact fact, Given<bool>? given)
    {
        if (given is not null)
        {
            subject.Set(fact, given.Value);
        }
    }

    private static void AddOutletWiring(Inverter part, FactSubject subject, GatherContext context)
    {
        double watts = Math.Max(part.Power.Value.ToWatts(), part.Surge?.Power.Value.ToWatts() ?? 0);
        subject.SetNumber(InverterFacts.AcCurrent, watts / part.AcVoltage.Value.Volts);
        subject.SetNumber(InverterFacts.OutletBreaker, part.OutletBreaker?.Value.Amperes);
        if (part.AcWiring is { } wiring)
        {
            subject.SetNumber(InverterFacts.AcWireAmpacity, wiring.Size is { } size ? context.Ampacities.LeadAmps(size.Value) : null);
            SetYesNo(subject, InverterFacts.AcSegregated, wiring.Segregated);
        }
    }

    private static void AddThresholds(WiredInverter wired, FactSubject subject, GatherContext context)
    {
        subject.SetNumber(InverterFacts.Alarm, wired.Inverter.Alarm?.Value.Volts);
        subject.SetNumber(InverterFacts.Restart, wired.Inverter.Restart?.Value.Volts);
        if (Banks.Feeding(context, wired.InputPlus) is not { } bank)
        {
            return;
        }

        double series = context.Stacks.CellsInSeries(bank);
        subject.SetNumber(InverterFacts.BmsCutOff, Banks.BmsOf(context, bank)?.Bms.CellCutoff.Value.From.Volts * series);
        double full = bank.Cells.Window.Value.To.Volts * series;
        FactValue? high = subject.Find(ConsumerFacts.Inverter.VoltageHigh.Name);
        double reached = Math.Max(full, high?.Value as double? ?? full);
        subject.SetNumber(InverterFacts.VoltageAtFull, reached);
        subject.SetWord(InverterFacts.VoltageAtFullIn, reached > full ? high?.Place?.Mode : null);
    }

    private static void AddIdle(WiredInverter wired, FactSubject subject, GatherContext context)
    {
        foreach (OperatingPoint point in context.SteadyPoints())
        {
            bool running = point.Inputs.First(i => i.Id == wired.Part.Id).On;
            if (running && point.Mode.Id == Modes.Idle)
            {
                subject.Largest(InverterFacts.IdleCurrent, point.Amps(wired.Element), point);
            }
        }

        double capacity = Banks.CoulombsOfAll(context);
        if (subject.Find(InverterFacts.IdleCurrent.Name)?.Value is double amps && capacity > 0)
        {
            subject.SetNumber(InverterFacts.IdleSharePerDay, amps * Durations.SecondsPerDay / capacity);
        }
    }
}
