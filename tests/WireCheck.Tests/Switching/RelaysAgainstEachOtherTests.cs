using WireCheck.States;
using WireCheck.Switching;

namespace WireCheck.Tests.Switching;

/// <summary>
/// Two relays, each of which takes the other's feed away when it pulls in: the coil of each hangs on the rest contact of the
/// other. Whichever is first stays in and keeps the other out; neither buzzes. The wire to k2's coil is the longer, so k1 has
/// a little more voltage and is first.
/// </summary>
public sealed class RelaysAgainstEachOtherTests
{
    private const string Box = """
        pack: Two relays that lock each other out
        language: 1
        surroundings: {ambient: {from: 20 °C, to: 20 °C}}
        defaults: {conductor: {material: copper, insulation: pvc-105, ends: crimped-ring}}
        cells:
          bank: {part: lfp-prismatic-100ah, series: 4, parallel: 1, links: {section: 20 x 2 mm, length: 70 mm}}
        switches:
          key: {part: panel-rocker}
        relays:
          k1: {part: relay-12v-40a-change-over}
          k2: {part: relay-12v-40a-change-over}
        conductors:
          w1: {from: bank.+, to: key.1, size: 14 AWG, length: 300 mm}
          w2: {from: key.2, to: k1.30, size: 14 AWG, length: 300 mm}
          w3: {from: key.2, to: k2.30, size: 14 AWG, length: 300 mm}
          w4: {from: k2.87a, to: k1.86, size: 18 AWG, length: 100 mm}
          w5: {from: k1.87a, to: k2.86, size: 18 AWG, length: 900 mm}
          w6: {from: k1.85, to: bank.-, size: 18 AWG, length: 300 mm}
          w7: {from: k2.85, to: bank.-, size: 18 AWG, length: 300 mm}
        modes:
          working: {closed: [key], for: 1 h}
        """;

    [Fact]
    public void One_pulls_in_and_keeps_the_other_out()
    {
        SwitchedBox box = new(StudiedBox.Read(Box), StudiedBox.Data);
        Settling settling = new(box);
        box.Plug(PlugCase.For(box.Wiring.Pack)[0]);
        box.SetSwitches(1);

        settling.FromRest();

        settling.Energised().ShouldBe(1UL);
        settling.Chatters.ShouldAllBe(c => !c);

        // From both held in, both coils are dead; the first to let go gives the other its feed back.
        settling.FromPulledIn(3);
        settling.Energised().ShouldBeOneOf(1UL, 2UL);
        settling.Chatters.ShouldAllBe(c => !c);
    }

    [Fact]
    public void The_solved_mode_does_not_take_them_for_chattering_either()
    {
        SolvedBox solved = SolvedBox.Solve(StudiedBox.Read(Box), StudiedBox.Data);

        foreach (OperatingPoint point in solved.In("working"))
        {
            point.ChatteringRelays.ShouldBeEmpty();
            point.Relays.Count(r => r.Energised).ShouldBe(1);
        }
    }
}
