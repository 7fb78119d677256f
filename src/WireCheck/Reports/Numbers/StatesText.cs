using WireCheck.Reports.Text;
using WireCheck.Switching;

namespace WireCheck.Reports.Numbers;

/// <summary>The control table of a box for a reader.</summary>
public static class StatesText
{
    /// <summary>What is live when, what each switch kills.</summary>
    public static void Write(TextWriter output, string title, SwitchingStudy study)
    {
        ControlTable table = study.Unplugged;
        output.Write($"{PlainText.Escape(title)}\n");
        string looked = table.Exhaustive ? $"all {table.States} states" : $"{table.States} states (none, each, pairs; all, all but one, all but two)";
        output.Write(table.Switches.Count == 0
            ? "\nThe box has no switch.\n"
            : $"\nSwitches: {string.Join(", ", table.Switches)}; {looked}. Live is more than 1 V into 10 kΩ, the bank full, loads at standby.\n");
        if (study.LeftOpen.Count > 0)
        {
            output.Write($"Too many to combine, left open throughout: {string.Join(", ", study.LeftOpen)}.\n");
        }

        output.Write($"\n{PlugCase.Unplugged}\n");
        WriteRows(output, table.Rows);
        WriteSwitches(output, table);
        foreach (ControlTable plugged in study.Tables.Skip(1))
        {
            ControlRow[] other = [.. plugged.Rows.Where((row, i) => Differs(row, table.Rows[i]))];
            output.Write($"\n{plugged.Plugs.Id}{(other.Length == 0 ? ": as unplugged" : ", where it differs from unplugged")}\n");
            WriteRows(output, other);
        }

        WriteSneaks(output, study);
    }

    private static void WriteSneaks(TextWriter output, SwitchingStudy study)
    {
        output.Write(study.Sneaks.Count == 0 ? "\nNo sneak path found.\n" : "\nSneak paths\n");
        foreach (SneakPath path in study.Sneaks)
        {
            output.Write($"  {PlainText.Escape(SneakWords.Of(path))}, {PlainText.Escape(path.When)}:\n    {PlainText.Escape(string.Join(" > ", path.Loop))}\n");
        }

        foreach (NegativeOnly negative in study.NegativeOnly)
        {
            output.Write($"  {negative.Switch} opens only the negative of {string.Join(", ", negative.Parts)}{(negative.Restored.Count == 0 ? "" : $"; {string.Join(", ", negative.Restored)} stays live by a link outside the box")}\n");
        }
    }

    private static void WriteRows(TextWriter output, IReadOnlyList<ControlRow> rows)
    {
        TextTable parts = new("part", "kind", "all open", "all closed", "dead by opening", "live when closed");
        TextTable rails = new("rail", "all open", "all closed", "dead by opening", "live when closed", "its terminals");
        foreach (ControlRow row in rows)
        {
            string open = State(row.WithAllOpen) + (row.WithAllOpen && row.Meant ? ", meant" : "");
            string killers = !row.WithAllClosed ? "" : row.NoSwitchKills ? "no switch" : string.Join(" or ", row.KilledBy);
            if (row.Point.Kind == LivePointKind.Rail)
            {
                rails.Add(row.Point.Id, open, State(row.WithAllClosed), killers, When(row), string.Join(" ", row.Point.Terminals));
            }
            else
            {
                parts.Add(row.Point.Id, row.Point.PartKind, open, State(row.WithAllClosed), killers, When(row));
            }
        }

        parts.Write(output);
        rails.Write(output);
    }

    private static void WriteSwitches(TextWriter output, ControlTable table)
    {
        if (table.Switches.Count == 0)
        {
            return;
        }

        output.Write('\n');
        foreach (string id in table.Switches)
        {
            IReadOnlyList<string> killed = table.KilledBy(id);
            output.Write($"Opening {id} alone kills {(killed.Count == 0 ? "nothing" : string.Join(", ", killed))}.\n");
        }

        IReadOnlyList<string> everything = table.KillEverything;
        output.Write(everything.Count == 0
            ? "No single switch kills everything that is not meant to stay live.\n"
            : $"Everything that is not meant to stay live is killed by {string.Join(" alone, or by ", everything)} alone.\n");
    }

    private static string State(bool live) => live ? "live" : "dead";

    private static string When(ControlRow row) => row.LiveWhen switch
    {
        null => $"in {row.LiveStates} states",
        [] => "never",
        [{ Closed.Count: 0, Open.Count: 0 }] => "always",
        _ => string.Join(" or ", row.LiveWhen.Select(Words)),
    };

    private static string Words(LiveTerm term) =>
        string.Join(" + ", term.Closed.Concat(term.Open.Select(o => $"({o} open)")));

    private static bool Differs(ControlRow row, ControlRow other) =>
        row.WithAllOpen != other.WithAllOpen || row.WithAllClosed != other.WithAllClosed
        || row.LiveStates != other.LiveStates || !row.KilledBy.SequenceEqual(other.KilledBy);
}
