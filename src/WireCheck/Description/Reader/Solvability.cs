using WireCheck.Description.Kinds;
using WireCheck.Text;

namespace WireCheck.Description.Reader;

/// <summary>Finds what keeps a circuit from being built at all. Everything else that is wrong is a finding.</summary>
internal static class Solvability
{
    /// <summary>Most cells of a bank, ten times those of any box that one can carry; more would keep a check from ending soon.</summary>
    private const int MostCells = 2_000;

    /// <summary>Most groups in series, some 700 V.</summary>
    private const int MostSeries = 200;

    internal static void Check(ProblemList problems, Pack pack, Position start)
    {
        if (!pack.Of<Cells>().Any())
        {
            problems.Add(start, InputMessages.NoBattery());
        }

        foreach (Cells bank in pack.Of<Cells>())
        {
            CheckBank(problems, bank);
        }

        foreach (Conductor conductor in pack.Conductors.Where(c => IsSame(c.From, c.To)))
        {
            problems.Add(conductor.To.Position, InputMessages.SameEnds(conductor.Id, conductor.To.ToString()));
        }

        foreach (Joint joint in pack.Of<Joint>().Where(j => IsSame(j.First, j.Second)))
        {
            problems.Add(joint.Second.Position, InputMessages.SameEnds(joint.Id, joint.Second.ToString()));
        }

        NoteShortedBanks(problems, pack);
    }

    private static void CheckBank(ProblemList problems, Cells bank)
    {
        int cells = bank.Series.Value * bank.Parallel.Value;
        if (cells > MostCells)
        {
            problems.Add(bank.Position, InputMessages.TooManyCells(bank.Id, cells, MostCells));
        }
        else if (bank.Series.Value > MostSeries)
        {
            problems.Add(bank.Series.Position, InputMessages.TooManyInSeries(bank.Id, bank.Series.Value, MostSeries));
        }

        if (bank.Series.Value > 1 && bank.Links is null && bank.LinkResistance is null)
        {
            problems.Add(bank.Position, InputMessages.NoLinks(bank.Id));
        }

        if (bank.Individual.Count > cells)
        {
            problems.Add(bank.Position, InputMessages.TooManyIndividual(bank.Id, bank.Individual.Count, cells));
        }
    }

    /// <summary>
    /// A bank whose poles are one node, joined by nothing but zero resistances, has no solution. Any real
    /// resistance between its poles can be solved, and is a finding.
    /// </summary>
    private static void NoteShortedBanks(ProblemList problems, Pack pack)
    {
        Dictionary<string, string> parents = new(StringComparer.Ordinal);
        Joint[] solid = [.. pack.Of<Joint>().Where(j => j.Resistance is { Value.Ohms: 0 })];
        foreach (Joint joint in solid)
        {
            parents[Root(parents, joint.First.ToString())] = Root(parents, joint.Second.ToString());
        }

        foreach (Cells bank in pack.Of<Cells>())
        {
            string plus = Root(parents, $"{bank.Id}.+");
            if (plus == Root(parents, $"{bank.Id}.-"))
            {
                Joint[] by = [.. solid.Where(j => Root(parents, j.First.ToString()) == plus)];
                problems.Add(by[0].Position, InputMessages.ShortedBank(bank.Id, by.Select(j => j.Id)));
            }
        }
    }

    private static string Root(Dictionary<string, string> parents, string node)
    {
        while (parents.TryGetValue(node, out string? parent) && parent != node)
        {
            node = parent;
        }

        return node;
    }

    private static bool IsSame(TerminalReference first, TerminalReference second) =>
        first.PartId.Length > 0 && first.ToString() == second.ToString();
}
