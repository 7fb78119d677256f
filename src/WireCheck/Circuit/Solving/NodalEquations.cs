using WireCheck.Circuit.Elements;

namespace WireCheck.Circuit.Solving;

/// <summary>
/// The nodal equations of a network: the currents left over at each node, and the matrix of their slopes. Node
/// voltages are held in two parts, so that a micro-ohm bar at 58 V still leaves less than a nano-ampere over.
/// </summary>
internal sealed class NodalEquations
{
    /// <summary>
    /// Conductance that gives an island without the reference a foothold, S. It stands in the matrix only, never in
    /// the currents, so no answer depends on it.
    /// </summary>
    private const double FootholdSiemens = 1e-7;

    private readonly Element[] _elements;
    private readonly ConverterStage[] _stages;
    private readonly int[] _stageEntries;
    private readonly SparsePattern _pattern;
    private readonly int[] _place;
    private readonly int[] _entry;
    private readonly double[] _slopes;
    private readonly double[] _stageSlopes;
    private readonly int _reference;

    internal NodalEquations(Network network)
    {
        _elements = [.. network.Elements];
        _stages = [.. _elements.OfType<ConverterStage>()];
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
        Factor = new SparseFactor(_pattern);
        Islands = new Islands(network);
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

    /// <summary>True when every element is a straight line, so that one factor serves every step.</summary>
    internal bool IsLinear { get; }

    internal SparseFactor Factor { get; }

    internal Islands Islands { get; }

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
        for (int node = 0; node < High.Length; node++)
        {
            if (node != _reference && Islands.Of(node) == node && node != home)
            {
                Diagonal[_place[node]] += FootholdSiemens;
            }
        }

        Factor.Factor(Diagonal, Entries);
    }

    /// <summary>Solves for the Newton step at the present currents; the step is left in <see cref="Step"/>.</summary>
    internal double FindStep()
    {
        for (int place = 0; place < Step.Length; place++)
        {
            Step[place] = -Left[NodeOfPlace[place]];
        }

        Factor.Solve(Step);
        double largest = 0;
        foreach (double volts in Step)
        {
            largest = Math.Max(largest, Math.Abs(volts));
        }

        return largest;
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

    private void EvaluateOutputs()
    {
        for (int i = 0; i < _stages.Length; i++)
        {
            ConverterStage stage = _stages[i];
            double volts = (High[stage.OutA] - High[stage.OutB]) + (Low[stage.OutA] - Low[stage.OutB]);
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
}
