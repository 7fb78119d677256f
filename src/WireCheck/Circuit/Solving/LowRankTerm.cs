namespace WireCheck.Circuit.Solving;

/// <summary>A conductance that is added between two places of a factored matrix, or taken away.</summary>
/// <param name="Pair">The two places.</param>
/// <param name="Reach">The factor's answer to 1 A into the first and out of the second, V.</param>
/// <param name="Siemens">What is added, S.</param>
/// <param name="BaseVolts">Voltage between the two when the matrix was factored, V; 0 where the step starts elsewhere.</param>
internal sealed record LowRankTerm(BranchPair Pair, double[] Reach, double Siemens, double BaseVolts);

/// <summary>A branch whose current is no straight line over its voltage, and its slope when the matrix was factored.</summary>
internal sealed class BentBranch
{
    private readonly double[] _slopes;
    private readonly int _index;
    private readonly int _size;
    private double _ohms = double.NaN;

    private BentBranch(BranchPair pair, double[] slopes, int index, int size)
    {
        Pair = pair;
        _slopes = slopes;
        _index = index;
        _size = size;
    }

    internal BranchPair Pair { get; }

    /// <summary>The factor's answer to 1 A through it; valid once <see cref="Ohms"/> was asked.</summary>
    internal double[] Reach { get; private set; } = [];

    internal double BaseSlope { get; private set; }

    /// <summary>Slope as last evaluated, S.</summary>
    internal double Slope => _slopes[_index];

    /// <summary>Every element and converter output that is not a straight line.</summary>
    internal static BentBranch[] In(NodalEquations equations)
    {
        int size = equations.Step.Length;
        List<BentBranch> bent = [];
        for (int i = 0; i < equations.Elements.Length; i++)
        {
            if (!equations.Elements[i].IsLinear)
            {
                bent.Add(new BentBranch(
                    equations.Pair(equations.Elements[i].A, equations.Elements[i].B), equations.Slopes, i, size));
            }
        }

        for (int i = 0; i < equations.Stages.Length; i++)
        {
            bent.Add(new BentBranch(
                equations.Pair(equations.Stages[i].OutA, equations.Stages[i].OutB), equations.StageSlopes, i, size));
        }

        return [.. bent];
    }

    /// <summary>Takes the present slope as the one the factor holds.</summary>
    internal void Start()
    {
        BaseSlope = Slope;
        _ohms = double.NaN;
    }

    /// <summary>Resistance of the factored network between its ends, Ω.</summary>
    internal double Ohms(SymmetricFactor factor)
    {
        if (double.IsNaN(_ohms))
        {
            // Most never leave their line, and a large network has thousands of them.
            Reach = Reach.Length == 0 ? new double[_size] : Reach;
            Array.Clear(Reach);
            Pair.AddTo(Reach, 1);
            factor.Solve(Reach);
            _ohms = Pair.Times(Reach);
        }

        return _ohms;
    }
}

/// <summary>Answers of a factor to 1 A through a contact, kept for the contacts that were opened last.</summary>
internal sealed class ReachCache(int size)
{
    private const int Kept = 12;

    private readonly double[][] _reach = new double[Kept][];
    private readonly int[] _index = new int[Kept];
    private int _used;
    private int _next;

    internal void Clear() => (_used, _next) = (0, 0);

    internal double[] Of(int index, BranchPair pair, SymmetricFactor factor)
    {
        for (int i = 0; i < _used; i++)
        {
            if (_index[i] == index)
            {
                return _reach[i];
            }
        }

        int slot = _next;
        _next = (_next + 1) % Kept;
        _used = Math.Max(_used, slot + 1);
        double[] reach = _reach[slot] ??= new double[size];
        _index[slot] = index;
        Array.Clear(reach);
        pair.AddTo(reach, 1);
        factor.Solve(reach);
        return reach;
    }
}
