using Scriban.Runtime;

namespace WireCheck.Starting;

/// <summary>The ways to charge: from the mains through an inlet, from a panel through a controller, from a vehicle through a charger.</summary>
internal sealed class ChargingModel(StartingAnswers answers, BoxVolts volts, BoxValues values, Shelf shelf)
{
    /// <summary>Adds them.</summary>
    /// <param name="capacity">Capacity of the bank in Ah.</param>
    internal void Add(double capacity)
    {
        values.Set("charging_mains", answers.FromMains);
        values.Set("solar", answers.SolarWatts > 0);
        values.Set("vehicle", answers.FromVehicle);
        values.Set("has_chargers", answers.FromMains || answers.SolarWatts > 0 || answers.FromVehicle);
        if (answers.FromMains)
        {
            AddMains(capacity);
        }

        if (answers.SolarWatts > 0)
        {
            AddSolar();
        }

        if (answers.FromVehicle)
        {
            AddVehicle();
        }
    }

    private void AddMains(double capacity)
    {
        // The inlet's contacts end at its rating, so a large bank charges for longer and not with more.
        double wanted = capacity * volts.Assume("starting_charge");
        double most = shelf.Find("ports", "charge-inlet-shrouded").Amps("rated") * volts.Assume("starting_part_load");
        string name = ChargerOf("cc-cv", "mains", 0, c => c.Amps("current") <= Math.Min(most, Math.Max(wanted, LeastCharger)), largestFirst: true);
        values.Part("mains", name);
        double amps = name.Length == 0 ? 0 : shelf.Find("chargers", name).Amps("current");
        values.Part("blocker", shelf.Class(
            "diodes", "blocker", c => c.Word("style") == "ideal" && c.Volts("volts") > volts.Full, c => c.Amps("rated"), amps, "blocking diode"));
        Branch("mains", amps);
    }

    /// <summary>Current in A of the smallest charger.</summary>
    private const double LeastCharger = 5;

    private void AddSolar()
    {
        double voltage = answers.Volts * volts.Assume("starting_panel_voltage");
        double current = answers.SolarWatts / voltage;
        double shortCircuit = current * volts.Assume("starting_panel_short");
        ScriptObject panel = [];
        panel.SetValue("voltage", BoxValues.Plain(voltage), true);
        panel.SetValue("current", BoxValues.Plain(current), true);
        panel.SetValue("open_circuit", BoxValues.Plain(voltage * volts.Assume("starting_panel_open")), true);
        panel.SetValue("short_circuit", BoxValues.Plain(shortCircuit), true);
        values.Set("panel", panel);
        double amps = Math.Ceiling(answers.SolarWatts / answers.Volts);
        values.Set("solar_amps", BoxValues.Plain(amps));
        values.Part("controller", ChargerOf("solar", "controller", amps, _ => true));
        values.Wire("panel", Math.Max(shortCircuit, LeastCharger));
        Branch("solar", amps);
    }

    private void AddVehicle()
    {
        double amps = Math.Floor(volts.Assume("starting_car_power") / answers.Volts * 10) / 10;
        values.Set("car_amps", BoxValues.Plain(amps));
        values.Part("car_charger", ChargerOf("dc-dc", "car-charger", amps, _ => true));
        values.Wire("carlead", shelf.Find("vehicles", "vehicle-12v-outlet").Amps("fuse"));
        Branch("car", amps);
    }

    /// <summary>Current in A of all ways to charge together.</summary>
    internal double Amps { get; private set; }

    private void Branch(string key, double amps)
    {
        Amps += amps;
        values.Wire(key, values.Fuse(key, amps));
    }

    private string ChargerOf(string kind, string key, double amps, Func<PartValues, bool> fits, bool largestFirst = false) => shelf.Class(
        "chargers", key, c => c.Word("kind") == kind && c.Count("cells") == answers.Series && fits(c),
        c => largestFirst ? -c.Amps("current") : c.Amps("current"), largestFirst ? double.NegativeInfinity : amps,
        $"charger ({kind}) of {BoxValues.Plain(amps)} A for {answers.Volts} V");
}
