using System.Text.Json;
using WireCheck.Switching;

namespace WireCheck.Reports.Numbers;

/// <summary>The control table of a box for other programs.</summary>
public static class StatesJson
{
    /// <summary>Every table, row by row.</summary>
    public static void Write(Stream output, string file, string pack, SwitchingStudy study) =>
        NumbersJson.Write(output, file, pack, json =>
        {
            Names(json, "switches", study.Unplugged.Switches);
            Names(json, "left_open", study.LeftOpen);
            Names(json, "kill_everything", study.Unplugged.KillEverything);
            json.WriteStartArray("tables");
            foreach (ControlTable table in study.Tables)
            {
                WriteTable(json, table);
            }

            json.WriteEndArray();
            json.WriteStartArray("sneak_paths");
            foreach (SneakPath path in study.Sneaks)
            {
                WriteSneak(json, path);
            }

            json.WriteEndArray();
            json.WriteStartArray("negative_only");
            foreach (NegativeOnly negative in study.NegativeOnly)
            {
                json.WriteStartObject();
                json.WriteString("switch", negative.Switch);
                Names(json, "parts", negative.Parts);
                Names(json, "restored", negative.Restored);
                json.WriteEndObject();
            }

            json.WriteEndArray();
        });

    internal static void Names(Utf8JsonWriter json, string name, IEnumerable<string> names)
    {
        json.WriteStartArray(name);
        foreach (string each in names)
        {
            json.WriteStringValue(each);
        }

        json.WriteEndArray();
    }

    private static void WriteSneak(Utf8JsonWriter json, SneakPath path)
    {
        json.WriteStartObject();
        json.WriteString("kind", SneakWords.Kind(path.Kind));
        json.WriteString("part", path.PartId);
        json.WriteString("plugged", path.Plugs);
        Names(json, "closed", path.Closed);
        Names(json, "by", path.By);
        Names(json, "loop", path.Loop);
        NumbersJson.Number(json, path.Kind == SneakKind.SourceIntoSource ? "amps" : "volts", path.Size);
        json.WriteBoolean("drops_out", path.DropsOut);
        json.WriteEndObject();
    }

    private static void WriteTable(Utf8JsonWriter json, ControlTable table)
    {
        json.WriteStartObject();
        json.WriteString("plugged", table.Plugs.Id);
        json.WriteNumber("states", table.States);
        json.WriteBoolean("exhaustive", table.Exhaustive);
        json.WriteStartObject("kills");
        foreach (string id in table.Switches)
        {
            Names(json, id, table.KilledBy(id));
        }

        json.WriteEndObject();
        json.WriteStartArray("rows");
        foreach (ControlRow row in table.Rows)
        {
            WriteRow(json, row);
        }

        json.WriteEndArray();
        json.WriteEndObject();
    }

    private static void WriteRow(Utf8JsonWriter json, ControlRow row)
    {
        json.WriteStartObject();
        json.WriteString("id", row.Point.Id);
        json.WriteString("kind", row.Point.PartKind);
        if (row.Point.Kind == LivePointKind.Rail)
        {
            Names(json, "terminals", row.Point.Terminals);
        }

        json.WriteBoolean("meant", row.Meant);
        json.WriteBoolean("live_with_all_open", row.WithAllOpen);
        json.WriteBoolean("live_with_all_closed", row.WithAllClosed);
        Names(json, "killed_by", row.KilledBy);
        json.WriteBoolean("no_switch_kills", row.NoSwitchKills);
        json.WriteNumber("live_states", row.LiveStates);
        if (row.LiveWhen is null)
        {
            json.WriteNull("live_when");
        }
        else
        {
            json.WriteStartArray("live_when");
            foreach (LiveTerm term in row.LiveWhen)
            {
                json.WriteStartObject();
                Names(json, "closed", term.Closed);
                Names(json, "open", term.Open);
                json.WriteEndObject();
            }

            json.WriteEndArray();
        }

        json.WriteEndObject();
    }
}
