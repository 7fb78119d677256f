using System.Text.Json;
using WireCheck.Energy;
using WireCheck.Numbers;

namespace WireCheck.Reports.Numbers;

/// <summary>How long a box runs and charges, for other programs: SI units, nine significant digits.</summary>
public static class EnergyJson
{
    /// <summary>What is counted on, runs, charges, days.</summary>
    public static void Write(Stream output, string file, string pack, EnergyNumbers energy) =>
        NumbersJson.Write(output, file, pack, json =>
        {
            NumbersJson.Number(json, "label_joules", energy.LabelJoules);
            NumbersJson.Number(json, "counted_fresh_coulombs", energy.CountedFresh);
            NumbersJson.Number(json, "counted_aged_coulombs", energy.CountedAged);
            WriteRuns(json, "modes", energy.Modes);
            WriteRuns(json, "charges", energy.Charges);
            json.WriteStartArray("days");
            foreach (DayMarch days in energy.Days)
            {
                WriteDays(json, days);
            }

            json.WriteEndArray();
        });

    private static void WriteRuns(Utf8JsonWriter json, string name, IReadOnlyList<ModeEnergy> modes)
    {
        json.WriteStartArray(name);
        foreach (ModeEnergy mode in modes)
        {
            ModeRun run = mode.Run;
            json.WriteStartObject();
            json.WriteString("mode", run.Mode);
            json.WriteString("cells", run.Condition.Words);
            json.WriteString("direction", run.Direction switch
            {
                TrailDirection.Discharging => "discharging",
                TrailDirection.Charging => "charging",
                _ => "still",
            });
            NumbersJson.Number(json, "seconds", Finite(run.Seconds));
            NumbersJson.Number(json, "mean_amps", run.MeanAmps);
            NumbersJson.Number(json, "end_charge", Finite(run.EndCharge));
            NumbersJson.Number(json, "left_coulombs", Finite(run.LeftCoulombs));
            NumbersJson.Number(json, "cell_celsius", run.CellCelsius);
            NumbersJson.Number(json, "inside_celsius", run.InsideCelsius);
            WriteEnd(json, run.End);
            NumbersJson.Number(json, "given_joules", mode.Given);
            NumbersJson.Number(json, "used_joules", mode.Used);
            NumbersJson.Number(json, "lost_joules", mode.Lost);
            json.WriteStartArray("parts");
            foreach (PartEnergy part in mode.Parts)
            {
                json.WriteStartObject();
                json.WriteString("part", part.Id);
                json.WriteString("kind", part.Kind);
                NumbersJson.Number(json, "given_joules", part.Given);
                NumbersJson.Number(json, "used_joules", part.Used);
                NumbersJson.Number(json, "lost_joules", part.Lost);
                json.WriteEndObject();
            }

            json.WriteEndArray();
            json.WriteEndObject();
        }

        json.WriteEndArray();
    }

    private static void WriteDays(Utf8JsonWriter json, DayMarch days)
    {
        json.WriteStartObject();
        json.WriteString("cells", days.Condition.Words);
        json.WriteString("rest_mode", days.RestMode);
        json.WriteStartArray("steps");
        foreach (DayStep step in days.Steps)
        {
            json.WriteStartObject();
            json.WriteNumber("day", step.Day);
            json.WriteString("mode", step.Mode);
            NumbersJson.Number(json, "seconds", step.Seconds);
            NumbersJson.Number(json, "ran_seconds", step.Ran);
            NumbersJson.Number(json, "charge_before", step.Before);
            NumbersJson.Number(json, "charge_after", step.After);
            if (step.End is { } end)
            {
                WriteEnd(json, end);
            }

            json.WriteEndObject();
        }

        json.WriteEndArray();
        json.WriteEndObject();
    }

    private static void WriteEnd(Utf8JsonWriter json, RunEnd end)
    {
        json.WriteString("ended_by", EnergyWords.Name(end.Kind));
        json.WriteString("ending_part", end.PartId);
        NumbersJson.Number(json, "ending_volts", Finite(end.Volts));
    }

    private static double? Finite(double value) => double.IsFinite(value) ? value : null;
}
