using WireCheck.Quantities;

namespace WireCheck.Knowledge;

/// <summary>What takes amperes from a printed ampacity, or adds them.</summary>
/// <param name="Words">In words: "50 °C around it".</param>
/// <param name="Value">The factor, 0 or more.</param>
public sealed record AmpacityFactor(string Words, double Value);

/// <summary>What a conductor may carry for hours.</summary>
/// <param name="Amps">Amperes, after all factors; 0 where the air is too hot for the insulation.</param>
/// <param name="BaseAmps">Amperes as the table prints them.</param>
/// <param name="Row">The row that was read: the conductor's size or the next thinner.</param>
/// <param name="ColumnCelsius">The column that was read: the insulation's rating or the next lower one, where there is one.</param>
/// <param name="Factors">The factors other than 1, in the order they were taken.</param>
/// <param name="BasisId">Id of the basis.</param>
/// <param name="Source">Source of the table.</param>
public sealed record Ampacity(
    double Amps,
    double BaseAmps,
    ConductorSize Row,
    double ColumnCelsius,
    IReadOnlyList<AmpacityFactor> Factors,
    string BasisId,
    Source Source);

/// <summary>What an ampacity is asked for.</summary>
/// <param name="Size">Size of the conductor.</param>
/// <param name="Material">Its metal.</param>
/// <param name="InsulationCelsius">Rating of its insulation in °C.</param>
/// <param name="AmbientCelsius">Air around it in °C.</param>
/// <param name="LoadedInBundle">Conductors of its bundle that carry current together, itself included; 1 for none other.</param>
public sealed record AmpacityQuestion(
    ConductorSize Size,
    Material Material,
    double InsulationCelsius,
    double AmbientCelsius,
    int LoadedInBundle);
