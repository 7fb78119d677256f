using WireCheck.Numbers;
using WireCheck.Reports.Numbers;

namespace WireCheck.Cli.Commands.Numbers;

/// <summary>What draws while the box is off, and how long it lasts on the shelf.</summary>
internal sealed class StandbyAnswer : NumbersAnswer
{
    internal override string Name => "standby";

    internal override void WriteText(TextWriter output, NumbersRequest request) =>
        NumbersText.WriteStandby(output, request.Title, StandbyNumbers.Of(request.Box));

    internal override void WriteJson(Stream output, NumbersRequest request) =>
        NumbersJson.WriteStandby(output, request.File, request.Title, StandbyNumbers.Of(request.Box));
}
