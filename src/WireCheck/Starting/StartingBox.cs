using Scriban;
using Scriban.Runtime;
using WireCheck.Findings;
using WireCheck.Knowledge;
using WireCheck.Quantities;
using WireCheck.Rules;

namespace WireCheck.Starting;

/// <summary>A new description, or why there is none.</summary>
/// <param name="Text">The description; null when none passes.</param>
/// <param name="Left">What the check still finds in it: advice that no larger part ends. Without a text, what stands in the way.</param>
public sealed record StartedBox(string? Text, IReadOnlyList<string> Left);

/// <summary>
/// Makes a description from a few answers. Sizes come from the tables at the currents reckoned for the lowest voltage; then
/// the check judges the whole, what it names is taken a step larger, and so on until nothing is found.
/// </summary>
public sealed class StartingBox
{
    /// <summary>Rounds after which larger parts will not help.</summary>
    private const int MostRounds = 10;

    private static readonly DateOnly AnyDay = DateOnly.MinValue;

    private readonly PackCheck _check;
    private readonly Library _library;
    private readonly Template _template;

    /// <summary>Over a front door.</summary>
    public StartingBox(PackCheck check)
    {
        _check = check;
        _library = Library.Embedded;
        _template = Template.Parse(ReadTemplate(), "box.yaml.template");
    }

    /// <summary>The description for these answers.</summary>
    /// <param name="answers">Checked by <see cref="AnswerReader"/>.</param>
    /// <param name="wires">Whether wire is bought by gauge or by section.</param>
    public StartedBox Make(StartingAnswers answers, SizeSystem wires = SizeSystem.Awg)
    {
        Steps steps = new();
        string before = "";
        StartedBox? best = null;
        for (int round = 0; round < MostRounds; round++)
        {
            Shelf shelf = new(_library, wires, steps);
            ScriptObject model = BoxModel.Make(answers, _library, shelf);
            if (shelf.Missing.Count > 0)
            {
                return best ?? new StartedBox(null, [.. shelf.Missing.Distinct()]);
            }

            string text = Write(model);
            if (text == before)
            {
                break;
            }

            before = text;
            IReadOnlyList<Finding> found = Judge(text);
            best = Better(best, text, found);
            if (found.Count == 0)
            {
                break;
            }

            foreach (Finding finding in found)
            {
                Enlarge(steps, finding);
            }
        }

        return best!;
    }

    /// <summary>
    /// A part is taken a size larger. A fuse in danger needs a kind that breaks more, one at fault a higher rating; advice on
    /// it is about its place among the others, which no larger one mends.
    /// </summary>
    private static void Enlarge(Steps steps, Finding finding)
    {
        if (finding.PartKind != "fuse" || finding.Severity == Severity.Fault)
        {
            steps.Grow(finding.Part);
        }
        else if (finding.Severity == Severity.Danger)
        {
            steps.GrowKind(finding.Part);
        }
    }

    private IReadOnlyList<Finding> Judge(string text)
    {
        CheckOutcome outcome = _check.Check("box.yaml", text, new CheckOptions(null, AnyDay));
        return outcome.Report is { } report
            ? report.Findings.Findings
            : throw new InvalidOperationException($"the template made a wrong description: {outcome.Problems[0]}");
    }

    private static StartedBox Better(StartedBox? best, string text, IReadOnlyList<Finding> found)
    {
        string[] left = [.. found.Select(f => $"{f.Part}: {f.Message}")];
        bool passes = !found.Any(f => f.Severity is Severity.Danger or Severity.Fault);
        return best?.Text is not null && (!passes || best.Left.Count <= left.Length) ? best : new StartedBox(passes ? text : null, left);
    }

    private string Write(ScriptObject model)
    {
        TemplateContext context = new(new ScriptObject()) { StrictVariables = true, TemplateLoader = null, NewLine = "\n" };
        context.PushGlobal(model);
        return _template.Render(context);
    }

    private static string ReadTemplate()
    {
        using Stream stored = typeof(StartingBox).Assembly.GetManifestResourceStream("templates/box.yaml.template")
            ?? throw new InvalidOperationException("the library has no template of a box");
        using StreamReader reader = new(stored);
        return reader.ReadToEnd();
    }
}
