using WireCheck.Knowledge;
using WireCheck.Quantities;
using WireCheck.Text;

namespace WireCheck.Starting;

/// <summary>The values of a part class by the path of their keys, such as <c>contact.volts</c>; NaN or "" where there is none.</summary>
internal sealed class PartValues(PartClass part)
{
    /// <summary>Name of the class.</summary>
    internal string Name => part.Name;

    /// <summary>Amperes.</summary>
    internal double Amps(string path) => Number(path, ElectricKinds.Current);

    /// <summary>Volts.</summary>
    internal double Volts(string path) => Number(path, ElectricKinds.Voltage);

    /// <summary>Watts.</summary>
    internal double Watts(string path) => Number(path, ElectricKinds.Power);

    /// <summary>Coulombs.</summary>
    internal double Coulombs(string path) => Number(path, ElectricKinds.Charge);

    /// <summary>A share, 0 to 1.</summary>
    internal double Share(string path) => Number(path, PlainKinds.Ratio);

    /// <summary>A whole number.</summary>
    internal double Count(string path) =>
        Word(path) is { Length: > 0 } word ? double.Parse(word, System.Globalization.CultureInfo.InvariantCulture) : double.NaN;

    /// <summary>Area in m² of a section.</summary>
    internal double Area(string path)
    {
        Parsed<Section> read = QuantityReader.ReadSection(Word(path));
        return read.Fault is null ? read.Value.Area.SquareMeters : double.NaN;
    }

    /// <summary>Whether a window of volts holds both ends.</summary>
    internal bool Spans(string path, double low, double high)
    {
        Parsed<Range<UnitsNet.ElectricPotential>> read = QuantityReader.ReadRange(Word(path), ElectricKinds.Voltage, Bounds.Any);
        return read.Fault is null && read.Value.From.Volts <= low && read.Value.To.Volts >= high;
    }

    /// <summary>The word as the class writes it.</summary>
    internal string Word(string path) => (Node(path) as YamlScalar)?.Text ?? "";

    /// <summary>What stands there; null where nothing does.</summary>
    internal YamlNode? Node(string path)
    {
        YamlNode? node = part.Values;
        foreach (string key in path.Split('.'))
        {
            node = (node as YamlMap)?.Find(key);
        }

        return node;
    }

    private double Number<T>(string path, QuantityKind<T> kind)
    {
        Parsed<T> read = QuantityReader.Read(Word(path), kind, Bounds.Any);
        return read.Fault is null ? kind.Si(read.Value) : double.NaN;
    }
}
