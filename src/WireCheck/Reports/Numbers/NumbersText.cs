using WireCheck.Numbers;
using WireCheck.Standby;
using WireCheck.Reports.Text;
using WireCheck.Quantities;

namespace WireCheck.Reports.Numbers;

/// <summary>Numbers of a box as aligned tables for a terminal.</summary>
public static class NumbersText
{
    /// <summary>A current below this is printed as 0, A: less than any meter on a bench shows.</summary>
    private const double SmallestAmps = 1e-9;

    /// <summary>Every state: its conductors, its parts, its terminals.</summary>
    public static void WriteModes(TextWriter output, string title, IReadOnlyList<StateNumbers> states)
    {
        output.Write($"{PlainText.Escape(title)}\n");
        foreach (StateNumbers state in states)
        {
            output.Write($"\n{state.Mode}, {state.Corner} ({state.Words})\n");
            output.Write(state.Solved
                ? $"  currents at every node balance to {Amps(state.ResidualAmps)}\n"
                : $"  NOT SOLVED: {Amps(state.ResidualAmps)} left over at some node; these numbers mean nothing\n");
            TextTable conductors = new("conductor", "current", "drop", "loss");
            foreach (ConductorNumbers wire in state.Conductors)
            {
                conductors.Add(wire.Id, Amps(wire.Amps), Volts(wire.DropVolts), Watts(wire.LossWatts));
            }

            conductors.Write(output);
            TextTable parts = new("part", "state", "current", "power");
            foreach (PartNumbers part in state.Parts)
            {
                parts.Add(part.Id, part.State, part.Amps is { } amps ? Amps(amps) : "", part.Watts is { } watts ? Watts(watts) : "");
            }

            parts.Write(output);
            TextTable terminals = new("terminal", "voltage");
            foreach (TerminalNumbers terminal in state.Terminals)
            {
                terminals.Add(terminal.Name, WordsFor(terminal));
            }

            terminals.Write(output);
        }
    }

    /// <summary>What the box draws at rest, who draws it and by which way, how long it keeps and what would help.</summary>
    public static void WriteStandby(TextWriter output, string title, StandbyNumbers standby)
    {
        output.Write($"{PlainText.Escape(title)}\n");
        foreach (StandbyAtRest state in standby.States)
        {
            output.Write($"\n{state.Mode} ({state.Words}), at its most: {state.Corner}\n");
            output.Write($"  leaves the cells: {Amps(state.Amps)}; besides, they lose as much by themselves as {Amps(state.Life.SelfDischargeAmps)} would take\n");
            TextTable consumers = new("consumer", "current", "share", "by way of");
            foreach (StandbyConsumer consumer in state.Consumers)
            {
                consumers.Add(consumer.Id, Amps(consumer.Amps), NumberWords.Percent(consumer.Share), string.Join(" > ", consumer.Chain));
            }

            consumers.Write(output);
            output.Write($"  from full to the cut-off of the BMS or the cells: {DaysOf(state.Life.ToCutOff)}, counting on {NumberWords.Percent(state.Life.UsableShare)} of the label\n");
            output.Write($"  from there until a cell is harmed for good: {DaysOf(state.Life.ToDamage)}, with {Amps(state.Life.AmpsAfterCutOff)} past the open BMS and what the cells lose by themselves\n");
        }

        WriteMoves(output, "stored box", standby.Moves);
        WriteMoves(output, "box left plugged", standby.MovesLeftPlugged);
    }

    private static void WriteMoves(TextWriter output, string box, IReadOnlyList<Move> found)
    {
        if (found.Count == 0)
        {
            return;
        }

        output.Write($"\nWhat would help the {box}, solved again without each consumer in turn\n");
        TextTable moves = new("consumer", "leaves the cells", "to the cut-off", "how");
        foreach (Move move in found)
        {
            string how = move.Unplugs ? "unplug it" : move.Behind is null ? "take it off" : $"feed it from behind {move.Behind}";
            moves.Add(move.PartId, Amps(move.Amps), DaysOf(move.Life.ToCutOff), move.MeantLive ? $"{how}; it is meant to stay live" : how);
        }

        moves.Write(output);
    }

    private static string WordsFor(TerminalNumbers terminal) => terminal.Volts is not { } volts ? "joined to nothing"
        : Volts(volts)
            + (terminal.Above is { } above && above != terminal.Name ? $" above {above}" : "")
            + (terminal.Stray ? " on a meter alone, dead under load" : "");

    private static string DaysOf(double seconds) => double.IsFinite(seconds) ? NumberWords.Days(seconds / Durations.SecondsPerDay) : "without end";

    private static string Amps(double amps) => QuantityText.WithPrefix(Math.Abs(amps) < SmallestAmps ? 0 : amps, "A");

    private static string Volts(double volts) => QuantityText.WithPrefix(Math.Abs(volts) < SmallestAmps ? 0 : volts, "V");

    private static string Watts(double watts) => QuantityText.WithPrefix(Math.Abs(watts) < SmallestAmps ? 0 : watts, "W");
}
