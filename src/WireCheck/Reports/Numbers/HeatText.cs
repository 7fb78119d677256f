using WireCheck.Numbers;
using WireCheck.Quantities;
using WireCheck.Reports.Text;

namespace WireCheck.Reports.Numbers;

/// <summary>How warm a box gets, as aligned tables for a terminal.</summary>
public static class HeatText
{
    /// <summary>Parts of a mode that are told; the JSON has all.</summary>
    private const int MostParts = 8;

    /// <summary>The air per mode, what makes the heat, the conductors, the joints.</summary>
    public static void Write(TextWriter output, string title, HeatNumbers heat)
    {
        output.Write($"{PlainText.Escape(title)}\n");
        WriteModes(output, heat);
        WriteConductors(output, heat);
        WriteJoints(output, heat);
    }

    private static void WriteModes(TextWriter output, HeatNumbers heat)
    {
        output.Write("\nAir in the box after hours in its hottest surroundings, joints and cells aged\n");
        TextTable modes = new("mode", "cells", "around", "inside", "by the simple rule", "heat", "");
        foreach (ModeHeat mode in heat.Modes)
        {
            modes.Add(
                mode.Mode, mode.Corner, Celsius(mode.AmbientCelsius), Celsius(mode.InsideCelsius), Celsius(mode.SimpleInsideCelsius),
                Watts(mode.Watts), !mode.Lasts ? "cannot last" : mode.Charging ? "charging" : "");
        }

        modes.Write(output);
        foreach (ModeHeat mode in heat.Modes)
        {
            TextTable parts = new("makes heat", "kind", "power");
            foreach (PartHeat part in mode.Parts.Take(MostParts))
            {
                parts.Add(part.Id, part.Kind, Watts(part.Watts));
            }

            if (mode.Parts.Count > 0)
            {
                output.Write($"\n{mode.Mode}: {Watts(mode.Watts)}\n");
                parts.Write(output);
            }
        }
    }

    private static void WriteConductors(TextWriter output, HeatNumbers heat)
    {
        output.Write("\nConductors, hottest first\n");
        TextTable table = new("conductor", "in", "current", "heats as", "temperature", "insulation", "table allows", "time constant");
        foreach (ConductorWarmth wire in heat.Conductors)
        {
            table.Add(wire.Id, wire.Mode, Amps(wire.Amps), Amps(wire.HeatingAmps), Celsius(wire.Celsius), Celsius(wire.LimitCelsius), Amps(wire.Ampacity),
                QuantityText.WithUnit(Math.Round(wire.TimeConstant), "s"));
        }

        table.Write(output);
    }

    private static void WriteJoints(TextWriter output, HeatNumbers heat)
    {
        output.Write("\nJoints, most heat first; measure each at the test current: more than twice what a new one drops wants a second look\n");
        TextTable table = new("part", "joint", "in", "current", "heat", "above its wire", "in all", "test", "new", "aged");
        foreach (JointNumbers joint in heat.Joints)
        {
            table.Add(
                joint.Part, joint.Where, joint.Mode, Amps(joint.Amps), Watts(joint.Watts),
                joint.RiseKelvin is { } rise ? QuantityText.WithUnit(Math.Round(rise, 1), "K") : "",
                joint.Celsius is { } celsius ? Celsius(celsius) : "",
                Amps(joint.TestAmps), QuantityText.WithPrefix(joint.NewVolts, "V"), QuantityText.WithPrefix(joint.AgedVolts, "V"));
        }

        table.Write(output);
    }

    private static string Celsius(double value) => QuantityText.WithUnit(Math.Round(value, 1), "°C");

    private static string Amps(double value) => QuantityText.WithPrefix(value < Smallest ? 0 : value, "A");

    private static string Watts(double value) => QuantityText.WithPrefix(value < Smallest ? 0 : value, "W");

    /// <summary>Less than this is printed as 0.</summary>
    private const double Smallest = 1e-9;
}
