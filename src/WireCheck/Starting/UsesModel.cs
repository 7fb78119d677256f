using Scriban.Runtime;

namespace WireCheck.Starting;

/// <summary>What the box is used for in a day: its loads for as long as half of the bank lasts.</summary>
internal sealed class UsesModel(StartingAnswers answers, BoxVolts volts, BoxValues values, double inverterIdle)
{
    private const double LongestDirect = 360;
    private const double LongestMains = 30;
    private const double Fives = 5;
    private const double MinutesPerHour = 60;
    private const double PhoneWatts = 20;

    /// <summary>Adds loads, modes and the path that is told.</summary>
    /// <param name="capacity">Capacity of the bank in Ah.</param>
    internal void Add(double capacity)
    {
        values.Set("sun_hours", BoxValues.Plain(volts.Assume("starting_sun_hours")));
        values.Set("driving_hours", BoxValues.Plain(volts.Assume("starting_driving_hours")));
        List<AskedLoad> direct = [.. answers.Loads];
        if (answers.Usb)
        {
            direct.Add(new AskedLoad("phones", PhoneWatts));
        }

        List<AskedLoad> mains = [.. MainsLoads()];
        double energy = DayEnergy(capacity) / Math.Max(1, (direct.Count > 0 ? 1 : 0) + (mains.Count > 0 ? 1 : 0));
        values.Set("mains_loads", new ScriptArray(mains.Select(l => Model(l))));
        values.Set("has_loads", direct.Count + mains.Count > 0);
        values.Set("has_ports", answers.Loads.Count > 0 || answers.FromMains || answers.SolarWatts > 0 || answers.FromVehicle);
        values.Set("direct_draws", Draws(direct));
        values.Set("mains_draws", Draws(mains));
        values.Set("working_minutes", Minutes(energy, direct.Sum(l => l.Watts) + inverterIdle, LongestDirect));
        values.Set("mains_minutes", Minutes(energy, mains.Sum(l => l.Watts) + inverterIdle, LongestMains));
        int branches = direct.Count + (mains.Count > 0 ? 1 : 0) + (answers.FromMains ? 1 : 0) + (answers.SolarWatts > 0 ? 1 : 0) + (answers.FromVehicle ? 1 : 0);
        values.Set("minus_studs", branches + StudsOfTrunk);
        AddPath(mains);
    }

    /// <summary>Watt-hours a day: half of the bank, or what the sun or the vehicle puts back where the mains do not.</summary>
    private double DayEnergy(double capacity)
    {
        double bank = capacity * answers.Volts * volts.Assume("starting_use");
        double back = (answers.SolarWatts * volts.Assume("starting_sun_hours") * volts.Assume("panel_derating"))
            + (answers.FromVehicle ? volts.Assume("starting_car_power") * volts.Assume("starting_driving_hours") : 0);
        return answers.FromMains || back <= 0 ? bank : Math.Min(bank, back * volts.Assume("starting_use_of_charge"));
    }

    /// <summary>Time in steps of five minutes that an energy in Wh feeds a power in W.</summary>
    private static string Minutes(double wattHours, double watts, double most) => BoxValues.Plain(
        Math.Clamp(Math.Floor(wattHours / Math.Max(1, watts) * MinutesPerHour / Fives) * Fives, Fives, most));

    /// <summary>Studs of the negative bar for the shunt, the gauge and the relay.</summary>
    private const int StudsOfTrunk = 4;

    private IEnumerable<AskedLoad> MainsLoads() =>
        answers.InverterWatts <= 0 ? []
        : answers.MainsLoads.Count > 0 ? answers.MainsLoads
        : [new AskedLoad("appliance", Math.Round(answers.InverterWatts * volts.Assume("starting_mains_load")))];

    private void AddPath(List<AskedLoad> mains)
    {
        values.Set("path_target", mains.Count > 0 ? mains[0].Name : answers.Loads.Count > 0 ? answers.Loads[0].Name : "");
        values.Set("path_parts", mains.Count > 0 ? "inverter" : answers.Loads.Count > 0 ? $"f-outlets, f-{answers.Loads[0].Name}, {answers.Loads[0].Name}-out" : "");
        values.Set("path_drop", mains.Count > 0 ? "4" : "5");
    }

    private static string Draws(IEnumerable<AskedLoad> loads) =>
        string.Join(", ", loads.Select(l => $"{l.Name}: {BoxValues.Plain(l.Watts)} W"));

    private static ScriptObject Model(AskedLoad load)
    {
        ScriptObject model = [];
        model.SetValue("id", load.Name, true);
        model.SetValue("watts", BoxValues.Plain(load.Watts), true);
        return model;
    }
}
