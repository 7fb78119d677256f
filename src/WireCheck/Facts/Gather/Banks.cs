using WireCheck.Circuit.Topology;
using WireCheck.Circuit.Wiring;
using WireCheck.Description.Kinds;
using WireCheck.States;

namespace WireCheck.Facts.Gather;

/// <summary>Questions about banks that several gatherers ask.</summary>
internal static class Banks
{
    /// <summary>Current that leaves a bank at its positive terminal, A; negative while it is charged.</summary>
    internal static double AmpsLeaving(WiredBank bank, OperatingPoint point) =>
        GroupAmps.Out(bank, bank.Cells.Series.Value - 1, point.Solution);

    /// <summary>The same over all banks of a box; a bank that is charged by another takes its part away.</summary>
    internal static double AmpsLeavingAll(BoxWiring wiring, OperatingPoint point) =>
        wiring.Of<WiredBank>().Sum(b => AmpsLeaving(b, point));

    /// <summary>Charge of a full bank, C.</summary>
    internal static double Coulombs(Cells cells) => cells.Capacity.Value.AmpereHours * 3600 * cells.Parallel.Value;

    /// <summary>Charge of all banks, C.</summary>
    internal static double CoulombsOfAll(GatherContext context) => context.Pack.Of<Cells>().Sum(Coulombs);

    /// <summary>The bank a node's positive side is joined to, contacts counted as closed; null when none is.</summary>
    internal static WiredBank? Feeding(GatherContext context, int plus)
    {
        foreach (SourcePoint source in context.Sources)
        {
            if (context.Wiring[source.PartId] is WiredBank bank && context.Guards.Against(source)[plus].Reached)
            {
                return bank;
            }
        }

        return null;
    }

    /// <summary>The bank that a charger's positive output charges, through a diode too; null when there is none.</summary>
    internal static WiredBank? ChargedFrom(GatherContext context, int plus)
    {
        bool[] reached = Reach.From(context.Graph, plus, _ => true);
        return Feeding(context, plus)
            ?? context.Wiring.Of<WiredBank>().FirstOrDefault(b => reached[context.Wiring.Node(b.Part.Id, "+")]);
    }

    /// <summary>The source point of a bank.</summary>
    internal static SourcePoint SourceOf(GatherContext context, WiredBank bank) =>
        context.Sources.First(s => s.PartId == bank.Part.Id);

    /// <summary>Nominal voltage of a bank, V.</summary>
    internal static double NominalVolts(GatherContext context, Cells cells) =>
        context.Library.Chemistries[cells.Chemistry.Value].Voltages.Nominal * cells.Series.Value;

    /// <summary>The BMS whose cell side is joined to the bank; null when there is none.</summary>
    internal static WiredBms? BmsOf(GatherContext context, WiredBank bank)
    {
        foreach (WiredBms bms in context.Wiring.Of<WiredBms>())
        {
            if (BanksBehind(context, bms).Contains(bank))
            {
                return bms;
            }
        }

        return null;
    }

    /// <summary>A BMS whose pack side is joined to a bank and whose cell side is not; null when there is none.</summary>
    internal static WiredBms? TurnedBmsAt(GatherContext context, WiredBank bank) =>
        context.Wiring.Of<WiredBms>().FirstOrDefault(bms =>
            Reach.From(context.Graph, bms.Path.B, e => e.PartId != bms.Part.Id)[
                context.Wiring.Node(bank.Part.Id, bms.Bms.Side.Value == BmsSide.Low ? "-" : "+")]);

    /// <summary>The banks that a BMS's cell side is joined to without passing the BMS itself.</summary>
    internal static IReadOnlyList<WiredBank> BanksBehind(GatherContext context, WiredBms bms)
    {
        bool low = bms.Bms.Side.Value == BmsSide.Low;
        bool[] reached = Reach.From(context.Graph, bms.Path.A, e => e.PartId != bms.Part.Id);
        return [.. context.Wiring.Of<WiredBank>()
            .Where(b => reached[context.Wiring.Node(b.Part.Id, low ? "-" : "+")])];
    }

    /// <summary>
    /// Volts by which a point rises until the end of charge: a charger that is still at its current limit ends at its
    /// voltage limit, an engine that runs at its own highest voltage. 0 where nothing charges. <paramref name="node"/> must
    /// be joined to the charger's output.
    /// </summary>
    internal static double RiseToEndOfCharge(BoxWiring wiring, OperatingPoint point, int node)
    {
        double rise = 0;
        foreach ((int plus, int minus, double volts) in Charging(wiring, point))
        {
            // One that is joined the wrong way round charges nothing.
            if (point.Solution.Island(plus) == point.Solution.Island(node) && point.Volts(plus, minus) > 0)
            {
                rise = Math.Max(rise, volts - point.Volts(plus, minus));
            }
        }

        return rise;
    }

    private static IEnumerable<(int Plus, int Minus, double Volts)> Charging(BoxWiring wiring, OperatingPoint point)
    {
        foreach (WiredCharger charger in wiring.Of<WiredCharger>())
        {
            double volts = charger.Charger.Voltage.Value.Volts;
            if (point.Mode.Source(charger.Part.Id) != SourceState.Powered)
            {
                continue;
            }

            if (charger.Output is { } output)
            {
                yield return (output.A, output.B, volts);
            }
            else if (charger.Stage is { } stage)
            {
                yield return (stage.OutA, stage.OutB, volts);
            }
        }

        foreach (WiredVehicle vehicle in wiring.Of<WiredVehicle>())
        {
            if (point.Mode.Source(vehicle.Part.Id) == SourceState.Powered)
            {
                yield return (vehicle.Plus, vehicle.Minus, vehicle.Vehicle.Voltage.Value.To.Volts);
            }
        }
    }
}
