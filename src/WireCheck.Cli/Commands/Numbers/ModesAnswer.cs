using WireCheck.Numbers;
using WireCheck.Reports.Numbers;

namespace WireCheck.Cli.Commands.Numbers;

/// <summary>Every conductor, part and terminal in every mode and corner.</summary>
internal sealed class ModesAnswer : NumbersAnswer
{
    internal override string Name => "modes";

    internal override void WriteText(TextWriter output, NumbersRequest request) =>
        NumbersText.WriteModes(output, request.Title, ModeNumbers.Of(request.Box, request.Mode));

    internal override void WriteJson(Stream output, NumbersRequest request) =>
        NumbersJson.WriteModes(output, request.File, request.Title, ModeNumbers.Of(request.Box, request.Mode));
}
