using System.Text.Json;
using WireCheck.Numbers;

namespace WireCheck.Reports.Numbers;

/// <summary>How warm a box gets, for other programs: SI units and °C, nine significant digits.</summary>
public static class HeatJson
{
    /// <summary>Modes, conductors and joints.</summary>
    public static void Write(Stream output, string file, string pack, HeatNumbers heat) =>
        NumbersJson.Write(output, file, pack, json =>
        {
            json.WriteStartArray("modes");
            foreach (ModeHeat mode in heat.Modes)
            {
                WriteMode(json, mode);
            }

            json.WriteEndArray();
            json.WriteStartArray("conductors");
            foreach (ConductorWarmth wire in heat.Conductors)
            {
                json.WriteStartObject();
                json.WriteString("conductor", wire.Id);
                json.WriteString("mode", wire.Mode);
                NumbersJson.Number(json, "amps", wire.Amps);
                NumbersJson.Number(json, "heating_amps", wire.HeatingAmps);
                NumbersJson.Number(json, "celsius", wire.Celsius);
                NumbersJson.Number(json, "limit_celsius", wire.LimitCelsius);
                NumbersJson.Number(json, "ampacity_amps", wire.Ampacity);
                NumbersJson.Number(json, "time_constant_seconds", wire.TimeConstant);
                json.WriteEndObject();
            }

            json.WriteEndArray();
            json.WriteStartArray("joints");
            foreach (JointNumbers joint in heat.Joints)
            {
                WriteJoint(json, joint);
            }

            json.WriteEndArray();
        });

    private static void WriteMode(Utf8JsonWriter json, ModeHeat mode)
    {
        json.WriteStartObject();
        json.WriteString("mode", mode.Mode);
        json.WriteString("corner", mode.Corner);
        json.WriteBoolean("lasts", mode.Lasts);
        json.WriteBoolean("charging", mode.Charging);
        NumbersJson.Number(json, "ambient_celsius", mode.AmbientCelsius);
        NumbersJson.Number(json, "inside_celsius", mode.InsideCelsius);
        NumbersJson.Number(json, "simple_inside_celsius", mode.SimpleInsideCelsius);
        NumbersJson.Number(json, "watts", mode.Watts);
        json.WriteStartArray("parts");
        foreach (PartHeat part in mode.Parts)
        {
            json.WriteStartObject();
            json.WriteString("part", part.Id);
            json.WriteString("kind", part.Kind);
            NumbersJson.Number(json, "watts", part.Watts);
            json.WriteEndObject();
        }

        json.WriteEndArray();
        json.WriteEndObject();
    }

    private static void WriteJoint(Utf8JsonWriter json, JointNumbers joint)
    {
        json.WriteStartObject();
        json.WriteString("part", joint.Part);
        json.WriteString("where", joint.Where);
        json.WriteString("mode", joint.Mode);
        NumbersJson.Number(json, "amps", joint.Amps);
        NumbersJson.Number(json, "watts", joint.Watts);
        NumbersJson.Number(json, "rise_kelvin", joint.RiseKelvin);
        NumbersJson.Number(json, "celsius", joint.Celsius);
        NumbersJson.Number(json, "test_amps", joint.TestAmps);
        NumbersJson.Number(json, "new_volts", joint.NewVolts);
        NumbersJson.Number(json, "aged_volts", joint.AgedVolts);
        json.WriteEndObject();
    }
}
