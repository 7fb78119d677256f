using WireCheck.Description;
using WireCheck.Description.Kinds;

namespace WireCheck.Facts.Gather;

/// <summary>
/// Which conductors pass the wall of the box, told from the parts at their ends. A port sits in the wall itself, so that a
/// conductor to it passes none; loads may stand anywhere.
/// </summary>
internal static class WallPasses
{
    /// <summary>True when one end is in the box and the other, or the run, outside it.</summary>
    internal static bool MustPass(Conductor conductor, Pack pack)
    {
        bool? from = IsOutside(pack.Find(conductor.From.PartId));
        bool? to = IsOutside(pack.Find(conductor.To.PartId));
        bool runsOutside = conductor.Place?.Value == PartPlace.Outside;
        return (from == false && (to == true || runsOutside)) || (to == false && (from == true || runsOutside));
    }

    /// <summary>Null for what sits in the wall or may be on either side.</summary>
    private static bool? IsOutside(Part? part) => part switch
    {
        null or Port or Load => null,
        Vehicle or Panel => true,
        Inverter inverter => inverter.Place?.Value == PartPlace.Outside,
        Converter converter => converter.Place?.Value == PartPlace.Outside,
        Charger => null,
        _ => false,
    };
}
