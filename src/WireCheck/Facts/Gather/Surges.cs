using WireCheck.Description;
using WireCheck.Description.Kinds;
using WireCheck.States;

namespace WireCheck.Facts.Gather;

/// <summary>Questions about the modes in which a load or inverter surges.</summary>
internal static class Surges
{
    /// <summary>How long the load or inverter of a surge mode surges, s; 0 for any other mode.</summary>
    internal static double Seconds(string mode, Pack pack)
    {
        if (!mode.StartsWith(Modes.SurgePrefix, StringComparison.Ordinal))
        {
            return 0;
        }

        Surge? surge = pack.Find(mode[Modes.SurgePrefix.Length..]) switch
        {
            Load load => load.Surge,
            Inverter inverter => inverter.Surge,
            _ => null,
        };
        return surge?.For.Value.Seconds ?? 0;
    }
}
