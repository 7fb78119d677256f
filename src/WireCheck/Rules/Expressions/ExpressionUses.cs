using WireCheck.Facts;

namespace WireCheck.Rules.Expressions;

/// <summary>A fact that an expression names.</summary>
/// <param name="OfPack">True behind <c>pack</c>, false behind <c>it</c>.</param>
/// <param name="Fact">Its definition.</param>
internal sealed record FactUse(bool OfPack, Fact Fact)
{
    /// <summary>As reports show it: <c>current</c>, <c>pack.current</c>.</summary>
    internal string Name => OfPack ? $"{RuleNames.Pack}.{Fact.Name}" : Fact.Name;
}

/// <summary>What an expression or template names, found by reading it, not by running it.</summary>
internal sealed class ExpressionUses
{
    private readonly List<FactUse> _facts = [];
    private readonly List<RuleSetting> _settings = [];
    private readonly HashSet<FactUse> _guarded = [];

    /// <summary>Facts in the order they first appear.</summary>
    internal IReadOnlyList<FactUse> Facts => _facts;

    /// <summary>Settings in the order they first appear.</summary>
    internal IReadOnlyList<RuleSetting> Settings => _settings;

    /// <summary>True when the expression itself asks whether the fact has a value.</summary>
    internal bool IsGuarded(bool ofPack, string name) =>
        _guarded.Any(use => use.OfPack == ofPack && use.Fact.Name == name);

    internal void Add(FactUse use)
    {
        if (!_facts.Contains(use))
        {
            _facts.Add(use);
        }
    }

    internal void Add(RuleSetting setting)
    {
        if (!_settings.Contains(setting))
        {
            _settings.Add(setting);
        }
    }

    internal void Guard(FactUse use) => _guarded.Add(use);
}
