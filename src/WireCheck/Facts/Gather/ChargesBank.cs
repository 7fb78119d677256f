using WireCheck.Charging;
using WireCheck.Circuit.Wiring;
using WireCheck.Description;
using WireCheck.Description.Kinds;
using WireCheck.Facts.Catalogue;
using WireCheck.States;

namespace WireCheck.Facts.Gather;

/// <summary>Gathers whether a source brings anything to the cells in any state of the box.</summary>
internal static class ChargesBank
{
    internal static void Gather(Part part, FactSubject subject, GatherContext context)
    {
        if (ChargesBankFacts.Of(part.Kind) is not { } facts || context.Charging.Source(part.Id) is not { } source
            || !context.Wiring.Of<WiredBank>().Any() || IsToldElsewhere(part, source, context))
        {
            return;
        }

        double? most = null;
        foreach (OperatingPoint point in context.SolvedPoints())
        {
            if (point.Mode.Source(part.Id) == SourceState.Powered)
            {
                most = Math.Max(most ?? 0, Brings(source, point, context));
            }
        }

        subject.SetNumber(facts.MostIntoBank, most);
    }

    /// <summary>
    /// What the banks take while it gives, A. One that gives all it can, while something else takes even more, brings that.
    /// </summary>
    private static double Brings(ChargeSource source, OperatingPoint point, GatherContext context)
    {
        double gives = source.Amps(point);
        return gives <= ChargeSource.SmallestAmps ? 0
            : source.LimitAt(point) is ChargeLimit.Current or ChargeLimit.Input ? gives
            : -Banks.AmpsLeavingAll(context.Wiring, point);
    }

    /// <summary>
    /// What feeds a charger is judged by what that one gives; a reversed source, a turned diode and a voltage below the
    /// cells' have a rule of their own.
    /// </summary>
    private static bool IsToldElsewhere(Part part, ChargeSource source, GatherContext context)
    {
        bool feeds = part is not Charger && Modes.ChargingGroups(context.Pack).Exists(g => g.Id != part.Id && g.Sources.ContainsKey(part.Id));
        bool low = source.Part is not WiredPanel && context.Charging.DirectBank(source) is { } bank
            && source.HighestVolts < Banks.NominalVolts(context, bank.Cells);
        return feeds || low || SourcePolarity.BackwardsTo(source, context) is not null
            || context.Charging.Sources.Any(s => SourcePolarity.BackwardsTo(s, context) == part.Id)
            || context.Wiring.Of<WiredDiode>().Any(d => PolarityGathering.CutsOff(d, part.Id, context));
    }
}
