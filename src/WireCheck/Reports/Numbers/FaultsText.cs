using WireCheck.Numbers;
using WireCheck.Quantities;
using WireCheck.Reports.Text;

namespace WireCheck.Reports.Numbers;

/// <summary>The shorts of a box as aligned tables for a terminal.</summary>
public static class FaultsText
{
    /// <summary>Every place, the devices in series, what each device must break.</summary>
    public static void Write(TextWriter output, string title, FaultNumbers faults)
    {
        output.Write($"{PlainText.Escape(title)}\n\nA bolted short at each place, every contact closed. Highest: all sources, full, straight to the bank's negative.\n");
        output.Write("Lowest: one source, empty and cold, back by the place's own return. Each device at its slowest; a BMS is taken for a wire.\n");
        TextTable places = new("part", "at", "highest", "lowest", "from", "cleared by", "within", "hottest", "reaches", "stands", "goes dark", "BMS");
        foreach (PlaceNumbers place in faults.Places)
        {
            Add(places, place.Part, place.Place, place.Highest, place.Lowest);
        }

        places.Write(output);
        WriteCase(output, faults);
        output.Write("\nDevices in series: the range of faults behind both, and where the upstream one may open before the other has cleared.\n");
        TextTable series = new("downstream", "upstream", "faults from", "to", "together from", "to", "then dark");
        foreach (SeriesNumbers pair in faults.Series)
        {
            series.Add(
                pair.Downstream, pair.Upstream, Amps(pair.LowestAmps), Amps(pair.HighestAmps),
                pair.OverlapFrom is { } from ? Amps(from) : "never", pair.OverlapTo is { } to ? Amps(to) : "", Names(pair.Dark));
        }

        series.Write(output);
        output.Write("\nWhat each device must break. The loop's inductance over its resistance tells how long it drives current on through the arc; a\n");
        output.Write("breaking capacity for direct current is proved at a time constant that the part's sheet names, and a longer one leaves more to burn.\n");
        TextTable breaking = new("device", "highest", "at", "can break", "time constant of the loop");
        foreach (BreakingNumbers device in faults.Breaking)
        {
            breaking.Add(
                device.Device, device.HighestAmps is { } amps ? Amps(amps) : "none", QuantityText.WithUnit(device.Volts, "V"),
                device.BreakingAmps is { } can ? Amps(can) : "not for that voltage",
                device.LoopSeconds is { } seconds ? QuantityText.Time(seconds) : "");
        }

        breaking.Write(output);
    }

    private static void WriteCase(TextWriter output, FaultNumbers faults)
    {
        TextTable places = new("part", "at", "highest", "lowest", "from", "cleared by", "within", "hottest", "reaches", "stands", "goes dark", "BMS");
        bool any = false;
        foreach (PlaceNumbers place in faults.Places)
        {
            if (place.HighestToCase is not null || place.LowestToCase is not null)
            {
                any = true;
                Add(places, place.Part, place.Place, place.HighestToCase, place.LowestToCase);
            }
        }

        if (any)
        {
            output.Write("\nThe same to the metal case.\n");
            places.Write(output);
        }
    }

    private static void Add(TextTable table, string part, string at, FaultShort? highest, FaultShort? lowest)
    {
        FaultShort clearing = lowest ?? highest!;
        FaultShort hottest = highest is not null && highest.HottestShare > clearing.HottestShare ? highest : clearing;
        table.Add(
            part,
            at,
            highest is null ? "" : Amps(highest.Amps),
            lowest is null ? "" : Amps(lowest.Amps),
            clearing.Source,
            clearing.Openings.Count == 0 ? "nothing" : string.Join(", ", clearing.Openings.Select(o => o.Device)),
            clearing.Seconds is { } seconds ? QuantityText.Time(seconds) : $"{Amps(clearing.SustainedAmps)} goes on",
            hottest.HottestConductor ?? "",
            hottest.HottestCelsius is { } celsius ? Celsius(celsius) : "",
            hottest.HottestLimitCelsius is { } limit ? Celsius(limit) : "",
            Names(clearing.Dark),
            clearing.Bms is null ? "" : $"{clearing.Bms} in {QuantityText.Time(clearing.BmsSeconds ?? 0)}");
    }

    private static string Names(IReadOnlyList<string> names) => names.Count == 0 ? "nothing" : string.Join(", ", names);

    private static string Amps(double amps) => QuantityText.WithPrefix(amps, "A");

    private static string Celsius(double celsius) => FormattableString.Invariant($"{Math.Round(celsius)} °C");
}
