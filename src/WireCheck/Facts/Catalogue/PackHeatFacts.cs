namespace WireCheck.Facts.Catalogue;

/// <summary>Facts about the air in the box. The hottest of all is <see cref="PackFacts.InsideTemperature"/>.</summary>
public static class PackHeatFacts
{
    private const string Kind = FactCatalogue.PackKind;

    public static readonly Fact Walls = Fact.Word(Kind, "walls", "Material of the walls; absent when the parts stand open.");

    public static readonly Fact Placing = Fact.Word(
        Kind, "placing", "How the box is placed while it works: standing, hanging, strapped, against-body or in-bag; absent when the parts stand open.");

    public static readonly Fact InsideTemperatureSimple = Fact.Number(
        Kind, "inside_temperature_simple", "°C", "The air in the box in the mode of inside_temperature by the simple rule, watts over transfer and effective area, openings not counted.");

    public static readonly Fact InsideTemperatureCharging = Fact.Worst(
        Kind, "inside_temperature_charging", "°C", "Hottest air inside the box in any mode in which cells take charge; absent when there is none.");

    public static readonly Fact InsideHeat = Fact.Number(
        Kind, "inside_heat", "W", "Heat made in the box in the mode of inside_temperature.");

    public static readonly Fact WarmestParts = Fact.Names(
        Kind, "warmest_parts", "The parts that make most of that heat, each with its watts.");

    public static readonly Fact InsideTemperatures = Fact.Names(
        Kind, "inside_temperatures", "Air in the box in each lasting mode, in words.");

    public static readonly Fact UnventedInverterPower = Fact.Number(
        Kind, "unvented_inverter_power", "W", "Largest rated power of an inverter inside a box that is described as having no openings; absent when there is none.");

    public static readonly Fact SealedWithContacts = Fact.YesNo(
        Kind, "sealed_with_contacts", "Cells and contacts that switch lie in one box that is described as having no openings; absent when the description does not tell of openings.");

    public static readonly Fact UncappedPorts = Fact.Names(
        Kind, "uncapped_ports", "Ports that are described as having no cap.");

    public static readonly Fact HiddenStops = Fact.Names(
        Kind, "hidden_stops", "Switches out of reach from outside whose opening stops the banks, while no switch within reach does; absent when no switch is described as out of reach.");
}
