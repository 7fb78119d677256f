namespace WireCheck.Starting;

/// <summary>A case that the cells and the rest fit into, half as wide again as it is high.</summary>
/// <param name="Inside">Its inside as a description writes it.</param>
/// <param name="Vents">Its openings.</param>
internal sealed record BoxCase(string Inside, string Vents)
{
    private const string Key = "pack";

    /// <summary>The case for a bank.</summary>
    /// <param name="wattHours">Label energy of the bank.</param>
    /// <param name="volts">Assumptions.</param>
    /// <param name="shelf">A warm box is taken larger by a step.</param>
    internal static BoxCase For(double wattHours, BoxVolts volts, Shelf shelf)
    {
        double litres = Math.Max(volts.Assume("starting_box_least"), wattHours * volts.Assume("starting_box_volume"));

        // 9 to 7 to 5 is the shape of cases sold for tools; a step is a quarter more of each side.
        double side = Math.Cbrt(litres / (Width * Depth * Height)) * (1 + (Step * shelf.StepsOf(Key)));
        string inside = FormattableString.Invariant($"{Tens(side * Width)} x {Tens(side * Depth)} x {Tens(side * Height)} mm");
        double openings = side * Width * side * Depth * OpenShare;
        return new BoxCase(inside, FormattableString.Invariant($"{Math.Ceiling(openings * CentimetresInDecimetre / 10) * 10:0} cm²"));
    }

    /// <summary>Decimetres in millimetres, to the next ten.</summary>
    private static double Tens(double decimetres) => Math.Ceiling(decimetres * 10) * 10;

    private const double Width = 9;
    private const double Depth = 7;
    private const double Height = 5;
    private const double Step = 0.25;
    private const double OpenShare = 0.025;
    private const double CentimetresInDecimetre = 100;
}
