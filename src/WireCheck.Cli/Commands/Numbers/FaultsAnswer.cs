using WireCheck.Numbers;
using WireCheck.Reports.Numbers;

namespace WireCheck.Cli.Commands.Numbers;

/// <summary>What a short draws at every place, what ends it and what gets hot; then one thing wrong at a time.</summary>
internal sealed class FaultsAnswer : NumbersAnswer
{
    internal override string Name => "faults";

    internal override void WriteText(TextWriter output, NumbersRequest request)
    {
        FaultsText.Write(output, request.Title, FaultNumbers.Of(request.Box));
        SingleFaultText.Write(output, SingleFaultNumbers.Of(request.Box));
    }

    internal override void WriteJson(Stream output, NumbersRequest request) =>
        FaultsJson.Write(output, request.File, request.Title, FaultNumbers.Of(request.Box), SingleFaultNumbers.Of(request.Box));
}
