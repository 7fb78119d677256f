using WireCheck.Description;
using WireCheck.Description.Kinds;
using WireCheck.Facts.Catalogue;
using WireCheck.Knowledge;

namespace WireCheck.Facts.Gather;

/// <summary>Makes a subject of each stud on which two or more lugs lie.</summary>
internal static class TerminalGatherer
{
    internal static IEnumerable<FactSubject> Gather(GatherContext context)
    {
        var lugs = context.Pack.Conductors
            .SelectMany(c => new[] { (End: c.From, Class: c.FromEnd.Class.Value, c), (End: c.To, Class: c.ToEnd.Class.Value, c) })
            .Where(l => context.Library.Joints[l.Class].Lug)
            .GroupBy(l => l.End.ToString());
        foreach (var stud in lugs.OrderBy(g => g.First().End.Position))
        {
            Conductor[] heaviest = [.. stud.Select(l => l.c).OrderByDescending(c => ConductorTable.Area(c.Size.Value))];
            TerminalReference end = stud.First().End;
            int studs = 1;
            if (context.Pack.Find(end.PartId) is Busbar bar && end.Terminal.Length == 0)
            {
                if (bar.Studs is null)
                {
                    continue;
                }

                studs = bar.Studs.Value;
            }

            if (heaviest.Length < 2)
            {
                continue;
            }

            FactSubject subject = new(FactCatalogue.TerminalKind, stud.Key, end.Position);
            subject.Set(TerminalFacts.LugCount, Math.Ceiling((double)heaviest.Length / studs));
            subject.Set(TerminalFacts.Lugs, heaviest.Select(c => c.Id).ToList());
            yield return subject;
        }
    }
}
