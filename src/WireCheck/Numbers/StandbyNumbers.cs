using WireCheck.Circuit.Wiring;
using WireCheck.Facts;
using WireCheck.Facts.Catalogue;
using WireCheck.Facts.Gather;
using WireCheck.States;

namespace WireCheck.Numbers;

/// <summary>One consumer of a box at rest.</summary>
/// <param name="Id">Id of the part.</param>
/// <param name="Amps">Current it draws, A.</param>
/// <param name="Share">Its part of the current that leaves the cells, 0 to 1.</param>
/// <param name="Chain">Parts and conductors that current flows through, from the bank's positive to its negative.</param>
public sealed record StandbyConsumer(string Id, double Amps, double Share, IReadOnlyList<string> Chain);

/// <summary>A box at rest in one of the two ways.</summary>
/// <param name="Mode">Id of the mode.</param>
/// <param name="Words">What it is.</param>
/// <param name="Corner">The corner of the largest current.</param>
/// <param name="Amps">Current that leaves the cells, A, without self-discharge.</param>
/// <param name="Consumers">Largest first.</param>
public sealed record StandbyState(string Mode, string Words, string Corner, double Amps, IReadOnlyList<StandbyConsumer> Consumers);

/// <summary>What a box draws at rest and how long it keeps.</summary>
/// <param name="States">Stored and left plugged.</param>
/// <param name="SecondsToCutOff">From full until the BMS opens, stored, self-discharge counted, s; null when nothing tells.</param>
/// <param name="SecondsToDamage">From there until a cell is lost, s.</param>
public sealed record StandbyNumbers(IReadOnlyList<StandbyState> States, double? SecondsToCutOff, double? SecondsToDamage)
{
    /// <summary>A current below this is none, A.</summary>
    private const double SmallestAmps = 1e-7;

    /// <summary>The box's standby.</summary>
    public static StandbyNumbers Of(SolvedBox box)
    {
        GatherContext context = new(box);
        FactSubject pack = BoxFacts.Gather(box).Pack;
        return new StandbyNumbers(
            [.. new[] { Modes.Stored, Modes.LeftPlugged }.Select(mode => OfMode(context, mode))],
            pack.Find(PackFacts.TimeToCutOff.Name)?.Value as double?,
            pack.Find(PackFacts.TimeFromCutOffToDamage.Name)?.Value as double?);
    }

    private static StandbyState OfMode(GatherContext context, string mode)
    {
        OperatingPoint worst = context.Box.In(mode).MaxBy(p => Banks.AmpsLeavingAll(context.Wiring, p))!;
        double total = Math.Max(0, Banks.AmpsLeavingAll(context.Wiring, worst));
        List<StandbyConsumer> consumers = [];
        foreach (WiredPart part in context.Wiring.Parts)
        {
            double amps = StandbyGathering.AmpsOf(part, worst);
            if (amps > SmallestAmps)
            {
                consumers.Add(new StandbyConsumer(
                    part.Part.Id, amps, total > 0 ? amps / total : 0, StandbyGathering.ChainOf(part, worst, context)));
            }
        }

        return new StandbyState(
            mode, worst.Mode.Words, worst.Corner.Words, total, [.. consumers.OrderByDescending(c => c.Amps).ThenBy(c => c.Id, StringComparer.Ordinal)]);
    }
}
