using WireCheck.Circuit.Elements;
using WireCheck.Circuit.Topology;
using WireCheck.Circuit.Wiring;
using WireCheck.Description.Kinds;
using WireCheck.Facts.Catalogue;
using WireCheck.States;

namespace WireCheck.Facts.Gather;

/// <summary>
/// Gathers where the drawn sense leads of a BMS end and what they read. Lead k belongs on the terminal with k cells
/// below it. Leads that are told in short are not drawn and say nothing here.
/// </summary>
internal static class SenseGathering
{
    /// <summary>Sets the facts of one BMS.</summary>
    internal static void Add(WiredBms bms, FactSubject subject, GatherContext context)
    {
        SenseLead[] leads = [.. Drawn(bms, context)];
        if (leads.Length == 0 || Banks.BanksBehind(context, bms) is not [{ } bank, ..])
        {
            return;
        }

        List<string> wrong = [];
        foreach (SenseLead lead in leads)
        {
            if (!lead.Reference && LevelAbove(bms, lead.Node, context) != lead.Number)
            {
                wrong.Add($"s{lead.Number} on {EndOf(lead.Node, context)}");
            }
        }

        subject.SetNames(SenseFacts.WrongTaps, wrong);
        subject.SetNumber(SenseFacts.CellLow, bank.Cells.Window.Value.From.Volts);
        subject.SetNumber(SenseFacts.CellHigh, bank.Cells.Window.Value.To.Volts);
        AddSteps(leads, subject, context);
        if (wrong.Count == 0 && bank.Cells.Series.Value == bms.Bms.Series.Value)
        {
            AddErrors(leads, bank, subject, context);
        }
    }

    /// <summary>The drawn leads from s0 up. A low-side BMS without a drawn s0 measures from its B-.</summary>
    private static IEnumerable<SenseLead> Drawn(WiredBms bms, GatherContext context)
    {
        string id = bms.Part.Id;
        bool any = false;
        List<SenseLead> leads = [];
        for (int k = 0; k <= bms.Bms.Series.Value; k++)
        {
            string pin = FormattableString.Invariant($"s{k}");
            if (TerminalReferences.IsWired(context.Pack, id, pin))
            {
                any = true;
                leads.Add(new SenseLead(k, context.Wiring.Node(id, pin), false));
            }
            else if (k == 0 && bms.Bms.Side.Value == BmsSide.Low)
            {
                leads.Add(new SenseLead(0, bms.Path.A, true));
            }
        }

        return any ? leads : [];
    }

    /// <summary>Cells between the bottom of the stack that the BMS watches and a node; null when they do not hang together.</summary>
    private static int? LevelAbove(WiredBms bms, int node, GatherContext context)
    {
        CellLevels levels = context.Stacks.CellSide;
        int below = bms.Bms.Side.Value == BmsSide.Low ? 0 : bms.Bms.Series.Value;
        return levels.Together(node, bms.Path.A) ? levels.LevelOf(node) - levels.LevelOf(bms.Path.A) + below : null;
    }

    private static string EndOf(int node, GatherContext context)
    {
        foreach (WiredBank bank in context.Wiring.Of<WiredBank>())
        {
            foreach (CellTerminal terminal in CellLevels.Terminals(bank, context.Wiring))
            {
                if (context.Stacks.CellSide.Joined(terminal.Node, node))
                {
                    return $"{bank.Part.Id}.{terminal.Name}";
                }
            }
        }

        return "no cell";
    }

    /// <summary>Voltages between neighbouring leads at rest, as a meter on the plug would read them.</summary>
    private static void AddSteps(SenseLead[] leads, FactSubject subject, GatherContext context)
    {
        foreach (OperatingPoint point in context.SolvedPoints())
        {
            for (int i = 1; i < leads.Length && point.Mode.Id == Modes.Stored; i++)
            {
                if (leads[i].Number == leads[i - 1].Number + 1
                    && point.Solution.Island(leads[i].Node) == point.Solution.Island(leads[i - 1].Node))
                {
                    double step = point.Volts(leads[i].Node, leads[i - 1].Node);
                    subject.Smallest(SenseFacts.StepLow, step, point);
                    subject.Largest(SenseFacts.StepHigh, step, point);
                }
            }
        }
    }

    /// <summary>What the bars and wires between a cell and its leads add to the reading.</summary>
    private static void AddErrors(SenseLead[] leads, WiredBank bank, FactSubject subject, GatherContext context)
    {
        double most = 0;
        foreach (OperatingPoint point in context.SteadyPoints())
        {
            for (int i = 1; i < leads.Length; i++)
            {
                if (leads[i].Number != leads[i - 1].Number + 1)
                {
                    continue;
                }

                Source cell = bank.CellElements[(leads[i].Number - 1) * bank.Columns];
                double error = Math.Abs(point.Volts(leads[i].Node, leads[i - 1].Node) - point.Volts(cell.A, cell.B));
                subject.Largest(SenseFacts.SenseError, error, point);
                if (error > most)
                {
                    most = error;
                    string lower = leads[i - 1].Reference ? "B-" : FormattableString.Invariant($"s{leads[i - 1].Number}");
                    subject.Set(SenseFacts.SenseErrorWhere, FormattableString.Invariant($"{lower} and s{leads[i].Number}"));
                }
            }
        }
    }

    private sealed record SenseLead(int Number, int Node, bool Reference);
}
