using WireCheck.Circuit.Elements;
using WireCheck.Circuit.Solving;
using WireCheck.Circuit.Wiring;

namespace WireCheck.States;

/// <summary>
/// Solves a box in a mode at a corner. Relays follow their coils, converters and inverters start when they have
/// enough voltage, and the whole is solved again until nothing changes. Relays are started from rest and,
/// where that can matter, pulled in: two different ends are told.
/// </summary>
public sealed class StateSolver
{
    /// <summary>More rounds than any chain of relays and starting converters of a real box needs.</summary>
    private const int MostRounds = 64;

    private readonly BoxWiring _wiring;
    private readonly OperatingPointSolver _solver;
    private readonly RelayLogic _relays;
    private readonly PowerLogic _power;
    private readonly WiredBms[] _bms;

    public StateSolver(BoxWiring wiring)
    {
        _wiring = wiring;
        _solver = new OperatingPointSolver(wiring.Network);
        _relays = new RelayLogic(wiring);
        _power = new PowerLogic(wiring);
        _bms = [.. wiring.Of<WiredBms>()];
    }

    /// <summary>Every mode at every corner, mode by mode.</summary>
    public IReadOnlyList<OperatingPoint> SolveAll(IReadOnlyList<BoxMode> modes, IReadOnlyList<Corner> corners)
    {
        OperatingPoint[] points = new OperatingPoint[modes.Count * corners.Count];
        for (int c = 0; c < corners.Count; c++)
        {
            _wiring.SetConditions(corners[c].Conditions);
            for (int m = 0; m < modes.Count; m++)
            {
                points[(m * corners.Count) + c] = SolveHere(modes[m], corners[c], bmsConducts: true);
            }
        }

        return points;
    }

    /// <summary>One mode at one corner.</summary>
    /// <param name="mode">The mode.</param>
    /// <param name="corner">The corner.</param>
    /// <param name="bmsConducts">False to solve with every BMS open, as after its cut-off.</param>
    public OperatingPoint Solve(BoxMode mode, Corner corner, bool bmsConducts = true)
    {
        _wiring.SetConditions(corner.Conditions);
        return SolveHere(mode, corner, bmsConducts);
    }

    /// <summary>One mode with the corner's values as they stand, for a study that has changed one of them.</summary>
    internal OperatingPoint SolveAsSet(BoxMode mode, Corner corner) => SolveHere(mode, corner, bmsConducts: true);

    private OperatingPoint SolveHere(BoxMode mode, Corner corner, bool bmsConducts)
    {
        ModeSetter.Apply(_wiring, mode);
        foreach (WiredBms bms in _bms)
        {
            bms.SetConducting(bmsConducts);
        }

        IReadOnlyList<string> twoStates = [];
        bool[]? fromPulledIn = null;
        if (_relays.Any)
        {
            // Whether relays can hold themselves shows without the loads, which only lower the coils' voltage.
            _relays.Start(energised: true);
            _power.Start();
            SettleRelays();
            fromPulledIn = _relays.Energised();
        }

        _relays.Start(energised: false);
        Solution solution = Settle();
        if (fromPulledIn is not null && _relays.Chattering.Count == 0 && _relays.Different(fromPulledIn).Count > 0)
        {
            _relays.Start(energised: true);
            Settle();
            fromPulledIn = _relays.Energised();
            _relays.Start(energised: false);
            solution = Settle();
            twoStates = _relays.Different(fromPulledIn);
        }

        return new OperatingPoint
        {
            Mode = mode,
            Corner = corner,
            Solution = solution.Snapshot(),
            Relays = _relays.States(solution),
            Inputs = _power.States(),
            Undeliverable = _power.Undeliverable(),
            RelaysWithTwoStates = twoStates,
            ChatteringRelays = [.. _relays.Chattering],
        };
    }

    private Solution Settle()
    {
        _power.Start();
        _solver.ForgetIslands();
        Solution solution = _solver.Solve();
        for (int round = 0; round < MostRounds; round++)
        {
            if (solution.Outcome == SolveOutcome.Collapsed)
            {
                _power.GiveUp(solution);
            }
            else if (_relays.Follow(solution))
            {
                // What runs is started anew once the contacts rest: a load behind a contact that has just opened asks
                // for power that nothing can bring.
                _power.Pause();
                _solver.ForgetIslands();
            }
            else
            {
                bool powered = _power.Follow(solution, _relays);
                if (!_relays.Warm(solution) && !powered)
                {
                    break;
                }
            }

            solution = _solver.Solve();
        }

        return solution;
    }

    /// <summary>Lets the relays come to rest without any load or converter.</summary>
    private void SettleRelays()
    {
        for (int round = 0; round < MostRounds; round++)
        {
            Solution solution = _solver.Solve();
            if (!_relays.Follow(solution))
            {
                return;
            }
        }
    }
}
