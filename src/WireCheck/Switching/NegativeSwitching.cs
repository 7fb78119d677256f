namespace WireCheck.Switching;

/// <summary>A switch that takes only the negative away from what it kills.</summary>
/// <param name="Switch">Id of the switch.</param>
/// <param name="Parts">What it is meant to kill and whose positive it leaves live.</param>
/// <param name="Restored">Those of them that stay live all the same, by a link outside the box.</param>
public sealed record NegativeOnly(string Switch, IReadOnlyList<string> Parts, IReadOnlyList<string> Restored);

/// <summary>Finds switches that open a negative only.</summary>
internal static class NegativeSwitching
{
    /// <summary>
    /// Opens one switch after the other while all others are closed. A part that was fed in plain ways, is no more, and
    /// whose positive still hangs on a source had its negative opened alone.
    /// </summary>
    internal static List<NegativeOnly> Find(SwitchedBox box, Settling settling, ControlTable table, PlugCase unplugged)
    {
        List<NegativeOnly> found = [];
        PlainFeed plain = new(box, box.Rails, box.Sources);
        box.Plug(unplugged);
        bool[] fed = new bool[box.Points.Count];
        Look(box.AllClosed, (i, point) => fed[i] = plain.Feeds(point.Plus, point.Minus));
        for (int s = 0; s < table.Switches.Count; s++)
        {
            ulong bit = 1UL << s;
            if ((box.AllClosed & bit) == 0)
            {
                continue;
            }

            List<string> parts = [];
            List<string> restored = [];
            Look(box.AllClosed & ~bit, (i, point) =>
            {
                if (fed[i] && !plain.Feeds(point.Plus, point.Minus) && plain.ReachesPlus(point.Plus))
                {
                    parts.Add(point.Id);
                    if (!table.Rows[i].KilledBy.Contains(table.Switches[s]))
                    {
                        restored.Add(point.Id);
                    }
                }
            });
            if (parts.Count > 0)
            {
                found.Add(new NegativeOnly(table.Switches[s], parts, restored));
            }
        }

        return found;

        void Look(ulong closed, Action<int, LivePoint> look)
        {
            box.SetSwitches(closed);
            settling.FromRest();
            plain.Find();
            for (int i = 0; i < box.Points.Count; i++)
            {
                if (box.Points[i].Kind == LivePointKind.Part)
                {
                    look(i, box.Points[i]);
                }
            }
        }
    }
}
