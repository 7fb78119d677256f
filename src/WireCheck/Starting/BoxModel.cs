using Scriban.Runtime;
using WireCheck.Knowledge;

namespace WireCheck.Starting;

/// <summary>What the template of a new box is filled with: the answers, currents reckoned from them, and what the shelf gives.</summary>
internal sealed class BoxModel
{
    private readonly StartingAnswers _answers;
    private readonly BoxValues _values;
    private readonly Shelf _shelf;
    private readonly BoxVolts _volts;
    private double _inverterIdle;

    private BoxModel(StartingAnswers answers, Library library, Shelf shelf)
    {
        _answers = answers;
        _shelf = shelf;
        _volts = new BoxVolts(answers, library);
        _values = new BoxValues(shelf, _volts.Assume("starting_fuse_load"));
    }

    /// <summary>The globals of the template.</summary>
    internal static ScriptObject Make(StartingAnswers answers, Library library, Shelf shelf)
    {
        BoxModel model = new(answers, library, shelf);
        double capacity = model.AddBank();
        OutletsModel outlets = new(answers, model._volts, model._values, shelf);
        double inverter = model.AddInverter();
        double amps = inverter + outlets.Add() + model.AddUsb();
        ChargingModel charging = new(answers, model._volts, model._values, shelf);
        charging.Add(capacity);
        model.AddTrunk(amps, charging.Amps, capacity);
        new UsesModel(answers, model._volts, model._values, model._inverterIdle).Add(capacity);
        return model._values.Globals;
    }

    /// <summary>The bank and what stands around it; its capacity in Ah.</summary>
    private double AddBank()
    {
        string cells = _shelf.Class(
            "cells", "bank", c => c.Word("chemistry") == "lfp" && c.Name.Contains("prismatic", StringComparison.Ordinal),
            c => c.Coulombs("capacity") / Hour, _answers.AmpHours, $"cell of {Plain(_answers.AmpHours)} Ah");
        double capacity = cells.Length == 0 ? _answers.AmpHours : _shelf.Find("cells", cells).Coulombs("capacity") / Hour;
        _values.Set("title", QuotedTitle(_answers.Title));
        _values.Set("comment_title", _answers.Title);
        _values.Set("volts", _answers.Volts);
        _values.Set("series", _answers.Series);
        _values.Set("full_volts", Plain(_volts.Full));
        _values.Part("bank", cells);
        BoxCase box = BoxCase.For(capacity * _answers.Volts, _volts, _shelf);
        _values.Set("inside", box.Inside);
        _values.Set("vent_area", box.Vents);
        return capacity;
    }

    /// <summary>The inverter; the current in A that it takes at its power and the lowest voltage.</summary>
    private double AddInverter()
    {
        _values.Set("inverter", _answers.InverterWatts > 0);

        // A converter above 12 V has capacitors large enough to weld a contact, as an inverter has.
        _values.Set("precharge", _answers.InverterWatts > 0 || (_answers.Loads.Count > 0 && _answers.Volts > BoxVolts.Outlets));
        _values.Wire("precharge", SmallFuse);
        if (_answers.InverterWatts <= 0)
        {
            return 0;
        }

        string name = _shelf.Class(
            "inverters", "inverter-class", c => c.Spans("window", _volts.Low, _volts.Full), c => c.Watts("power"),
            _answers.InverterWatts, $"inverter of {Plain(_answers.InverterWatts)} W for {_answers.Volts} V");
        _values.Part("inverter", name);
        if (name.Length == 0)
        {
            return 0;
        }

        PartValues inverter = _shelf.Find("inverters", name);
        double power = inverter.Watts("power");
        _inverterIdle = inverter.Amps("idle") * _answers.Volts;

        // The breaker of the outlet must be able to open on what the inverter can give.
        double breaker = _shelf.Rating("outlet-breaker", power / inverter.Volts("ac_voltage"));
        double surge = Math.Max(power * _volts.Assume("starting_surge"), breaker * inverter.Volts("ac_voltage"));
        _values.Set("inverter_surge", Plain((Math.Floor(surge / Tens) + 1) * Tens));
        _values.Set("outlet_breaker", Plain(breaker));
        _values.Set("cut_off", Plain(_volts.Low));
        _values.Set("alarm", Plain(_volts.Of("starting_cell_alarm")));
        _values.Set("restart", Plain(_volts.Of("starting_cell_restart")));
        return power / inverter.Share("efficiency") / _volts.Low;
    }

    private double AddUsb()
    {
        _values.Set("usb", _answers.Usb);
        string name = _shelf.Class(
            "converters", "usb-class", c => c.Volts("output") <= UsbVolts && c.Spans("window", _volts.Empty, _volts.Full),
            c => c.Watts("power"), 0, $"supply for telephones at {_answers.Volts} V");
        _values.Part("usb", name);
        double amps = name.Length == 0 ? 0 : _shelf.Find("converters", name).Watts("power") / _volts.Low;
        if (_answers.Usb)
        {
            _values.Fuse("usb", amps);
            BranchFuse fuse = _shelf.Kind("f-usb");
            _values.Set("usb_fuse", fuse.Part);
            _values.Set("usb_marked", fuse.Marked);
            _values.Set("usb_end", _answers.Volts == BoxVolts.Outlets ? fuse.End : "crimped-ring");
        }

        _values.Wire("usb", SmallFuse);
        return _answers.Usb ? amps : 0;
    }

    /// <summary>What carries the current of the whole box.</summary>
    private void AddTrunk(double amps, double chargeAmps, double capacity)
    {
        double main = _values.Main(amps, _volts.Assume("starting_feed_ratio"));
        _values.Wire("trunk", main);
        _values.Set("trip", Plain(Math.Floor(main * _volts.Assume("trip_over_main"))));
        _values.Part("bms", Carrying("bms", "bms", amps, "continuous", "BMS", c => c.Word("side") == "low"
            && c.Word("port") == "common" && c.Count("series") == _answers.Series && c.Amps("charge_continuous") >= chargeAmps
            && !c.Name.EndsWith("radio", StringComparison.Ordinal)));
        _values.Part("isolator", Carrying("switches", "isolator", amps, "contact.amps", "isolator", c => c.Word("style") == "isolator"
            && c.Volts("break.volts") >= _volts.Full));
        _values.Part("master", Carrying("switches", "master", 0, "contact.amps", "master switch", c => c.Word("style") == "rocker"
            && c.Word("lamp.voltage").Length == 0 && c.Volts("break.volts") >= _volts.Full));
        _values.Part("shunt", Carrying("shunts", "shunt", amps, "rated", "shunt", _ => true));
        string relay = Carrying("relays", "k-main", amps, "contact.carry", "relay", c => c.Volts("coil.voltage") == _answers.Volts
            && c.Volts("contact.break.volts") >= _volts.Full && c.Amps("coil.economiser.hold_current") > 0);
        _values.Part("relay", relay);
        _values.Set("coil", relay.Length == 0 ? "" : CoilText.Of(_shelf.Find("relays", relay), capacity * _volts.Assume("starting_hold") / HoursOfDay));
        foreach (string bar in (string[])["plus", "live", "minus"])
        {
            _values.Part(bar, _shelf.Class(
                "busbars", bar, _ => true, c => c.Area("section") * _volts.BarDensity, amps, $"copper bar for {Plain(amps)} A"));
        }

        _values.Wire("gauge", SmallFuse);
        _values.Wire("control", SmallFuse);
        _values.Set("small_end", _answers.Volts == BoxVolts.Outlets ? "crimped-spade" : "crimped-ring");
        _values.Set("link", "2");
    }

    private string Carrying(string section, string key, double amps, string path, string words, Func<PartValues, bool> fits) =>
        _shelf.Class(section, key, fits, c => c.Amps(path), amps / _volts.Assume("starting_part_load"), $"{words} of {_answers.Volts} V that carries {Plain(Math.Ceiling(amps))} A for hours");

    private static string Plain(double value) => BoxValues.Plain(value);

    /// <summary>In quotes as YAML reads them, whatever is in it.</summary>
    private static string QuotedTitle(string title) =>
        $"\"{title.Replace("\\", "\\\\", StringComparison.Ordinal).Replace("\"", "\\\"", StringComparison.Ordinal)}\"";

    private const double Hour = 3600;
    private const double HoursOfDay = 24;
    private const double Tens = 10;
    private const double UsbVolts = 5;

    /// <summary>Largest fuse of a small branch, A: its wires are all of one size.</summary>
    private const double SmallFuse = 5;
}
