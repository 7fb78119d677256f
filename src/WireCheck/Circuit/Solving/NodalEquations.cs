using WireCheck.Circuit.Elements;

namespace WireCheck.Circuit.Solving;

/// <summary>
/// The nodal equations of a network: the currents left over at each node, and the matrix of their slopes. Node
/// voltages are held in two parts, so that a micro-ohm bar at 58 V still leaves less than a nano-ampere over.
/// </summary>
internal sealed class NodalEquations
{
    /// <summary>
    /// Conductance that gives an island a foothold when only diodes and the like join it to the reference, S; what
    /// nothing joins stands on 1 S. It is in the matrix only, never in the currents, so no answer depends on it.
    /// </summary>
    private const double FootholdSiemens = 1e-7;

    private readonly Element[] _elements;
    private readonly ConverterStage[] _stages;
    private readonly ChargerOutput[] _chargers;
    private readonly int[] _stageEntries;
    private readonly SparsePattern _pattern;
    private readonly int[] _place;
    private readonly int[] _entry;
    private readonly double[] _slopes;
    private readonly double[] _stageSlopes;
    private readonly double[] _couplings;
    private readonly LowRankUpdate _coupled;
    private readonly int _reference;

    internal NodalEquations(Network network)
    {
        _elements = [.. network.Elements];
        _stages = [.. _elements.OfType<ConverterStage>()];
        _chargers = [.. _elements.OfType<ChargerOutput>()];
        _reference = network.Reference;
        int nodes = network.NodeCount;
        int Unknown(int node) => node == _reference ? -1 : node > _reference ? node - 1 : node;
        List<(int, int)> pairs = [];
        void Pair(int a, int b)
        {
            if (a >= 0 && b >= 0)
            {
                pairs.Add((a, b));
            }
        }

        Array.ForEach(_elements, e => Pair(Unknown(e.A), Unknown(e.B)));
        Array.ForEach(_stages, s => Pair(Unknown(s.OutA), Unknown(s.OutB)));
        _pattern = SparsePattern.Of(nodes - 1, pairs);
        _place = [.. Enumerable.Range(0, nodes).Select(n => Unknown(n) < 0 ? -1 : _pattern.Place[Unknown(n)])];
        int Entry(int a, int b) => Unknown(a) < 0 || Unknown(b) < 0 ? -1 : _pattern.Entry(Unknown(a), Unknown(b));
        _entry = [.. _elements.Select(e => Entry(e.A, e.B))];
        _stageEntries = [.. _stages.Select(s => Entry(s.OutA, s.OutB))];
        _slopes = new double[_elements.Length];
        _stageSlopes = new double[_stages.Length];
        _couplings = new double[_stages.Length];
        Factor = SymmetricFactor.For(_pattern);
        _coupled = new LowRankUpdate(
            Factor,
            nodes - 1,
            [.. _stages.Select(s => new BranchPair(_place[s.A], _place[s.B]))],
            [.. _stages.Select(s => new BranchPair(_place[s.OutA], _place[s.OutB]))]);
        Islands = new Islands(nodes);
        Reached = new Islands(nodes);
        High = new double[nodes];
        Low = new double[nodes];
        Amps = new double[_elements.Length];
        OutputAmps = new double[_elements.Length];
        Left = new double[nodes];
        Diagonal = new double[nodes - 1];
        Entries = new double[_pattern.RowColumns.Length];
        Step = new double[nodes - 1];
        NodeOfPlace = new int[nodes - 1];
        for (int node = 0; node < nodes; node++)
        {
            if (_place[node] >= 0)
            {
                NodeOfPlace[_place[node]] = node;
            }
        }

        IsLinear = Array.TrueForAll(_elements, e => e.IsLinear);
    }

    internal Element[] Elements => _elements;

    /// <summary>Every converter; the order of <see cref="StageSlopes"/>.</summary>
    internal ConverterStage[] Stages => _stages;

    /// <summary>Slope of each element as last evaluated, S.</summary>
    internal double[] Slopes => _slopes;

    /// <summary>Slope of each converter's output as last evaluated, S.</summary>
    internal double[] StageSlopes => _stageSlopes;

    /// <summary>Two nodes as places of the elimination order.</summary>
    internal BranchPair Pair(int plus, int minus) => new(_place[plus], _place[minus]);

    /// <summary>True when every element is a straight line, so that one factor serves every step.</summary>
    internal bool IsLinear { get; }

    internal SymmetricFactor Factor { get; }

    /// <summary>What is tied firmly together.</summary>
    internal Islands Islands { get; }

    /// <summary>What is joined by anything that is not open.</summary>
    internal Islands Reached { get; }

    internal double[] High { get; }

    internal double[] Low { get; }

    internal double[] Amps { get; }

    internal double[] OutputAmps { get; }

    /// <summary>Current left over at each node, A.</summary>
    internal double[] Left { get; }

    /// <summary>Solution of the last step, in elimination order.</summary>
    internal double[] Step { get; }

    /// <summary>Node of each place in the elimination order.</summary>
    internal int[] NodeOfPlace { get; }

    private double[] Diagonal { get; }

    private double[] Entries { get; }

    /// <summary>
    /// Finds the islands anew and puts the first node of each that nothing joins to the reference at 0 V, so that
    /// what is left of an earlier state does not show.
    /// </summary>
    internal void FindIslands()
    {
        Islands.FindTied(_elements);
        Reached.FindReached(_elements);
        int home = Reached.Of(_reference);
        for (int node = High.Length - 1; node >= 0; node--)
        {
            int first = Reached.Of(node);
            if (first != home && (High[first] != 0 || Low[first] != 0))
            {
                // The first node of an island has the smallest number and so is moved last.
                (double high, double rest) = (High[node], -High[first]);
                double apart = high + rest;
                double part = apart - high;
                double lost = (high - (apart - part)) + (rest - part);
                (High[node], Low[node]) = (apart, lost + (Low[node] - Low[first]));
            }
        }
    }

    /// <summary>Works out currents, slopes and what is left over at the present voltages; returns the largest, A.</summary>
    internal double Evaluate()
    {
        Array.Clear(Left);
        EvaluateOutputs();
        double[] high = High;
        double[] low = Low;
        double[] left = Left;
        Element[] elements = _elements;
        for (int i = 0; i < elements.Length; i++)
        {
            Element element = elements[i];
            double amps = element.CurrentInTwoParts(
                high[element.A] - high[element.B], low[element.A] - low[element.B], out _slopes[i]);
            Amps[i] = amps;
            left[element.A] += amps;
            left[element.B] -= amps;
        }

        double worst = 0;
        for (int node = 0; node < left.Length; node++)
        {
            if (node != _reference)
            {
                worst = Math.Max(worst, Math.Abs(left[node]));
            }
        }

        return double.IsNaN(worst) ? double.PositiveInfinity : worst;
    }

    /// <summary>Factors the matrix of slopes as last evaluated.</summary>
    internal void Refactor()
    {
        Array.Clear(Diagonal);
        Array.Clear(Entries);
        for (int i = 0; i < _elements.Length; i++)
        {
            Stamp(_elements[i].A, _elements[i].B, _entry[i], _slopes[i]);
        }

        for (int i = 0; i < _stages.Length; i++)
        {
            Stamp(_stages[i].OutA, _stages[i].OutB, _stageEntries[i], _stageSlopes[i]);
        }

        int home = Islands.Of(_reference);
        int reachedHome = Reached.Of(_reference);
        for (int node = 0; node < High.Length; node++)
        {
            if (node != _reference && Islands.Of(node) == node && node != home)
            {
                bool apart = Reached.Of(node) == node && node != reachedHome;
                Diagonal[_place[node]] += apart ? 1 : FootholdSiemens;
            }
        }

        Factor.Factor(Diagonal, Entries);
        for (int i = 0; i < _stages.Length; i++)
        {
            ConverterStage stage = _stages[i];
            _couplings[i] = stage.Coupling(Volts(stage.A, stage.B), Volts(stage.OutA, stage.OutB));
        }

        _coupled.Prepare(_couplings);
    }

    /// <summary>Solves for the Newton step at the present currents; the step is left in <see cref="Step"/>.</summary>
    internal double FindStep()
    {
        for (int place = 0; place < Step.Length; place++)
        {
            Step[place] = -Left[NodeOfPlace[place]];
        }

        _coupled.Solve(Step);
        double largest = 0;
        foreach (double volts in Step)
        {
            largest = Math.Max(largest, Math.Abs(volts));
        }

        return largest;
    }

    /// <summary>The part of the step after which the first regulated output stands at the edge of its regulation.</summary>
    internal double ShareToEdge(double share)
    {
        foreach (ChargerOutput charger in _chargers)
        {
            if (charger.Connected)
            {
                share = charger.Curve.ShareToEdge(Volts(charger.A, charger.B), StepVolts(charger.A, charger.B), share);
            }
        }

        foreach (ConverterStage stage in _stages)
        {
            if (stage.On)
            {
                share = stage.Curve.ShareToEdge(Volts(stage.OutA, stage.OutB), StepVolts(stage.OutA, stage.OutB), share);
            }
        }

        return share;
    }

    /// <summary>Moves the voltages by a part of the step, keeping both parts of each.</summary>
    internal void Move(double share)
    {
        for (int place = 0; place < Step.Length; place++)
        {
            int node = NodeOfPlace[place];
            double add = Low[node] + (share * Step[place]);
            double sum = High[node] + add;
            Low[node] = add - (sum - High[node]);
            High[node] = sum;
        }
    }

    private double Volts(int above, int below) => (High[above] - High[below]) + (Low[above] - Low[below]);

    private double StepVolts(int above, int below) => new BranchPair(_place[above], _place[below]).Times(Step);

    private void EvaluateOutputs()
    {
        for (int i = 0; i < _stages.Length; i++)
        {
            ConverterStage stage = _stages[i];
            double volts = Volts(stage.OutA, stage.OutB);
            double amps = stage.Delivered(volts, out double slope);
            _stageSlopes[i] = -slope;
            stage.OutputWatts = Math.Max(0, volts * amps);
            OutputAmps[stage.Index] = amps;
            Left[stage.OutA] -= amps;
            Left[stage.OutB] += amps;
        }
    }

    private void Stamp(int a, int b, int entry, double siemens)
    {
        if (_place[a] >= 0)
        {
            Diagonal[_place[a]] += siemens;
        }

        if (_place[b] >= 0)
        {
            Diagonal[_place[b]] += siemens;
        }

        if (entry >= 0)
        {
            Entries[entry] -= siemens;
        }
    }

    /// <summary>The voltages as they stand, in two parts, to be put back later.</summary>
    public (double[] High, double[] Low) CopyVolts() => ((double[])High.Clone(), (double[])Low.Clone());

    /// <summary>Puts copied voltages back.</summary>
    public void PutBack(double[] high, double[] low)
    {
        Array.Copy(high, High, high.Length);
        Array.Copy(low, Low, low.Length);
    }
}
