using WireCheck.Faults;

namespace WireCheck.Tests.Faults;

/// <summary>What must hold of shorts in any box.</summary>
public class FaultPropertyTests
{
    private const string Box = """
        pack: Box
        language: 1
        surroundings: {ambient: {from: 5 °C, to: 35 °C}}
        defaults: {conductor: {material: copper, insulation: pvc-105, ends: crimped-ring}}
        cells:
          bank: {part: lfp-prismatic-100ah, series: 4, parallel: 1, links: {section: 20 x 2 mm, length: 70 mm}}
        fuses:
          main: {part: class-t, rating: 100 A}
          f1: {part: blade, rating: 10 A}
        loads:
          lamp: {power: 20 W}
        conductors:
          w1: {from: bank.+, to: main.1, size: 4 AWG, length: 90 mm}
          w2: {from: main.2, to: f1.1, size: 4 AWG, length: 200 mm}
          w3: {from: f1.2, to: lamp.+, size: 14 AWG, length: LENGTH}
          w4: {from: lamp.-, to: bank.-, size: 14 AWG, length: 1 m}
        """;

    [Fact]
    public void A_longer_wire_never_raises_the_current_nor_shortens_the_clearing()
    {
        double lastLowest = double.PositiveInfinity;
        double lastHighest = double.PositiveInfinity;
        double lastSeconds = 0;
        foreach (string length in new[] { "100 mm", "500 mm", "2 m", "5 m", "20 m" })
        {
            PointFaults faults = StudiedBox.Of(Box.Replace("LENGTH", length, StringComparison.Ordinal)).At("w3", "lamp.+");
            faults.Lowest!.Amps.ShouldBeLessThan(lastLowest, length);
            faults.Highest!.Amps.ShouldBeLessThan(lastHighest, length);
            faults.Lowest.Amps.ShouldBeLessThan(faults.Highest.Amps, length);
            faults.Lowest.Seconds.ShouldBeGreaterThan(lastSeconds, length);
            (lastLowest, lastHighest, lastSeconds) = (faults.Lowest.Amps, faults.Highest.Amps, faults.Lowest.Seconds);
        }
    }

    [Fact]
    public void The_nearer_fuse_opens_and_only_its_branch_goes_dark()
    {
        FaultStudy study = StudiedBox.Of(Box.Replace("LENGTH", "1 m", StringComparison.Ordinal));
        FaultOutcome outcome = study.At("w3", "lamp.+").Lowest!;

        outcome.Steps.Select(s => s.DeviceId).ShouldBe(["f1"]);
        study.Dark(outcome).ShouldBe(["lamp"]);
        study.Pairs.ShouldHaveSingleItem().DownstreamId.ShouldBe("f1");
    }
}
