using WireCheck.Circuit.Wiring;
using WireCheck.Description;
using WireCheck.Facts.Gather;
using WireCheck.Faults;
using WireCheck.Knowledge;
using WireCheck.States;
using WireCheck.Text;

namespace WireCheck.Tests.Faults;

/// <summary>The faults of a described box.</summary>
internal static class StudiedBox
{
    internal static FaultStudy Example(string name) =>
        Of(File.ReadAllText(Path.Combine(Golden.Root, "examples", name + ".yaml")));

    internal static FaultStudy Of(string text)
    {
        ProblemList problems = new();
        Pack? pack = PackReader.Read("box.yaml", text, problems);
        problems.InOrder().Select(p => p.ToString()).ShouldBeEmpty();
        FaultStudy study = new GatherContext(SolvedBox.Solve(pack.ShouldNotBeNull(), new WiringData(Library.Embedded))).Faults;
        study.Unsolved.Select(p => p.ToString()).ShouldBeEmpty();
        return study;
    }

    /// <summary>The faults at a terminal of a part.</summary>
    internal static PointFaults At(this FaultStudy study, string part, string place) =>
        study.Points.First(p => p.Point.PartId == part && p.Point.Place == place);
}
