using Scriban;
using Scriban.Parsing;
using Scriban.Runtime;
using Scriban.Syntax;
using WireCheck.Facts;
using WireCheck.Quantities;

namespace WireCheck.Rules.Expressions;

/// <summary>
/// Runs checked expressions over one subject after the other. There is nothing in it but facts, settings and
/// <see cref="RuleFunctions"/>: no files, no includes, no clock. Loops, recursion, text and time are bounded.
/// </summary>
internal sealed class RuleSandbox
{
    private readonly TemplateContext _context;
    private readonly ScriptObject _globals = [];
    private readonly FactScope _pack;
    private FactScope _it;

    internal RuleSandbox(FactSubject pack, CancellationToken stop)
    {
        ScriptObject functions = [];
        foreach (RuleFunction function in RuleFunctions.All.Values)
        {
            functions.SetValue(function.Name, function, true);
        }

        _context = new TemplateContext(functions)
        {
            StrictVariables = true,
            TemplateLoader = null,
            LoopLimit = 1000,
            RecursiveLimit = 20,
            ObjectRecursionLimit = 5,
            LimitToString = 20_000,
            EnableRelaxedMemberAccess = false,
            CancellationToken = stop,
        };
        _context.PushGlobal(_globals);
        _pack = _it = new FactScope(pack);
        _globals.SetValue(RuleNames.Pack, _pack, false);
    }

    /// <summary>The values behind <c>settings</c>.</summary>
    internal void UseSettings(IReadOnlyDictionary<string, double> settings)
    {
        ScriptObject values = [];
        foreach ((string name, double value) in settings)
        {
            values.SetValue(name, value, true);
        }

        _globals.SetValue(RuleNames.SettingsName, values, false);
    }

    /// <summary>The part behind <c>it</c>.</summary>
    internal void UseSubject(FactSubject subject)
    {
        _it = new FactScope(subject);
        _globals.SetValue(RuleNames.It, _it, false);
    }

    /// <summary>The value of an expression; <see cref="Missing"/> then tells which facts it read that have no value.</summary>
    /// <exception cref="ScriptRuntimeException">A bound was passed.</exception>
    internal object? Evaluate(ScriptExpression expression)
    {
        _it.Missing.Clear();
        _pack.Missing.Clear();
        return _context.Evaluate(expression);
    }

    /// <summary>Facts without a value that the last expression read and did not ask about itself.</summary>
    internal IReadOnlyList<string> Missing(ExpressionUses uses) =>
    [
        .. _it.Missing.Where(name => !uses.IsGuarded(false, name)),
        .. _pack.Missing.Where(name => !uses.IsGuarded(true, name)).Select(name => $"{RuleNames.Pack}.{name}"),
    ];

    /// <summary>True when the last expression met no fact without a value.</summary>
    internal bool NothingMissing => _it.Missing.Count == 0 && _pack.Missing.Count == 0;

    /// <summary>The words with the facts filled in, numbers in them of so many significant digits.</summary>
    /// <exception cref="ScriptRuntimeException">A bound was passed.</exception>
    internal string Render(Template words, int digits = QuantityText.UsualDigits)
    {
        _context.Tags[RuleFunction.DigitsTag] = digits;
        return words.Render(_context);
    }

    /// <summary>A subject's facts as the sandbox sees them; facts without a value read as null and are noted.</summary>
    private sealed class FactScope(FactSubject subject) : IScriptObject
    {
        internal List<string> Missing { get; } = [];

        public int Count => subject.Values.Count;

        public bool IsReadOnly
        {
            get => true;
            set => throw new NotSupportedException();
        }

        public IEnumerable<string> GetMembers() => subject.Values.Keys;

        public bool Contains(string member) => true;

        public bool TryGetValue(TemplateContext? context, SourceSpan span, string member, out object? value)
        {
            value = ValueOf(member);
            if (value is null && !Missing.Contains(member))
            {
                Missing.Add(member);
            }

            return true;
        }

        public bool CanWrite(string member) => false;

        public bool TrySetValue(TemplateContext? context, SourceSpan span, string member, object? value, bool readOnly) => false;

        public bool Remove(string member) => false;

        public void SetReadOnly(string member, bool readOnly) => throw new NotSupportedException();

        public IScriptObject Clone(bool deep) => this;

        private object? ValueOf(string member)
        {
            if (subject.Find(member) is { } fact)
            {
                return fact.Value;
            }

            return member switch
            {
                "id" => subject.Id,
                "kind" => subject.Kind,
                _ when member.EndsWith(FactVocabulary.ModeSuffix, StringComparison.Ordinal) =>
                    subject.Find(member[..^FactVocabulary.ModeSuffix.Length])?.Place?.Mode,
                _ when member.EndsWith(FactVocabulary.CornerSuffix, StringComparison.Ordinal) =>
                    subject.Find(member[..^FactVocabulary.CornerSuffix.Length])?.Place?.Corner,
                _ => null,
            };
        }
    }
}
