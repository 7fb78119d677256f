using WireCheck.Text;

namespace WireCheck.Description.Reader;

/// <summary>Checks names of modes, and that every reading names a mode.</summary>
internal static class ModeNames
{
    internal static void Check(ProblemList problems, Pack pack)
    {
        foreach (Mode mode in pack.Modes)
        {
            if (!IdRules.IsValid(mode.Id))
            {
                problems.Add(mode.Position, InputMessages.BadId(mode.Id));
            }
            else if (IdRules.FixedModes.Contains(mode.Id))
            {
                problems.Add(mode.Position, InputMessages.ReservedMode(mode.Id));
            }
        }

        string[] known = [.. pack.Modes.Select(m => m.Id).Where(IdRules.IsValid).Concat(IdRules.FixedModes).Distinct()];
        foreach (Reading reading in pack.Measured.Where(r => r.Mode.Value.Length > 0 && !known.Contains(r.Mode.Value)))
        {
            problems.Add(reading.Mode.Position, InputMessages.UnknownMode("a reading", reading.Mode.Value, known));
        }
    }
}
