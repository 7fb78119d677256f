using WireCheck.Circuit.Wiring;
using WireCheck.Description;

namespace WireCheck.States;

/// <summary>A box solved in every mode at every corner.</summary>
public sealed class SolvedBox
{
    private SolvedBox(BoxWiring wiring, IReadOnlyList<BoxMode> modes, IReadOnlyList<Corner> corners, IReadOnlyList<OperatingPoint> points)
    {
        Wiring = wiring;
        Modes = modes;
        Corners = corners;
        Points = points;
    }

    public Pack Pack => Wiring.Pack;

    public BoxWiring Wiring { get; }

    public IReadOnlyList<BoxMode> Modes { get; }

    public IReadOnlyList<Corner> Corners { get; }

    /// <summary>Mode by mode, corner by corner.</summary>
    public IReadOnlyList<OperatingPoint> Points { get; }

    /// <summary>All points of one mode.</summary>
    public IEnumerable<OperatingPoint> In(string modeId) => Points.Where(p => p.Mode.Id == modeId);

    /// <summary>The points that last long enough to heat something.</summary>
    public IEnumerable<OperatingPoint> Steady => Points.Where(p => p.Mode.Steady);

    /// <summary>Solves every mode at every corner.</summary>
    public static SolvedBox Solve(Pack pack, WiringData data)
    {
        BoxWiring wiring = BoxWiring.Build(pack, data);
        IReadOnlyList<BoxMode> modes = States.Modes.For(pack);
        IReadOnlyList<Corner> corners = Corner.For(pack, data);
        StateSolver solver = new(wiring);
        return new SolvedBox(wiring, modes, corners, solver.SolveAll(modes, corners));
    }
}
