using WireCheck.Numbers;
using WireCheck.Reports.Numbers;

namespace WireCheck.Cli.Commands.Numbers;

/// <summary>How warm the box, its conductors and its joints get, and what makes the heat.</summary>
internal sealed class HeatAnswer : NumbersAnswer
{
    internal override string Name => "heat";

    internal override void WriteText(TextWriter output, NumbersRequest request) =>
        HeatText.Write(output, request.Title, HeatNumbers.Of(request.Box, request.Mode));

    internal override void WriteJson(Stream output, NumbersRequest request) =>
        HeatJson.Write(output, request.File, request.Title, HeatNumbers.Of(request.Box, request.Mode));
}
