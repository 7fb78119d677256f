using System.Globalization;
using WireCheck.Description;
using WireCheck.Description.Kinds;
using WireCheck.Quantities;

namespace WireCheck.Sheets;

/// <summary>Words that several sheets share.</summary>
internal static class SheetWords
{
    /// <summary>A length as the saw wants it: whole millimetres.</summary>
    internal static string Millimetres(double metres) => (metres * 1000).ToString("0.#", CultureInfo.InvariantCulture);

    /// <summary>A price with two decimals.</summary>
    internal static string Money(double price) => price.ToString("0.00", CultureInfo.InvariantCulture);

    /// <summary>Volts with two decimals: what a hand-held meter shows.</summary>
    internal static string Volts(double volts) => volts.ToString("0.00", CultureInfo.InvariantCulture);

    /// <summary>Millivolts, three digits.</summary>
    internal static string Millivolts(double volts) => QuantityText.Plain(volts * 1000, 3);

    /// <summary>A current with its unit; none below a nano-ampere, which is the solver's rounding.</summary>
    internal static string Amps(double amps) => Math.Abs(amps) < 1e-9 ? "0 A" : QuantityText.WithPrefix(amps, "A");

    /// <summary>An end with what is at it: <c>crimped-ring at main.1</c>.</summary>
    internal static string End(ConductorEnd end, TerminalReference at) => $"{end.Class.Value} at {at}";

    /// <summary>The colour, or by which pole it should be.</summary>
    internal static string Colour(Conductor conductor) => conductor.Colour?.Value ?? "";
}
