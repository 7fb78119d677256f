using WireCheck.Circuit.Elements;

namespace WireCheck.Circuit.Solving;

/// <summary>
/// Solves a network with a short between two nodes and with some contacts opened, on the one factor of the network as it
/// stood before. In a network of straight lines a short costs one solve with that factor (Thévenin: the voltage between the
/// two nodes over what the factor gives between them), an opened contact one more. Where a diode or a supply leaves the
/// line it was on, Newton's method goes on with the same factor and the changed slopes as low-rank terms.
/// </summary>
internal sealed class ShortedNetwork
{
    /// <summary>
    /// Resistance of an opened contact over that when closed. Not infinite, so that what hangs on nothing else keeps a voltage
    /// and the small system an answer; what still flows is far below what counts as a current.
    /// </summary>
    internal const double OpenedFactor = 1e9;

    /// <summary>Newton goes on to this much left over at any node while it still helps, A: a branch of microamperes wants it too.</summary>
    private const double Aim = 1e-12;

    /// <summary>A changed slope counts as a term of its own from this share of the node's conductance; smaller ones only slow Newton.</summary>
    private const double SmallestShare = 1e-4;

    private const int MostSteps = 40;

    private const int MostFullSteps = 15;

    private readonly OperatingPointSolver _solver;
    private readonly NodalEquations _equations;
    private readonly BentBranch[] _bent;
    private readonly double[] _baseHigh;
    private readonly double[] _baseLow;
    private readonly double[] _step;
    private readonly double[] _shortReach;
    private readonly ReachCache _contactReach;
    private readonly List<Contact> _opened = [];
    private readonly List<LowRankTerm> _terms = [];
    private readonly DenseSystem _small = new();
    private BranchPair _short;
    private double _shortOhms;
    private int _from;
    private int _to;
    private int _openedTerms;
    private bool _factoredAnew;

    /// <summary>Prepares a network; its nodes and elements must not change afterwards, their values may before <see cref="Prepare"/>.</summary>
    internal ShortedNetwork(Network network)
    {
        _solver = new OperatingPointSolver(network);
        _equations = _solver.Equations;
        _bent = BentBranch.In(_equations);
        _baseHigh = new double[network.NodeCount];
        _baseLow = new double[network.NodeCount];
        _step = new double[network.NodeCount - 1];
        _shortReach = new double[network.NodeCount - 1];
        _contactReach = new ReachCache(network.NodeCount - 1);
    }

    /// <summary>Current from the first node of the short to the second, A.</summary>
    internal double ShortAmps { get; private set; }

    /// <summary>Currents of all elements by their index, A.</summary>
    internal double[] Amps => _equations.Amps;

    /// <summary>Voltage of one node above another, V.</summary>
    internal double Volts(int above, int below) =>
        (_equations.High[above] - _equations.High[below]) + (_equations.Low[above] - _equations.Low[below]);

    /// <summary>True when something that is not open joins the two nodes; without the short.</summary>
    internal bool AreJoined(int first, int second) => _equations.Reached.Of(first) == _equations.Reached.Of(second);

    /// <summary>Solves the network as it stands and factors it; false when it has no answer.</summary>
    internal bool Prepare()
    {
        _solver.ForgetIslands();
        bool solved = _solver.Solve().Outcome == SolveOutcome.Solved;
        FactorAnew();
        Array.Copy(_equations.High, _baseHigh, _baseHigh.Length);
        Array.Copy(_equations.Low, _baseLow, _baseLow.Length);
        _factoredAnew = false;
        return solved;
    }

    /// <summary>Begins a short between two nodes of a prepared network; false when no answer was found.</summary>
    /// <param name="from">Node the current leaves the network at when it is positive.</param>
    /// <param name="to">Node it comes back at.</param>
    /// <param name="ohms">Resistance of the short, Ω; 0 for a bolted one.</param>
    internal bool Short(int from, int to, double ohms)
    {
        (_from, _to, _shortOhms) = (from, to, ohms);
        _short = _equations.Pair(from, to);
        FindShortReach();
        return Solve();
    }

    /// <summary>Opens one more contact while the short lasts, and solves again.</summary>
    internal bool Open(Contact contact)
    {
        contact.Ohms *= OpenedFactor;
        _opened.Add(contact);
        return Solve();
    }

    /// <summary>Ends the short and closes what was opened.</summary>
    internal void End()
    {
        foreach (Contact contact in _opened)
        {
            contact.Ohms /= OpenedFactor;
        }

        _opened.Clear();
        GoBack();
    }

    private void FindShortReach()
    {
        Array.Clear(_shortReach);
        _short.AddTo(_shortReach, 1);
        _equations.Factor.Solve(_shortReach);
    }

    /// <summary>Puts the voltages of the sound network back, and its factor where another has taken its place.</summary>
    private void GoBack()
    {
        Array.Copy(_baseHigh, _equations.High, _baseHigh.Length);
        Array.Copy(_baseLow, _equations.Low, _baseLow.Length);
        if (!_factoredAnew)
        {
            return;
        }

        _opened.ForEach(contact => contact.Ohms /= OpenedFactor);
        FactorAnew();
        _opened.ForEach(contact => contact.Ohms *= OpenedFactor);
        _factoredAnew = false;
    }

    /// <summary>Factors the network at its present voltages.</summary>
    private void FactorAnew()
    {
        _equations.Evaluate();
        _equations.Refactor();
        foreach (BentBranch branch in _bent)
        {
            branch.Start();
        }

        _contactReach.Clear();
    }

    /// <summary>
    /// From the network as it stood: first the answer of straight lines, then as much of Newton's method as is needed. Where the
    /// way leads through a diode that did not conduct at all before, the old factor has too few digits left, and a new one
    /// takes its place for as long as this short lasts.
    /// </summary>
    private bool Solve()
    {
        if (_factoredAnew)
        {
            GoBack();
            FindShortReach();
        }

        Array.Copy(_baseHigh, _equations.High, _baseHigh.Length);
        Array.Copy(_baseLow, _equations.Low, _baseLow.Length);
        ShortAmps = 0;
        _terms.Clear();
        foreach (Contact contact in _opened)
        {
            AddOpened(contact);
        }

        _openedTerms = _terms.Count;
        Array.Clear(_step);
        double worst = TakeStep(double.PositiveInfinity, damped: false, fromBase: true);
        worst = Newton(worst, anew: false);
        if (worst > Enough)
        {
            _factoredAnew = true;
            _terms.Clear();
            _openedTerms = 0;
            worst = Newton(worst, anew: true);
        }

        return worst <= Enough;
    }

    private double Newton(double worst, bool anew)
    {
        for (int step = 0; step < MostSteps && worst > Aim && double.IsFinite(worst); step++)
        {
            if (anew)
            {
                FactorAnew();
                FindShortReach();
                Evaluate();
            }

            double before = worst;
            worst = Improve(worst, damped: step >= MostFullSteps);
            if (worst > before / 2 && (worst < Enough || (!anew && step > MostFullSteps)))
            {
                break;
            }
        }

        return worst;
    }

    /// <summary>What may be left over at a node for the answer to count, A.</summary>
    private double Enough => OperatingPointSolver.LargestResidualAmps * Math.Max(1, Math.Abs(ShortAmps));

    /// <summary>One step of Newton's method on the factor of the network as it stood.</summary>
    private double Improve(double worst, bool damped)
    {
        for (int place = 0; place < _step.Length; place++)
        {
            _step[place] = -_equations.Left[_equations.NodeOfPlace[place]];
        }

        _equations.Factor.Solve(_step);
        AddBent();
        return TakeStep(worst, damped, fromBase: false);
    }

    /// <summary>
    /// Takes the step, as far as to the edge of the first regulated output on the way, and half as far while that leaves more
    /// over and damping is asked for; returns what is left over, A.
    /// </summary>
    private double TakeStep(double worst, bool damped, bool fromBase)
    {
        double amps = ShortAmps;
        if (!FindStep(fromBase))
        {
            return double.PositiveInfinity;
        }

        Array.Copy(_step, _equations.Step, _step.Length);
        double share = _equations.ShareToEdge(1);
        double whole = ShortAmps - amps;
        double done = 0;
        while (true)
        {
            _equations.Move(share - done);
            done = share;
            ShortAmps = amps + (share * whole);
            double now = Evaluate();
            if (!damped || now < worst || share < 1.0 / 64)
            {
                return now;
            }

            share /= 2;
        }
    }

    /// <summary>
    /// The small system: the current of each changed branch and of the short. What they do to the voltages is added to the step.
    /// </summary>
    private bool FindStep(bool fromBase)
    {
        int count = _terms.Count;
        _small.Start(count + 1);
        for (int i = 0; i < count; i++)
        {
            LowRankTerm term = _terms[i];
            for (int j = 0; j < count; j++)
            {
                _small[i, j] = (i == j ? 1 : 0) + (term.Siemens * term.Pair.Times(_terms[j].Reach));
            }

            _small[i, count] = term.Siemens * term.Pair.Times(_shortReach);
            _small.Right[i] = term.Siemens * (term.Pair.Times(_step) + (fromBase ? term.BaseVolts : 0));
            _small[count, i] = _short.Times(_terms[i].Reach);
        }

        _small[count, count] = _short.Times(_shortReach) + _shortOhms;
        _small.Right[count] = Volts(_from, _to) + _short.Times(_step) - (_shortOhms * ShortAmps);
        if (!_small.Solve())
        {
            return false;
        }

        for (int i = 0; i < count; i++)
        {
            AddTo(_step, _terms[i].Reach, -_small.Right[i]);
        }

        // Only the change is an unknown: in an island on a foothold the whole current would lift all voltages by megavolts.
        ShortAmps += _small.Right[count];
        AddTo(_step, _shortReach, -_small.Right[count]);
        return true;
    }

    private static void AddTo(double[] sum, double[] vector, double factor)
    {
        for (int i = 0; i < sum.Length; i++)
        {
            sum[i] += factor * vector[i];
        }
    }

    private void AddOpened(Contact contact)
    {
        BranchPair pair = _equations.Pair(contact.A, contact.B);
        double closed = OpenedFactor / contact.Ohms;
        _terms.Add(new LowRankTerm(
            pair,
            _contactReach.Of(contact.Index, pair, _equations.Factor),
            (1 / contact.Ohms) - closed,
            (_baseHigh[contact.A] - _baseHigh[contact.B]) + (_baseLow[contact.A] - _baseLow[contact.B])));
    }

    /// <summary>Adds what has left the line it was on when the factor was made.</summary>
    private void AddBent()
    {
        _terms.RemoveRange(_openedTerms, _terms.Count - _openedTerms);
        foreach (BentBranch branch in _bent)
        {
            double change = branch.Slope - branch.BaseSlope;
            if (change != 0 && Math.Abs(change) * branch.Ohms(_equations.Factor) > SmallestShare)
            {
                _terms.Add(new LowRankTerm(branch.Pair, branch.Reach, change, 0));
            }
        }
    }

    /// <summary>Currents at the present voltages with the short's own; returns the largest left over at a node, A.</summary>
    private double Evaluate()
    {
        _equations.Evaluate();
        double[] left = _equations.Left;
        left[_from] += ShortAmps;
        left[_to] -= ShortAmps;
        double worst = 0;
        int[] nodes = _equations.NodeOfPlace;
        for (int place = 0; place < nodes.Length; place++)
        {
            worst = Math.Max(worst, Math.Abs(left[nodes[place]]));
        }

        return double.IsNaN(worst) ? double.PositiveInfinity : worst;
    }
}
