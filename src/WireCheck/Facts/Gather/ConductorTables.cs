using WireCheck.Description.Kinds;
using WireCheck.Facts.Catalogue;
using WireCheck.Knowledge;

namespace WireCheck.Facts.Gather;

/// <summary>Ampacity of a conductor by each of the tables that a rule set of one trade judges by.</summary>
internal static class ConductorTables
{
    internal static void Gather(Conductor part, FactSubject subject, GatherContext context)
    {
        subject.Set(ConductorTableFacts.Area, ConductorTable.Area(part.Size.Value));
        subject.Set(ConductorTableFacts.Sheathed, part.Sleeve?.Value == true);
        AmpacityQuestion question = context.Ampacities.Question(part);
        Set(ConductorTableFacts.BySmallCraftLaw, "cfr-183-425", question, subject, context);
        Set(ConductorTableFacts.BySmallCraftStandard, "iso-10133", question, subject, context);
        Set(ConductorTableFacts.ByAircraftHandbook, "ac-43-13-1b", question, subject, context);
    }

    private static void Set(Fact fact, string basis, AmpacityQuestion question, FactSubject subject, GatherContext context)
    {
        if (context.Library.Ampacity.Find(basis) is { } table && table.Covers(question.Size))
        {
            subject.SetNumber(fact, table.Rate(question)?.Amps);
        }
    }
}
