using WireCheck.Numbers;
using WireCheck.Reports.Numbers;

namespace WireCheck.Cli.Commands.Numbers;

/// <summary>How long each mode runs and what ends it, the days they add up to, where the energy goes, and how long charging takes.</summary>
internal sealed class EnergyAnswer : NumbersAnswer
{
    internal override string Name => "energy";

    internal override void WriteText(TextWriter output, NumbersRequest request) =>
        EnergyText.Write(output, request.Title, EnergyNumbers.Of(request.Box, request.Mode));

    internal override void WriteJson(Stream output, NumbersRequest request) =>
        EnergyJson.Write(output, request.File, request.Title, EnergyNumbers.Of(request.Box, request.Mode));
}
