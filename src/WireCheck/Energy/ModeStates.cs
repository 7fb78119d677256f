using WireCheck.Charging;
using WireCheck.Circuit.Elements;
using WireCheck.Circuit.Solving;
using WireCheck.Circuit.Wiring;
using WireCheck.Description.Kinds;
using WireCheck.Quantities;
using WireCheck.States;

namespace WireCheck.Energy;

/// <summary>A mode at one charge of the cells, averaged over duty and sunshine.</summary>
/// <param name="Rate">Part of the counted charge that leaves the bank in a second, 1/s; negative while it is charged.</param>
/// <param name="Amps">Current out of the banks, A; negative while they are charged.</param>
/// <param name="Power">Where the power goes.</param>
internal sealed record ModeSample(double Rate, double Amps, PowerSplit Power);

/// <summary>
/// A mode in one condition, at any charge. For energy each load counts with its duty, and a panel with what an hour of sunshine
/// brings on the average; for what trips, loads run at once and no sun shines.
/// </summary>
internal sealed class ModeStates
{
    private readonly BoxWiring _wiring;
    private readonly StateSolver _solver;
    private readonly WiredBank[] _banks;
    private readonly CellVoltage[] _volts;
    private readonly EnergyCondition _condition;
    private readonly BoxMode _average;
    private readonly BoxMode _averageDark;
    private readonly BoxMode _peak;
    private readonly double _sun;
    private readonly WiredConductor[] _wires;
    private Conditions _conditions;

    internal ModeStates(SolvedBox box, StateSolver solver, EnergyCondition condition, BoxMode mode)
    {
        _wiring = box.Wiring;
        _solver = solver;
        _condition = condition;
        _conditions = condition.Corner.Conditions;
        _wires = [.. box.Wiring.Of<WiredConductor>()];
        _banks = [.. box.Wiring.Of<WiredBank>()];
        _volts = [.. _banks.Select(b => new CellVoltage(b, box.Wiring.Data))];
        _average = WithDuty(mode, box);
        _averageDark = InTheDark(_average, box);
        _peak = InTheDark(mode, box);
        _sun = _averageDark == _average ? 1 : box.Wiring.Data.Assumed("panel_derating");
        Heat = HeatOf(box, mode);
        if (Heat is not null)
        {
            _conditions = _conditions with { CellCelsius = Heat.CellCelsius, CopperCelsius = Heat.InsideCelsius };
        }
    }

    /// <summary>How warm the box is in the mode; null when it cannot be told, and then it is as the condition has it.</summary>
    internal RunHeat? Heat { get; }

    /// <summary>Open-circuit voltage of the cells of the first bank.</summary>
    internal CellVoltage Cells => _volts[0];

    /// <summary>Rated charge of all banks in ampere-hours; the end current of a charge is told in proportion to it.</summary>
    internal double AmpereHours => _banks.Sum(EnergyCondition.RatedCoulombs) / 3600;

    /// <summary>The mode on the average at a charge; null when it has no solution.</summary>
    internal ModeSample? At(double charge)
    {
        ModeSample? lit = Solve(_average, charge);
        if (_sun >= 1 || lit is null)
        {
            return lit;
        }

        return Solve(_averageDark, charge) is { } dark
            ? new ModeSample(
                (_sun * lit.Rate) + ((1 - _sun) * dark.Rate), (_sun * lit.Amps) + ((1 - _sun) * dark.Amps), lit.Power.Mixed(_sun, dark.Power))
            : null;
    }

    /// <summary>Everything the mode asks for at once, no sun shining.</summary>
    internal OperatingPoint PeakAt(double charge) => SolveAt(_peak, charge);

    /// <summary>The point of the mode on the average, in the sun.</summary>
    internal OperatingPoint PointAt(double charge) => SolveAt(_average, charge);

    /// <summary>The warmth of a run that lasts as long as the mode is meant to, or as the bank does at the current of the unwarmed box.</summary>
    private RunHeat? HeatOf(SolvedBox box, BoxMode mode)
    {
        double seconds = Solve(_average, MiddleCharge) is { } sample && sample.Rate != 0 ? 1 / Math.Abs(sample.Rate) : 0;
        foreach (Description.Mode described in box.Pack.Modes)
        {
            if (described.Id == mode.Id && described.For is { } time)
            {
                seconds = Math.Min(seconds, time.Value.Seconds);
            }
        }

        return RunHeat.Of(box, _condition.Loop(_solver), _condition, mode, seconds);
    }

    private const double MiddleCharge = 0.5;

    private ModeSample? Solve(BoxMode mode, double charge)
    {
        OperatingPoint point = SolveAt(mode, charge);
        if (point.Solution.Outcome != SolveOutcome.Solved)
        {
            return null;
        }

        double rate = double.NegativeInfinity;
        double sum = 0;
        foreach (WiredBank bank in _banks)
        {
            double amps = GroupAmps.MostOut(bank, point.Solution);
            double efficiency = amps < 0 ? _wiring.Data.Library.Chemistries[bank.Cells.Chemistry.Value].CoulombicEfficiency : 1;
            rate = Math.Max(rate, amps * efficiency / _condition.CountedCoulombs(bank));
            sum -= BankCharge.AmpsInto(bank, point);
        }

        return new ModeSample(rate, sum, PowerSplit.Of(_wiring, point.Solution));
    }

    private OperatingPoint SolveAt(BoxMode mode, double charge)
    {
        Corner corner = _condition.Corner with
        {
            Conditions = _conditions with { StateOfCharge = Math.Clamp(charge, 0, 1) },
        };
        _wiring.SetConditions(corner.Conditions);
        for (int i = 0; Heat is not null && i < _wires.Length; i++)
        {
            if (Math.Abs(Heat.ConductorCelsius[i] - Heat.InsideCelsius) > WiredConductor.NoticeableKelvin)
            {
                _wires[i].SetTemperature(Heat.ConductorCelsius[i], corner.HighestResistance);
            }
        }

        for (int i = 0; i < _banks.Length; i++)
        {
            double volts = _volts[i].At(charge);
            foreach (Source cell in _banks[i].CellElements)
            {
                cell.Emf = volts;
            }
        }

        return _solver.SolveAsSet(mode, corner);
    }

    private static BoxMode WithDuty(BoxMode mode, SolvedBox box)
    {
        Dictionary<string, double>? watts = null;
        foreach (Load load in box.Pack.Of<Load>())
        {
            if (load.Duty is { } duty && mode.Watts.TryGetValue(load.Id, out double peak))
            {
                watts ??= new Dictionary<string, double>(mode.Watts);
                watts[load.Id] = peak * duty.Value.DecimalFractions;
            }
        }

        return watts is null ? mode : mode.With(watts, mode.Sources);
    }

    private static BoxMode InTheDark(BoxMode mode, SolvedBox box)
    {
        Dictionary<string, SourceState>? sources = null;
        foreach (Panel panel in box.Pack.Of<Panel>())
        {
            if (mode.Source(panel.Id) == SourceState.Powered)
            {
                sources ??= new Dictionary<string, SourceState>(mode.Sources);
                sources[panel.Id] = SourceState.Unpowered;
            }
        }

        // A controller that lives on its panels is dead with them.
        if (sources is not null)
        {
            foreach (Charger charger in box.Pack.Of<Charger>())
            {
                if (charger.ChargerKind.Value == ChargerKind.Solar && mode.Source(charger.Id) == SourceState.Powered)
                {
                    sources[charger.Id] = SourceState.Unpowered;
                }
            }
        }

        return sources is null ? mode : mode.With(mode.Watts, sources);
    }
}
