namespace WireCheck.Facts.Catalogue;

/// <summary>Facts about how much of the time a load runs.</summary>
public static class LoadEnergyFacts
{
    private const string Kind = "load";

    public static readonly Fact Duty = Fact.Number(
        Kind, "duty", "", "Part of the time it is on while it is in use; absent when it is not described.");

    public static readonly Fact StartingPower = Fact.Number(
        Kind, "starting_power", "W", "Power of its surge; absent when it has none.");

    public static readonly Fact LongestUse = Fact.Number(
        Kind, "longest_use", "s", "Longest time of a mode that draws power for it; absent when no mode with a time does.");

    public static readonly Fact LongestUseMode = Fact.Word(
        Kind, "longest_use_mode", "The mode of longest_use.");

    public static readonly Fact AverageToldIn = Fact.Word(
        Kind, "average_told_in", "A mode whose draw for it is its power times its duty, so that the duty counts twice; absent when there is none.");
}
