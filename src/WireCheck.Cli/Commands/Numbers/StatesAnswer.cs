using WireCheck.Reports.Numbers;
using WireCheck.Switching;

namespace WireCheck.Cli.Commands.Numbers;

/// <summary>What is live in every state of the switches, and what each switch kills.</summary>
internal sealed class StatesAnswer : NumbersAnswer
{
    internal override string Name => "states";

    internal override void WriteText(TextWriter output, NumbersRequest request) =>
        StatesText.Write(output, request.Title, SwitchingStudy.Of(request.Box.Pack, request.Box.Wiring.Data));

    internal override void WriteJson(Stream output, NumbersRequest request) =>
        StatesJson.Write(output, request.File, request.Title, SwitchingStudy.Of(request.Box.Pack, request.Box.Wiring.Data));
}
