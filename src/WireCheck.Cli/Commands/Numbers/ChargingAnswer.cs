using WireCheck.Numbers;
using WireCheck.Reports.Numbers;

namespace WireCheck.Cli.Commands.Numbers;

/// <summary>How the box is charged: each source, where it ends, a vehicle's curve, what flows back, a plug reversed.</summary>
internal sealed class ChargingAnswer : NumbersAnswer
{
    internal override string Name => "charging";

    internal override void WriteText(TextWriter output, NumbersRequest request) =>
        ChargingText.Write(output, request.Title, ChargingNumbers.Of(request.Box));

    internal override void WriteJson(Stream output, NumbersRequest request) =>
        ChargingJson.Write(output, request.File, request.Title, ChargingNumbers.Of(request.Box));
}
