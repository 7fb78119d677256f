using System.CommandLine;
using System.Text;
using WireCheck.Comparing;
using WireCheck.Quantities;
using WireCheck.Reports.Comparisons;
using WireCheck.Reports.Templates;
using WireCheck.Reports.Text;
using WireCheck.Rules;
using WireCheck.Text;

namespace WireCheck.Cli.Commands;

/// <summary><c>compare</c>: what differs between two descriptions, and what breaks first after a swap.</summary>
internal static class CompareCommand
{
    private static readonly Argument<string> Old = new("OLD") { Description = "The description as it was." };

    private static readonly Argument<string> New = new("NEW") { Description = "The description as it is to be." };

    private static readonly Option<string> Format = new("--format")
    {
        Description = "How the answer is written.",
        DefaultValueFactory = _ => "text",
    };

    private static readonly Option<string?> Out = new("--out")
    {
        Description = "File that receives the answer instead of standard output.",
        HelpName = "FILE",
    };

    private static readonly Option<string> FailOn = new("--fail-on")
    {
        Description = "Least severity of a gained or graver finding that makes the program exit with 1.",
        DefaultValueFactory = _ => "advice",
    };

    private static readonly Option<string?> Tolerance = new("--tolerance")
    {
        Description = "Moves of a number up to this part of the larger value are not told, such as 2 %.",
        HelpName = "SHARE",
    };

    private static readonly Option<string?> Today = TodayOption.Make();

    /// <summary>The command, over a front door.</summary>
    internal static Command Make(PackCheck check)
    {
        Format.AcceptOnlyFromAmong("text", "markdown", "json");
        FailOn.AcceptOnlyFromAmong([.. SeverityWords.All]);
        Tolerance.Validators.Add(result =>
        {
            if (result.GetValueOrDefault<string?>() is { } written && ShareOf(written) is null)
            {
                result.AddError($"'{written}' is no share; write it as a part of a hundred, such as 5 %");
            }
        });
        Command command = new("compare", "Tell what differs between two descriptions, and what breaks first after a swap.")
        {
            Old, New, Format, Out, FailOn, Tolerance, Today,
        };
        command.SetAction(parsed => (int)Run(check, parsed));
        return command;
    }

    private static ExitCode Run(PackCheck check, ParseResult parsed)
    {
        ProblemList unreadable = new();
        DescriptionText? old = DescriptionFile.ReadWhole(parsed.GetRequiredValue(Old), unreadable);
        DescriptionText? @new = DescriptionFile.ReadWhole(parsed.GetRequiredValue(New), unreadable);
        (BoxDifference? difference, IReadOnlyList<Problem> problems) = old is null || @new is null
            ? (null, unreadable.InOrder())
            : BoxComparison.Compare(check, old, @new, TodayOption.Of(parsed.GetValue(Today)),
                parsed.GetValue(Tolerance) is { } written ? ShareOf(written)!.Value : BoxComparison.DefaultTolerance);
        Terminal.Complain(problems);
        if (difference is null || !Answer.TryWrite(parsed.GetValue(Out), style => Bytes(difference, parsed.GetValue(Format)!, style)))
        {
            return ExitCode.WrongInput;
        }

        return difference.IsWorse(SeverityWords.Find(parsed.GetValue(FailOn)!)!.Value) ? ExitCode.Found : ExitCode.Clean;
    }

    private static byte[] Bytes(BoxDifference difference, string format, TextStyle style)
    {
        if (format != "json")
        {
            return Encoding.UTF8.GetBytes(ComparisonReport.Write(
                difference, format == "markdown" ? TemplateTarget.Markdown : TemplateTarget.Text, style));
        }

        using MemoryStream output = new();
        ComparisonJson.Write(output, difference);
        return output.ToArray();
    }

    /// <summary>A share such as <c>5 %</c> or <c>5%</c>, 0 to 1; null when it is none.</summary>
    private static double? ShareOf(string written)
    {
        Parsed<UnitsNet.Ratio> read = QuantityReader.Read(written, PlainKinds.Ratio, Bounds.ShareOrNone);
        return read.Fault is null ? read.Value.DecimalFractions : null;
    }
}
