using WireCheck.Description;
using WireCheck.Knowledge;
using WireCheck.Physics;

namespace WireCheck.Heat;

/// <summary>
/// The air inside a closed box from the heat made in it. Two ways beside each other. The first is the heat balance of heat
/// transfer handbooks: from the air and the parts to the walls by natural convection and radiation, through the walls by
/// conduction, from the walls to still air by natural convection and radiation, and with the air that passes the openings; the
/// walls are at one temperature. The second is the simple rule of cabinets, watts over transfer and effective area, openings
/// not counted. What the box stands on or lies against takes no heat from it, skin being as warm as hot air. A bag is one more
/// layer of cloth and still air, and closes the openings.
/// </summary>
public sealed class EnclosureBalance
{
    private readonly CabinetFaces _inside;
    private readonly CabinetFaces _outside;
    private readonly WallMaterial _wall;
    private readonly double _opening;
    private readonly double _ventHeight;
    private readonly double _fanFlow;
    private readonly double _insideEmissivity;
    private readonly double _outsideEmissivity;
    private readonly double _bag;

    /// <summary>A described box; its walls and openings by the library where the description is silent.</summary>
    public EnclosureBalance(Enclosure enclosure, Library library)
    {
        _wall = library.Walls[enclosure.Walls.Value];
        EnclosurePlacing placing = enclosure.Placing?.Value ?? EnclosurePlacing.Standing;
        bool bagged = placing == EnclosurePlacing.InBag;
        _inside = new CabinetFaces(
            enclosure.Inside.Value.Width.Meters,
            enclosure.Inside.Value.Depth.Meters,
            enclosure.Inside.Value.Height.Meters,
            SideCovered: placing is EnclosurePlacing.Strapped or EnclosurePlacing.AgainstBody,
            BottomFree: placing is EnclosurePlacing.Hanging or EnclosurePlacing.AgainstBody);
        double twice = 2 * _wall.Thickness;
        _outside = _inside with { Width = _inside.Width + twice, Depth = _inside.Depth + twice, Height = _inside.Height + twice };
        _bag = bagged ? library.Assumptions["bag_resistance"].Value : 0;
        _outsideEmissivity = bagged ? library.Assumptions["bag_emissivity"].Value : _wall.Emissivity;
        bool fan = enclosure.Fan?.Value == true || enclosure.Vents?.Value == "fan";
        bool open = !bagged && (fan || enclosure.Vents?.Value == "passive");

        // Half of the openings lets air in and half lets it out.
        _opening = open ? (enclosure.VentArea?.Value.SquareMeters ?? 0) / 2 : 0;
        _ventHeight = _inside.Height * library.Assumptions["vent_height"].Value;
        _fanFlow = fan ? _opening * library.Assumptions["fan_speed"].Value : 0;
        double parts = library.Assumptions["inside_emissivity"].Value;
        _insideEmissivity = library.Assumptions["inside_radiation"].Value / ((1 / parts) + (1 / _wall.Emissivity) - 1);
    }

    /// <summary>Temperature of the air inside in °C by the heat balance.</summary>
    /// <param name="watts">Heat made inside, 0 or more.</param>
    /// <param name="ambient">Still air around the box, °C.</param>
    public double InsideCelsius(double watts, double ambient)
    {
        double rise = Math.Max(SimpleCelsius(watts, ambient) - ambient, SmallestRise);
        while (WattsLost(ambient + rise, ambient) < watts && rise < HottestRise)
        {
            rise *= 2;
        }

        return watts <= 0 ? ambient : BalancePoint.Find(t => watts - WattsLost(t, ambient), ambient, ambient + rise);
    }

    /// <summary>Temperature of the air inside in °C by the simple rule.</summary>
    public double SimpleCelsius(double watts, double ambient) =>
        ambient + (watts * ((1 / _wall.Transfer) + _bag) / _inside.Effective);

    /// <summary>Heat that leaves the box when its air has a temperature, W.</summary>
    /// <param name="inside">°C, not below <paramref name="ambient"/>.</param>
    /// <param name="ambient">°C.</param>
    public double WattsLost(double inside, double ambient) => ThroughWalls(inside, ambient) + WithAir(inside, ambient);

    /// <summary>Heat through the walls, W: the wall temperature at which as much arrives as leaves.</summary>
    private double ThroughWalls(double inside, double ambient)
    {
        double outer = BalancePoint.Find(t => Arriving(inside, t, Leaving(t, ambient)) - Leaving(t, ambient), ambient, inside);
        return Leaving(outer, ambient);
    }

    /// <summary>Heat the outer face gives off, that of the bag where it is in one, W.</summary>
    private double Leaving(double outer, double ambient) =>
        (((_outside.Sides * NaturalConvection.VerticalPlate(_outside.Height, outer, ambient))
            + (_outside.Top * NaturalConvection.HotPlateFacingUp(_outside.TopLength, outer, ambient))
            + (_outside.Bottom * NaturalConvection.HotPlateFacingDown(_outside.TopLength, outer, ambient))) * (outer - ambient))
        + (_outside.Free * Radiation.Flux(_outsideEmissivity, outer, ambient));

    /// <summary>Heat the inner face takes up while some passes the wall, W. Warm air under a cool plate stirs as air over a hot one.</summary>
    private double Arriving(double inside, double outer, double passing)
    {
        double inner = outer + (passing * ((_wall.Thickness / _wall.Conductivity) + _bag) / _inside.Free);
        return (((_inside.Sides * NaturalConvection.VerticalPlate(_inside.Height, inner, inside))
            + (_inside.Top * NaturalConvection.HotPlateFacingUp(_inside.TopLength, inner, inside))
            + (_inside.Bottom * NaturalConvection.HotPlateFacingDown(_inside.TopLength, inner, inside))) * (inside - inner))
            + (_inside.Free * Radiation.Flux(_insideEmissivity, inside, inner));
    }

    /// <summary>Heat that goes with the air through the openings, W.</summary>
    private double WithAir(double inside, double ambient)
    {
        double flow = Math.Max(_fanFlow, StackFlow.CubicMetresPerSecond(_opening, _ventHeight, inside, ambient));
        return flow * new Air(inside).HeatPerVolume * (inside - ambient);
    }

    private const double SmallestRise = 0.01;
    private const double HottestRise = 2000;
}
