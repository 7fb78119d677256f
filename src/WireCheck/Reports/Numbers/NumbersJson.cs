using System.Globalization;
using System.Text.Json;
using WireCheck.Numbers;
using WireCheck.Standby;
using WireCheck.Reports.Json;

namespace WireCheck.Reports.Numbers;

/// <summary>Numbers of a box for other programs: SI units, nine significant digits, the same bytes for the same input.</summary>
public static class NumbersJson
{
    /// <summary>Every state.</summary>
    public static void WriteModes(Stream output, string file, string pack, IReadOnlyList<StateNumbers> states) =>
        Write(output, file, pack, json =>
        {
            json.WriteStartArray("states");
            foreach (StateNumbers state in states)
            {
                WriteState(json, state);
            }

            json.WriteEndArray();
        });

    /// <summary>The standby.</summary>
    public static void WriteStandby(Stream output, string file, string pack, StandbyNumbers standby) =>
        Write(output, file, pack, json =>
        {
            json.WriteStartArray("standby");
            foreach (StandbyAtRest state in standby.States)
            {
                WriteStandbyState(json, state);
            }

            json.WriteEndArray();
            WriteMoves(json, "moves", standby.Moves);
            WriteMoves(json, "moves_left_plugged", standby.MovesLeftPlugged);
        });

    private static void WriteMoves(Utf8JsonWriter json, string name, IReadOnlyList<Move> moves)
    {
        json.WriteStartArray(name);
        foreach (Move move in moves)
        {
            json.WriteStartObject();
            json.WriteString("part", move.PartId);
            json.WriteString("behind", move.Behind);
            json.WriteBoolean("meant_to_stay_live", move.MeantLive);
            Number(json, "amps", move.Amps);
            WriteLife(json, move.Life);
            json.WriteEndObject();
        }

        json.WriteEndArray();
    }

    private static void WriteStandbyState(Utf8JsonWriter json, StandbyAtRest state)
    {
        json.WriteStartObject();
        json.WriteString("mode", state.Mode);
        json.WriteString("corner", state.Corner);
        Number(json, "amps", state.Amps);
        json.WriteStartArray("consumers");
        foreach (StandbyConsumer consumer in state.Consumers)
        {
            json.WriteStartObject();
            json.WriteString("part", consumer.Id);
            Number(json, "amps", consumer.Amps);
            Number(json, "share", consumer.Share);
            json.WriteStartArray("chain");
            foreach (string id in consumer.Chain)
            {
                json.WriteStringValue(id);
            }

            json.WriteEndArray();
            json.WriteEndObject();
        }

        json.WriteEndArray();
        WriteLife(json, state.Life);
        json.WriteEndObject();
    }

    private static void WriteLife(Utf8JsonWriter json, ShelfLife life)
    {
        Number(json, "self_discharge_amps", life.SelfDischargeAmps);
        Number(json, "amps_after_cut_off", life.AmpsAfterCutOff);
        Number(json, "seconds_to_cut_off", life.ToCutOff);
        Number(json, "seconds_from_cut_off_to_damage", life.ToDamage);
    }

    /// <summary>The frame of every answer: file, title, and what the body writes.</summary>
    internal static void Write(Stream output, string file, string pack, Action<Utf8JsonWriter> body)
    {
        using (Utf8JsonWriter json = new(output, JsonReport.WriterOptions))
        {
            json.WriteStartObject();
            json.WriteString("file", file);
            json.WriteString("pack", pack);
            body(json);
            json.WriteEndObject();
        }

        output.WriteByte((byte)'\n');
    }

    private static void WriteState(Utf8JsonWriter json, StateNumbers state)
    {
        json.WriteStartObject();
        json.WriteString("mode", state.Mode);
        json.WriteString("corner", state.Corner);
        json.WriteBoolean("solved", state.Solved);
        Number(json, "residual_amps", state.ResidualAmps);
        json.WriteStartObject("conductors");
        foreach (ConductorNumbers wire in state.Conductors)
        {
            json.WriteStartObject(wire.Id);
            Number(json, "amps", wire.Amps);
            Number(json, "drop_volts", wire.DropVolts);
            Number(json, "loss_watts", wire.LossWatts);
            json.WriteEndObject();
        }

        json.WriteEndObject();
        json.WriteStartObject("parts");
        foreach (PartNumbers part in state.Parts)
        {
            json.WriteStartObject(part.Id);
            json.WriteString("kind", part.Kind);
            json.WriteString("state", part.State);
            Number(json, "amps", part.Amps);
            Number(json, "watts", part.Watts);
            json.WriteEndObject();
        }

        json.WriteEndObject();
        json.WriteStartObject("terminals");
        foreach (TerminalNumbers terminal in state.Terminals)
        {
            Number(json, terminal.Name, terminal.Above is null ? terminal.Volts : null);
        }

        json.WriteEndObject();
        json.WriteStartObject("terminals_apart");
        foreach (TerminalNumbers terminal in state.Terminals.Where(t => t.Above is not null))
        {
            json.WriteStartObject(terminal.Name);
            Number(json, "volts", terminal.Volts);
            json.WriteString("above", terminal.Above);
            json.WriteEndObject();
        }

        json.WriteEndObject();
        json.WriteStartArray("stray_terminals");
        foreach (TerminalNumbers terminal in state.Terminals.Where(t => t.Stray))
        {
            json.WriteStringValue(terminal.Name);
        }

        json.WriteEndArray();
        json.WriteEndObject();
    }

    internal static void Number(Utf8JsonWriter json, string name, double? value)
    {
        if (value is { } number && double.IsFinite(number))
        {
            json.WritePropertyName(name);
            json.WriteRawValue(double.Parse(
                number.ToString("G9", CultureInfo.InvariantCulture), CultureInfo.InvariantCulture).ToString("R", CultureInfo.InvariantCulture));
        }
        else
        {
            json.WriteNull(name);
        }
    }
}
