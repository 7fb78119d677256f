namespace WireCheck.Facts;

/// <summary>Facts about a waiver of the description, known once the parts are judged.</summary>
public static class WaiverFacts
{
    /// <summary>The kind under which rules judge waivers.</summary>
    public const string Kind = "waiver";

    public static readonly Fact Rule = Fact.Word(Kind, "rule", "Id of the rule whose findings it accepts.");

    public static readonly Fact Part = Fact.Word(Kind, "part", "Id of the part it is for; no value when it is for every part.");

    public static readonly Fact Because = Fact.Word(Kind, "because", "The builder's reason.");

    public static readonly Fact Until = Fact.Word(Kind, "until", "Last day it holds, as year-month-day; no value when it never ends.");

    public static readonly Fact Expired = Fact.YesNo(Kind, "expired", "Whether its last day has passed.");

    public static readonly Fact KnownRule = Fact.YesNo(Kind, "known_rule", "Whether the rule it names is in the rule sets in use.");

    public static readonly Fact NearestRule = Fact.Word(Kind, "nearest_rule", "The rule whose id is nearest to one that is not known; no value when none is near.");

    public static readonly Fact Matches = Fact.Number(Kind, "matches", "", "How many findings it names, whether or not it has expired.");

    /// <summary>All facts of a waiver.</summary>
    public static IReadOnlyList<Fact> All { get; } = [Rule, Part, Because, Until, Expired, KnownRule, NearestRule, Matches];
}
