using System.Text.Json;
using WireCheck.Numbers;

namespace WireCheck.Reports.Numbers;

/// <summary>The table of single faults for other programs: SI units, nine significant digits.</summary>
public static class SingleFaultJson
{
    /// <summary>Writes the table as the array <c>single_faults</c> of the object that is open.</summary>
    public static void WriteArray(Utf8JsonWriter json, IReadOnlyList<SingleFaultRow> rows)
    {
        ArgumentNullException.ThrowIfNull(json);
        json.WriteStartArray("single_faults");
        foreach (SingleFaultRow row in rows)
        {
            json.WriteStartObject();
            json.WriteString("fault", row.What);
            json.WriteString("part", row.PartId);
            json.WriteString("mode", row.Mode);
            json.WriteStartArray("over_ampacity");
            foreach (OverloadedConductor wire in row.Conductors)
            {
                json.WriteStartObject();
                json.WriteString("conductor", wire.Id);
                NumbersJson.Number(json, "amps", wire.Amps);
                NumbersJson.Number(json, "ampacity", wire.Ampacity);
                json.WriteEndObject();
            }

            json.WriteEndArray();
            json.WriteStartArray("over_window");
            foreach (OverdrivenConsumer consumer in row.Consumers)
            {
                json.WriteStartObject();
                json.WriteString("part", consumer.Id);
                NumbersJson.Number(json, "volts", consumer.Volts);
                NumbersJson.Number(json, "limit", consumer.Limit);
                json.WriteEndObject();
            }

            json.WriteEndArray();
            Names(json, "cannot_be_switched_off", row.StaysOn);
            Names(json, "goes_dark", row.Dark);
            json.WriteEndObject();
        }

        json.WriteEndArray();
    }

    private static void Names(Utf8JsonWriter json, string name, IReadOnlyList<string> ids)
    {
        json.WriteStartArray(name);
        foreach (string id in ids)
        {
            json.WriteStringValue(id);
        }

        json.WriteEndArray();
    }
}
