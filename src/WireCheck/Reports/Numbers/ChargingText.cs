using WireCheck.Numbers;
using WireCheck.Quantities;
using WireCheck.Reports.Text;

namespace WireCheck.Reports.Numbers;

/// <summary>How a box is charged and what flows back, as aligned tables for a terminal.</summary>
public static class ChargingText
{
    /// <summary>A current or voltage below this is printed as 0: less than any meter on a bench shows.</summary>
    private const double Smallest = 1e-9;

    /// <summary>Every table that has rows.</summary>
    public static void Write(TextWriter output, string title, ChargingNumbers charging)
    {
        output.Write($"{PlainText.Escape(title)}\n");
        if (charging.Sources.Count == 0)
        {
            output.Write("\nNothing that charges this box is described.\n");
        }

        WriteSources(output, charging);
        WriteVehicles(output, charging);
        WriteBack(output, charging);
        WriteReversed(output, charging);
    }

    private static void WriteSources(TextWriter output, ChargingNumbers charging)
    {
        TextTable sources = new("mode", "corner", "source", "current", "voltage", "limited by", "bank", "current", "voltage", "cell current", "cell voltage");
        foreach (SourceNumbers s in charging.Sources)
        {
            sources.Add(
                s.Mode, s.Corner, s.Source, Amps(s.Amps), Volts(s.Volts), s.Limit, s.Bank, Amps(s.BankAmps), Volts(s.BankVolts),
                Amps(s.CellAmps), Volts(s.CellVolts));
        }

        Write(output, "Charging, no load in use", charging.Sources.Count, sources);
        TextTable ends = new("mode", "corner", "bank", "end current", "bank voltage", "cell voltage");
        foreach (EndNumbers e in charging.Ends)
        {
            ends.Add(e.Mode, e.Corner, e.Bank, Amps(e.TailAmps), Volts(e.BankVolts), Volts(e.CellVolts));
        }

        Write(output, "Where the charge ends by itself", charging.Ends.Count, ends);
        TextTable open = new("mode", "cell current", "voltage at the source");
        foreach (BmsOpenNumbers b in charging.BmsOpen)
        {
            open.Add(b.Mode, Amps(b.CellAmps), Volts(b.SourceVolts));
        }

        Write(output, "With the BMS open", charging.BmsOpen.Count, open);
        TextTable loads = new("load", "lowest", "in", "highest", "in");
        foreach (LoadNumbers l in charging.Loads)
        {
            loads.Add(l.Load, Volts(l.LowestVolts), l.LowestMode, Volts(l.HighestVolts), l.HighestMode);
        }

        Write(output, "Loads while something charges", charging.Loads.Count, loads);
    }

    private static void WriteVehicles(TextWriter output, ChargingNumbers charging)
    {
        TextTable vehicles = new("vehicle", "bank", "charge", "engine", "current", "bank voltage", "cell current", "");
        foreach (VehicleNumbers v in charging.Vehicles)
        {
            vehicles.Add(
                v.Vehicle, v.Bank, NumberWords.Percent(v.StateOfCharge), v.EngineRuns ? "running" : "off", Amps(v.Amps),
                Volts(v.BankVolts), Amps(v.CellAmps), v.Peak ? "peak" : "");
        }

        Write(output, "A vehicle through nothing but wire", charging.Vehicles.Count, vehicles);
    }

    private static void WriteBack(TextWriter output, ChargingNumbers charging)
    {
        TextTable nights = new("takes from the cells", "current", "when");
        foreach (NightNumbers n in charging.Nights)
        {
            nights.Add(n.Id, Amps(n.Amps), n.Words);
        }

        Write(output, "What flows back", charging.Nights.Count, nights);
        TextTable shorts = new("port", "voltage with nothing plugged in", "through a tool across its pins");
        foreach (ShortNumbers s in charging.Shorts)
        {
            shorts.Add(s.Port, Volts(s.OpenVolts), Amps(s.Amps));
        }

        Write(output, "Ports that take charge, full cells", charging.Shorts.Count, shorts);
        TextTable cold = new("at", "open circuit at 25 °C", "open circuit", "at", "rise for each kelvin");
        foreach (ColdNumbers c in charging.Cold)
        {
            cold.Add(c.Id, Volts(c.Volts), Volts(c.ColdVolts), QuantityText.WithUnit(c.Celsius, "°C"), QuantityText.WithUnit(c.RisePerKelvin * 100, "%"));
        }

        Write(output, "Panels in the cold", charging.Cold.Count, cold);
    }

    private static void WriteReversed(TextWriter output, ChargingNumbers charging)
    {
        TextTable reversed = new("port", "source", "first current", "fuses that open", "goes on", "reversed inputs");
        foreach (ReversedNumbers r in charging.Reversed)
        {
            if (r.Keyed)
            {
                reversed.Add(r.Port, r.Source, "", "", "", "keyed: it fits one way only");
            }
            else
            {
                reversed.Add(
                    r.Port, r.Source, Amps(r.Amps), string.Join(", ", r.Opens), Amps(r.LeftAmps),
                    string.Join(", ", r.Reversed.Concat(r.Undecided)));
            }
        }

        Write(output, "A plug the wrong way round", charging.Reversed.Count, reversed);
        TextTable joins = new("string", "joined to", "apart by", "current", "full onto empty");
        foreach (JoinNumbers j in charging.Joins)
        {
            joins.Add(
                j.Bank, string.Join(", ", j.Others), j.DifferenceVolts is { } volts ? Volts(volts) : "not described",
                j.Amps is { } amps ? Amps(amps) : "", j.FullOntoEmptyAmps is { } worst ? Amps(worst) : "");
        }

        Write(output, "Strings when they are joined", charging.Joins.Count, joins);
    }

    private static void Write(TextWriter output, string heading, int rows, TextTable table)
    {
        if (rows > 0)
        {
            output.Write($"\n{heading}\n");
            table.Write(output);
        }
    }

    private static string Amps(double amps) => QuantityText.WithPrefix(Math.Abs(amps) < Smallest ? 0 : amps, "A");

    private static string Volts(double volts) => QuantityText.WithPrefix(Math.Abs(volts) < Smallest ? 0 : volts, "V");
}
