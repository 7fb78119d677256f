using WireCheck.Sizing;

namespace WireCheck.Tests.Sizing;

/// <summary>What the builder allows and pays, and what happens when nothing passes.</summary>
public sealed class AllowanceTests
{
    private const string Heater = """
        pack: Heater box
        language: 1
        surroundings: {ambient: {from: 5 °C, to: 35 °C}}
        defaults: {conductor: {insulation: pvc-105, ends: crimped-ring}}
        cells:
          bank: {part: lfp-prismatic-100ah, series: 4, link_resistance: 0.1 mohm, clamp: yes, separators: yes, covered: yes, balanced: yes}
        fuses:
          main: {part: class-t, rating: 60 A}
        loads:
          heater: {power: 120 W}
        conductors:
          w1: {from: bank.+, to: main.1, size: 4 AWG, length: 90 mm}
          w2: {from: main.2, to: heater.+, size: 4 AWG, length: 900 mm}
          w3: {from: heater.-, to: bank.-, size: 4 AWG, length: 900 mm}
        modes:
          warming: {draws: {heater: 120 W}, for: 2 h}

        """;

    [Fact]
    public void Only_sizes_and_ratings_in_stock_are_chosen()
    {
        SizingResult all = SizedBoxes.Size(Heater).Result!;
        SizingResult some = SizedBoxes.Size(
            Heater + "stock: [{size: 6 AWG, length: 5 m}, {size: 2 AWG, length: 1 m}, {part: class-t, ratings: [50 A, 80 A]}]\n").Result!;

        all.Choice("w2").Value.Options.Count.ShouldBeGreaterThan(10);
        some.Choice("w2").Value.Options.Select(o => o.Text).ShouldBe(["6 AWG", "2 AWG"]);
        some.Choice("w2").Chosen.Text.ShouldBe("6 AWG");
        some.Choice("main").Chosen.Text.ShouldBe("50 A");
        some.After.Findings.Select(f => f.Rule).Except(all.After.Findings.Select(f => f.Rule)).ShouldBeEmpty();
    }

    [Fact]
    public void Where_there_are_prices_the_cheapest_that_passes_is_chosen_though_it_is_thicker()
    {
        SizingResult priced = SizedBoxes.Size(Heater + "costs: {prices: {10 AWG: 3, 6 AWG: 1, 2 AWG: 2}}\n").Result!;

        priced.Choice("w2").Chosen.Text.ShouldBe("6 AWG");
        priced.Choice("w3").Chosen.Text.ShouldBe("6 AWG");
        priced.PriceAfter!.Value.ShouldBe(1.89, 1e-9);
    }

    [Fact]
    public void A_kept_wire_stays_and_is_no_choice()
    {
        SizingOutcome outcome = SizedBoxes.Size(Heater, "w2");

        outcome.Result!.Choices.ShouldNotContain(c => c.Value.Id == "w2");
        outcome.Edits!.NewText().ShouldContain("w2: {from: main.2, to: heater.+, size: 4 AWG, length: 900 mm}");
    }

    // A socket good for 12 A, a load of 10 A: a blade fuse must be 15 A to carry it for hours, and 12 A or less for the socket.
    [Fact]
    public void When_nothing_passes_the_rules_that_stand_against_each_other_are_told()
    {
        string socket = Heater
            .Replace("{part: class-t, rating: 60 A}", "{part: blade, rating: 10 A}", StringComparison.Ordinal)
            .Replace("loads:", "ports:\n  out: {part: vehicle-socket, rated: 12 A, cap: yes}\nloads:", StringComparison.Ordinal)
            .Replace("heater: {power: 120 W}", "heater: {at: out, power: 110 W}", StringComparison.Ordinal)
            .Replace("heater.", "out.", StringComparison.Ordinal)
            .Replace("heater: 120 W", "heater: 110 W", StringComparison.Ordinal);

        SizingResult result = SizedBoxes.Size(socket).Result!;

        Conflict conflict = result.Conflicts.Single(c => c.Finding.Rule == "socket-over-contact-rating");
        conflict.Value!.Words.ShouldBe("rating of main");
        conflict.Rules.ShouldBe(["fuse-below-steady-load", "socket-over-contact-rating"]);
    }
}
