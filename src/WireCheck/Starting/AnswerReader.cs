using WireCheck.Description;
using WireCheck.Knowledge;
using WireCheck.Quantities;
using WireCheck.Text;

namespace WireCheck.Starting;

/// <summary>Reads what was typed into answers, and words every mistake.</summary>
public static class AnswerReader
{
    /// <summary>Nominal voltages of a box.</summary>
    public static IReadOnlyList<int> Voltages { get; } = [12, 24, 48];

    /// <summary>Ways to charge.</summary>
    public static IReadOnlyList<string> WaysToCharge { get; } = ["mains", "solar", "vehicle"];

    /// <summary>More loads than this do not fit one bar and one converter.</summary>
    private const int MostLoads = 8;

    private const int LongestTitle = 100;

    private const string DefaultPanel = "100 W";

    /// <summary>The answers; null with every mistake added where there is one.</summary>
    public static StartingAnswers? Read(AnswerWords words, ICollection<string> mistakes)
    {
        int before = mistakes.Count;
        int volts = Volts(words.Volts ?? "", mistakes);
        double capacity = Number(words.Capacity ?? "", ElectricKinds.Charge, mistakes) / SecondsPerHour;
        IReadOnlyList<AskedLoad> loads = Loads(words.Loads, mistakes);
        IReadOnlyList<AskedLoad> mains = Loads(words.MainsLoads, mistakes);
        double inverter = words.Inverter is null ? 0 : Number(words.Inverter, ElectricKinds.Power, mistakes);
        IReadOnlyList<string> charging = Charging(words.Charging, mistakes);
        bool solar = charging.Contains("solar") || words.Panel is not null;
        double panel = solar ? Number(words.Panel ?? DefaultPanel, ElectricKinds.Power, mistakes) : 0;
        Judge(words, loads, mains, mistakes);
        return mistakes.Count > before ? null : new StartingAnswers
        {
            Title = string.IsNullOrWhiteSpace(words.Title) ? "My power box" : words.Title.Trim(),
            Volts = volts,
            AmpHours = capacity,
            Loads = loads,
            Usb = words.Usb,
            InverterWatts = inverter,
            MainsLoads = mains,
            FromMains = charging.Contains("mains"),
            SolarWatts = panel,
            FromVehicle = charging.Contains("vehicle"),
        };
    }

    /// <summary>A nominal voltage; 0 with the mistake added.</summary>
    internal static int Volts(string text, ICollection<string> mistakes)
    {
        string number = text.Trim().TrimEnd('V', 'v').Trim();
        foreach (int volts in Voltages)
        {
            if (number == BoxValues.Plain(volts))
            {
                return volts;
            }
        }

        mistakes.Add($"'{text}' is no voltage of a box; say 12, 24 or 48 V");
        return 0;
    }

    /// <summary>A value above zero in SI units; 0 with the mistake added.</summary>
    internal static double Number<T>(string text, QuantityKind<T> kind, ICollection<string> mistakes)
    {
        Parsed<T> read = QuantityReader.Read(text, kind, Bounds.Positive);
        if (read.Fault is null)
        {
            return kind.Si(read.Value);
        }

        mistakes.Add($"'{text}' is not {kind.Name}; write it as {kind.Example}");
        return 0;
    }

    /// <summary>Loads; those that are wrong are left out with the mistake added.</summary>
    internal static IReadOnlyList<AskedLoad> Loads(IEnumerable<string> texts, ICollection<string> mistakes)
    {
        List<AskedLoad> loads = [];
        foreach (string text in texts)
        {
            if (OneLoad(text, mistakes) is { } load)
            {
                loads.Add(load);
            }
        }

        if (loads.Count > MostLoads)
        {
            mistakes.Add($"{loads.Count} loads are too many for one bar; name the {MostLoads} largest");
        }

        return loads;
    }

    /// <summary>Ways to charge; unknown ones are left out with the mistake added.</summary>
    internal static IReadOnlyList<string> Charging(IEnumerable<string> texts, ICollection<string> mistakes)
    {
        List<string> ways = [.. texts.SelectMany(t => t.Split(',', StringSplitOptions.TrimEntries | StringSplitOptions.RemoveEmptyEntries))];
        foreach (string way in ways.Where(w => !WaysToCharge.Contains(w)))
        {
            string near = NearestName.Find(way, WaysToCharge) is { } name ? $"; did you mean '{name}'?" : "";
            mistakes.Add($"'{way}' is no way to charge; say mains, solar or vehicle{near}");
        }

        return ways;
    }

    private static AskedLoad? OneLoad(string text, ICollection<string> mistakes)
    {
        int equals = text.IndexOf('=', StringComparison.Ordinal);
        int at = text.IndexOf('@', StringComparison.Ordinal);
        if (equals <= 0 || (at >= 0 && at < equals))
        {
            mistakes.Add($"'{text}' names no load; write it as coolbox=45W, or coolbox=45W@vehicle-socket to choose its socket");
            return null;
        }

        string name = text[..equals].Trim();
        string power = (at < 0 ? text[(equals + 1)..] : text[(equals + 1)..at]).Trim();
        string? socket = at < 0 ? null : text[(at + 1)..].Trim();
        int before = mistakes.Count;
        if (TakenNames.WrongWith(name) is { } wrong)
        {
            mistakes.Add(wrong);
        }

        double watts = Number(power, ElectricKinds.Power, mistakes);
        if (socket is not null && Library.Embedded.Parts.Find("ports", socket) is null)
        {
            IEnumerable<string> sockets = Library.Embedded.Parts.Classes("ports").Select(c => c.Name);
            string near = NearestName.Find(socket, sockets) is { } other ? $"; did you mean '{other}'?" : $"; there are {string.Join(", ", sockets)}";
            mistakes.Add($"'{socket}' is no class of socket{near}");
        }

        return mistakes.Count > before ? null : new AskedLoad(name, watts, socket);
    }

    private static void Judge(AnswerWords words, IReadOnlyList<AskedLoad> loads, IReadOnlyList<AskedLoad> mains, ICollection<string> mistakes)
    {
        if (words.Title is { } title && (title.Length > LongestTitle || title.Any(char.IsControl)))
        {
            mistakes.Add($"a title is one line of at most {LongestTitle} characters");
        }

        foreach (IGrouping<string, AskedLoad> same in loads.Concat(mains).GroupBy(l => l.Name).Where(g => g.Count() > 1))
        {
            mistakes.Add($"'{same.Key}' names two loads");
        }

        if (words.Inverter is null && words.MainsLoads.Count > 0)
        {
            mistakes.Add("loads on mains voltage need an inverter; say its power");
        }

        if (words.Loads.Count == 0 && !words.Usb && words.Inverter is null)
        {
            mistakes.Add("the box feeds nothing; name a load, a supply for telephones or an inverter");
        }
    }

    private const double SecondsPerHour = 3600;
}
