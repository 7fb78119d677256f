using System.Text.Json;
using WireCheck.Numbers;

namespace WireCheck.Reports.Numbers;

/// <summary>How a box is charged and what flows back, for other programs: SI units, nine significant digits.</summary>
public static class ChargingJson
{
    /// <summary>Every table, also an empty one.</summary>
    public static void Write(Stream output, string file, string pack, ChargingNumbers charging) =>
        NumbersJson.Write(output, file, pack, json =>
        {
            WriteSources(json, charging);
            WriteVehicles(json, charging);
            WriteBack(json, charging);
            WriteReversed(json, charging);
        });

    private static void WriteSources(Utf8JsonWriter json, ChargingNumbers charging)
    {
        Table(json, "sources", charging.Sources, s =>
        {
            Words(json, ("mode", s.Mode), ("corner", s.Corner), ("source", s.Source), ("limit", s.Limit), ("bank", s.Bank));
            Numbers(
                json, ("amps", s.Amps), ("volts", s.Volts), ("bank_amps", s.BankAmps), ("bank_volts", s.BankVolts),
                ("cell_amps", s.CellAmps), ("cell_volts", s.CellVolts));
        });
        Table(json, "ends", charging.Ends, e =>
        {
            Words(json, ("mode", e.Mode), ("corner", e.Corner), ("bank", e.Bank));
            Numbers(json, ("tail_amps", e.TailAmps), ("bank_volts", e.BankVolts), ("cell_volts", e.CellVolts));
        });
        Table(json, "bms_open", charging.BmsOpen, b =>
        {
            Words(json, ("mode", b.Mode));
            Numbers(json, ("cell_amps", b.CellAmps), ("source_volts", b.SourceVolts));
        });
        Table(json, "loads", charging.Loads, l =>
        {
            Words(json, ("load", l.Load), ("lowest_mode", l.LowestMode), ("highest_mode", l.HighestMode));
            Numbers(json, ("lowest_volts", l.LowestVolts), ("highest_volts", l.HighestVolts));
        });
    }

    private static void WriteVehicles(Utf8JsonWriter json, ChargingNumbers charging) =>
        Table(json, "vehicles", charging.Vehicles, v =>
        {
            Words(json, ("vehicle", v.Vehicle), ("bank", v.Bank));
            json.WriteBoolean("engine_runs", v.EngineRuns);
            json.WriteBoolean("peak", v.Peak);
            Numbers(json, ("state_of_charge", v.StateOfCharge), ("amps", v.Amps), ("bank_volts", v.BankVolts), ("cell_amps", v.CellAmps));
        });

    private static void WriteBack(Utf8JsonWriter json, ChargingNumbers charging)
    {
        Table(json, "flows_back", charging.Nights, n =>
        {
            Words(json, ("part", n.Id), ("when", n.Words));
            Numbers(json, ("amps", n.Amps));
        });
        Table(json, "empty_ports", charging.Shorts, s =>
        {
            Words(json, ("port", s.Port));
            Numbers(json, ("open_volts", s.OpenVolts), ("short_amps", s.Amps));
        });
        Table(json, "panels_cold", charging.Cold, c =>
        {
            Words(json, ("at", c.Id));
            Numbers(json, ("volts", c.Volts), ("cold_volts", c.ColdVolts), ("celsius", c.Celsius), ("rise_per_kelvin", c.RisePerKelvin));
        });
    }

    private static void WriteReversed(Utf8JsonWriter json, ChargingNumbers charging)
    {
        Table(json, "reversed", charging.Reversed, r =>
        {
            Words(json, ("port", r.Port), ("source", r.Source));
            json.WriteBoolean("keyed", r.Keyed);
            Numbers(json, ("amps", r.Keyed ? null : r.Amps), ("left_amps", r.Keyed ? null : r.LeftAmps));
            Names(json, "opens", r.Opens);
            Names(json, "reversed", r.Reversed);
            Names(json, "undecided", r.Undecided);
        });
        Table(json, "joins", charging.Joins, j =>
        {
            Words(json, ("bank", j.Bank));
            Names(json, "others", j.Others);
            Numbers(json, ("difference_volts", j.DifferenceVolts), ("amps", j.Amps), ("full_onto_empty_amps", j.FullOntoEmptyAmps));
        });
    }

    private static void Table<T>(Utf8JsonWriter json, string name, IReadOnlyList<T> rows, Action<T> write)
    {
        json.WriteStartArray(name);
        foreach (T row in rows)
        {
            json.WriteStartObject();
            write(row);
            json.WriteEndObject();
        }

        json.WriteEndArray();
    }

    private static void Words(Utf8JsonWriter json, params (string Name, string Value)[] words)
    {
        foreach ((string name, string value) in words)
        {
            json.WriteString(name, value);
        }
    }

    private static void Numbers(Utf8JsonWriter json, params (string Name, double? Value)[] numbers)
    {
        foreach ((string name, double? value) in numbers)
        {
            NumbersJson.Number(json, name, value);
        }
    }

    private static void Names(Utf8JsonWriter json, string name, IReadOnlyList<string> values)
    {
        json.WriteStartArray(name);
        foreach (string value in values)
        {
            json.WriteStringValue(value);
        }

        json.WriteEndArray();
    }
}
