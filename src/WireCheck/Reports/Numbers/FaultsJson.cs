using System.Text.Json;
using WireCheck.Numbers;

namespace WireCheck.Reports.Numbers;

/// <summary>The shorts of a box for other programs.</summary>
public static class FaultsJson
{
    /// <summary>Every place, the devices in series, what each device must break, the single faults.</summary>
    public static void Write(Stream output, string file, string pack, FaultNumbers faults, IReadOnlyList<SingleFaultRow> singleFaults) =>
        NumbersJson.Write(output, file, pack, json =>
        {
            SingleFaultJson.WriteArray(json, singleFaults);
            json.WriteStartArray("faults");
            foreach (PlaceNumbers place in faults.Places)
            {
                WritePlace(json, place);
            }

            json.WriteEndArray();
            json.WriteStartArray("series");
            foreach (SeriesNumbers pair in faults.Series)
            {
                json.WriteStartObject();
                json.WriteString("downstream", pair.Downstream);
                json.WriteString("upstream", pair.Upstream);
                NumbersJson.Number(json, "lowest_amps", pair.LowestAmps);
                NumbersJson.Number(json, "highest_amps", pair.HighestAmps);
                NumbersJson.Number(json, "together_from_amps", pair.OverlapFrom);
                NumbersJson.Number(json, "together_to_amps", pair.OverlapTo);
                WriteNames(json, "dark", pair.Dark);
                json.WriteEndObject();
            }

            json.WriteEndArray();
            json.WriteStartArray("breaking");
            foreach (BreakingNumbers device in faults.Breaking)
            {
                json.WriteStartObject();
                json.WriteString("device", device.Device);
                NumbersJson.Number(json, "highest_amps", device.HighestAmps);
                NumbersJson.Number(json, "volts", device.Volts);
                NumbersJson.Number(json, "breaking_amps", device.BreakingAmps);
                NumbersJson.Number(json, "loop_time_constant", device.LoopSeconds);
                json.WriteEndObject();
            }

            json.WriteEndArray();
        });

    private static void WritePlace(Utf8JsonWriter json, PlaceNumbers place)
    {
        json.WriteStartObject();
        json.WriteString("part", place.Part);
        json.WriteString("at", place.Place);
        WriteShort(json, "highest", place.Highest);
        WriteShort(json, "lowest", place.Lowest);
        WriteShort(json, "highest_to_case", place.HighestToCase);
        WriteShort(json, "lowest_to_case", place.LowestToCase);
        json.WriteEndObject();
    }

    private static void WriteShort(Utf8JsonWriter json, string name, FaultShort? numbers)
    {
        if (numbers is null)
        {
            json.WriteNull(name);
            return;
        }

        json.WriteStartObject(name);
        json.WriteString("source", numbers.Source);
        json.WriteString("to", numbers.To);
        NumbersJson.Number(json, "amps", numbers.Amps);
        json.WriteStartArray("openings");
        foreach (OpeningNumbers opening in numbers.Openings)
        {
            json.WriteStartObject();
            json.WriteString("device", opening.Device);
            NumbersJson.Number(json, "seconds", opening.Seconds);
            NumbersJson.Number(json, "amps", opening.Amps);
            json.WriteEndObject();
        }

        json.WriteEndArray();
        NumbersJson.Number(json, "seconds", numbers.Seconds);
        NumbersJson.Number(json, "sustained_amps", numbers.SustainedAmps);
        NumbersJson.Number(json, "let_through", numbers.LetThrough);
        json.WriteString("hottest_conductor", numbers.HottestConductor);
        NumbersJson.Number(json, "hottest_celsius", numbers.HottestCelsius);
        NumbersJson.Number(json, "hottest_limit_celsius", numbers.HottestLimitCelsius);
        json.WriteString("bms", numbers.Bms);
        NumbersJson.Number(json, "bms_seconds", numbers.BmsSeconds);
        WriteNames(json, "dark", numbers.Dark);
        json.WriteEndObject();
    }

    private static void WriteNames(Utf8JsonWriter json, string name, IReadOnlyList<string> names)
    {
        json.WriteStartArray(name);
        foreach (string one in names)
        {
            json.WriteStringValue(one);
        }

        json.WriteEndArray();
    }
}
