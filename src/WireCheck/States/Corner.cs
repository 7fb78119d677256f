using UnitsNet;
using WireCheck.Circuit.Wiring;
using WireCheck.Description;

namespace WireCheck.States;

/// <summary>How full the cells are.</summary>
public enum Charge
{
    /// <summary>A rested full cell.</summary>
    Full,

    /// <summary>Half charge.</summary>
    Nominal,

    /// <summary>The last tenth.</summary>
    Empty,
}

/// <summary>One corner that every mode is solved at.</summary>
/// <param name="Charge">How full.</param>
/// <param name="HighestResistance">Which of the two source models.</param>
/// <param name="Conditions">The corner in numbers.</param>
public sealed record Corner(Charge Charge, bool HighestResistance, Conditions Conditions)
{
    /// <summary>As it is printed: "empty, highest resistance".</summary>
    public string Words =>
        (Charge switch { Charge.Full => "full", Charge.Nominal => "nominal", _ => "empty" })
        + (HighestResistance ? ", highest resistance" : ", lowest resistance");

    public override string ToString() => Words;

    /// <summary>The six corners: full, nominal, empty, each with the lowest and the highest resistance.</summary>
    public static IReadOnlyList<Corner> For(Pack pack, WiringData data)
    {
        Range ambient = new(pack);
        List<Corner> corners = [];
        foreach (Charge charge in new[] { Charge.Full, Charge.Nominal, Charge.Empty })
        {
            foreach (bool highest in new[] { false, true })
            {
                corners.Add(new Corner(charge, highest, new Conditions(
                    charge switch
                    {
                        Charge.Full => data.Assumed("charge_full"),
                        Charge.Nominal => data.Assumed("charge_nominal"),
                        _ => data.Assumed("charge_empty"),
                    },
                    highest,
                    highest ? ambient.Coldest : data.Assumed("cell_figures"),
                    highest ? data.Assumed("hot_copper") : data.Assumed("cold_copper"),
                    highest ? ambient.Hottest : data.Assumed("cold_copper"))));
            }
        }

        return corners;
    }

    private readonly record struct Range(Pack Pack)
    {
        private Quantities.Range<Temperature> Ambient => Pack.Surroundings.Ambient.Value;

        internal double Coldest => Ambient.From.DegreesCelsius;

        internal double Hottest => Ambient.To.DegreesCelsius;
    }
}
