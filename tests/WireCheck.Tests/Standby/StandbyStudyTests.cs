using WireCheck.Quantities;
using WireCheck.Standby;
using WireCheck.States;
using WireCheck.Tests.Facts.Gather;

namespace WireCheck.Tests.Standby;

/// <summary>Who draws from a box at rest, for how long that goes, and what would help, on small boxes.</summary>
public sealed class StandbyStudyTests
{
    private const double Day = Durations.SecondsPerDay;

    /// <summary>A BMS that draws nothing, a meter of 1 mA behind it and a tracker of 10 mA straight on the cells; 25 °C, no self-discharge.</summary>
    private const string Tracked = """
        pack: Box with a tracker
        language: 1
        surroundings: {ambient: {from: 25 °C, to: 25 °C}}
        defaults: {conductor: {material: copper, insulation: pvc-105, ends: crimped-ring}}
        cells:
          bank: {part: lfp-prismatic-100ah, series: 4, parallel: 1, self_discharge: 0 %/month, links: {section: 20 x 2 mm, length: 70 mm}}
        bms:
          bms: {part: bms-4s-lfp-60a, standby: 0 A}
        fuses:
          main: {part: class-t, rating: 60 A}
        switches:
          master: {part: panel-rocker}
        meters:
          gauge: {part: coulomb-meter, standby: 1 mA}
          tracker: {standby: 10 mA}
        loads:
          lamp: {current: 2 A, window: 10 .. 15 V}
        conductors:
          w1: {from: bank.+, to: main.1, size: 6 AWG, length: 100 mm}
          w2: {from: main.2, to: master.1, size: 10 AWG, length: 200 mm}
          w3: {from: master.2, to: lamp.+, size: 10 AWG, length: 500 mm}
          w4: {from: lamp.-, to: bms.P-, size: 10 AWG, length: 500 mm}
          w5: {from: bms.B-, to: bank.-, size: 6 AWG, length: 100 mm}
          w6: {from: main.2, to: gauge.+, size: 18 AWG, length: 200 mm}
          w7: {from: gauge.-, to: bms.P-, size: 18 AWG, length: 200 mm}
          w8: {from: bank.+, to: tracker.+, size: 18 AWG, length: 200 mm}
          w9: {from: tracker.-, to: bank.-, size: 18 AWG, length: 200 mm}
        """;

    [Fact]
    public void Two_stages_use_all_currents_and_then_those_on_the_cells()
    {
        StandbyState stored = Study(Tracked).Stored.ShouldNotBeNull();

        // 90 % of 100 Ah is counted on; by the table of rested voltages nothing of it is left at 2.5 V.
        stored.Life.ToCutOff.ShouldBe(90 * 3600 / 0.011, 1e-3 * 90 * 3600 / 0.011);

        // From 2.5 V down to 2.0 V it is five sixths of the hundredth below the table's 2.6 V, over the tracker alone.
        stored.Life.AmpsAfterCutOff.ShouldBe(0.010, 1e-7);
        double reserve = 0.9 * 0.01 * (2.5 - 2.0) / (2.6 - 2.0) * 360_000;
        stored.Life.ToDamage.ShouldBe(reserve / 0.010, 1e-3 * reserve / 0.010);
    }

    [Fact]
    public void The_tracker_goes_round_the_bms_and_the_meter_through_it()
    {
        IReadOnlyList<Drain> drains = Study(Tracked).Stored!.Drains;

        drains.Single(d => d.PartId == "tracker").Chain.ShouldBe(["w8", "w9"]);
        drains.Single(d => d.PartId == "gauge").Chain.ShouldBe(["w1", "main", "w6", "w7", "bms", "w5"]);
    }

    [Fact]
    public void The_best_move_is_the_one_that_wins_most_when_solved_again()
    {
        StandbyStudy study = Study(Tracked);

        Move best = study.BestMove.ShouldNotBeNull();

        best.PartId.ShouldBe("tracker");
        best.Behind.ShouldBe("master");
        best.Amps.ShouldBe(0.001, 1e-7);
        best.Life.ToCutOff.ShouldBe(90 * 3600 / 0.001, 1e-3 * 90 * 3600 / 0.001);
        study.Moves.Select(m => m.PartId).ShouldBe(["tracker", "gauge"]);
    }

    [Fact]
    public void What_is_meant_to_stay_live_is_moved_last()
    {
        StandbyStudy study = Study(Tracked + "\nstays_live: [tracker]");

        study.Moves.Select(m => m.PartId).ShouldBe(["gauge", "tracker"]);
        study.BestMove!.PartId.ShouldBe("gauge");
        study.Moves[1].MeantLive.ShouldBeTrue();
    }

    /// <summary>Left plugged in without mains, a charger that bleeds 20 mA is the first to take off: 11 mA are left.</summary>
    [Fact]
    public void Of_a_box_left_plugged_the_charger_is_a_move_too()
    {
        StandbyStudy study = Study(Tracked.Replace("loads:", "chargers:\n  mains: {part: mains-14v6-10a, reverse_leakage: 20 mA}\nloads:", StringComparison.Ordinal) + """

              w10: {from: mains.out+, to: main.2, size: 14 AWG, length: 300 mm}
              w11: {from: mains.out-, to: bms.P-, size: 14 AWG, length: 300 mm}
            """.ReplaceLineEndings("\n"));

        Move best = study.MovesLeftPlugged[0];

        best.PartId.ShouldBe("mains");
        best.Amps.ShouldBe(0.011, 1e-6);
        best.Life.ToCutOff.ShouldBeGreaterThan(study.LeftPlugged!.Life.ToCutOff * 2);
        study.MovesLeftPlugged.Select(m => m.PartId).ShouldBe(["mains", "tracker", "gauge"]);
    }

    [Fact]
    public void Heat_doubles_what_the_cells_lose_by_themselves()
    {
        string losing = Tracked.Replace("self_discharge: 0 %/month", "self_discharge: 3 %/month", StringComparison.Ordinal);
        double at25 = Study(losing).Stored!.Life.SelfDischargeAmps;
        double at35 = Study(losing.Replace("{from: 25 °C, to: 25 °C}", "{from: 30 °C, to: 40 °C}", StringComparison.Ordinal))
            .Stored!.Life.SelfDischargeAmps;

        at35.ShouldBe(2 * at25, 1e-9);
        at25.ShouldBe(3.0 / 720, 0.03 * 3.0 / 720); // 3 Ah in a month of 720 h or a little more
    }

    /// <summary>A lamp that stands in series with a coil: one current, which must not be counted twice.</summary>
    [Fact]
    public void A_current_through_two_consumers_in_a_row_is_counted_once()
    {
        string inRow = Tracked
            .Replace("tracker: {standby: 10 mA}", "", StringComparison.Ordinal)
            .Replace("  w8: {from: bank.+, to: tracker.+, size: 18 AWG, length: 200 mm}\n", "  w8: {from: main.2, to: r1.1, size: 18 AWG, length: 200 mm}\n", StringComparison.Ordinal)
            .Replace("  w9: {from: tracker.-, to: bank.-, size: 18 AWG, length: 200 mm}", "  w9: {from: r1.2, to: r2.1, size: 18 AWG, length: 200 mm}\n  w10: {from: r2.2, to: bms.P-, size: 18 AWG, length: 200 mm}", StringComparison.Ordinal)
            .Replace("loads:\n", "resistors:\n  r1: {resistance: 900 Ω, power: 1 W}\n  r2: {resistance: 400 Ω, power: 1 W}\nloads:\n", StringComparison.Ordinal);
        StandbyStudy study = Study(inRow);
        SolvedBox box = PackNumbers.Solve("box.yaml", inRow).Box!;

        study.Stored!.Drains.Select(d => d.PartId).ShouldBe(["r1", "gauge"]);
        study.Stored.Amps.ShouldBe(BankAmps.Of(box, study.Stored.Point), 1e-9);
        study.Stored.Drains[0].Chain.ShouldBe(["w1", "main", "w8", "w9", "r2", "w10", "bms", "w5"]);
    }

    [Fact]
    public void A_meter_on_a_tap_drains_the_lower_cells_and_their_group_decides()
    {
        string tapped = Tracked.Replace("w8: {from: bank.+,", "w8: {from: bank.t2,", StringComparison.Ordinal);
        StandbyState stored = Study(tapped).Stored!;

        stored.Amps.ShouldBe(0.011, 1e-7);
        stored.Life.ToCutOff.ShouldBe(90 * 3600 / 0.011, 1e-3 * 90 * 3600 / 0.011);
    }

    [Fact]
    public void A_time_scales_with_the_capacity_and_falls_with_each_consumer()
    {
        string twice = Tracked.Replace("parallel: 1", "parallel: 2", StringComparison.Ordinal);

        double once = Study(Tracked).Stored!.Life.ToCutOff;

        Study(twice).Stored!.Life.ToCutOff.ShouldBe(2 * once, 1e-6 * once);
        (Study(GatheredBox.Plain).Stored!.Life.ToCutOff / Day).ShouldBeInRange(200, 280);
    }

    private static StandbyStudy Study(string text)
    {
        (SolvedBox? box, IReadOnlyList<WireCheck.Text.Problem> problems) = PackNumbers.Solve("box.yaml", text);
        problems.Select(p => p.ToString()).ShouldBeEmpty();
        return new StandbyStudy(box.ShouldNotBeNull());
    }
}
