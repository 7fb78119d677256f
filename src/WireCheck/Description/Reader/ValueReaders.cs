using UnitsNet;
using WireCheck.Quantities;

namespace WireCheck.Description.Reader;

/// <summary>The reader of each type of value.</summary>
internal static class ValueReaders
{
    private static readonly Dictionary<Type, object> ByType = new()
    {
        [typeof(bool)] = new YesNoValueReader(),
        [typeof(int)] = new CountValueReader(),
        [typeof(double)] = new NumberValueReader(),
        [typeof(DateOnly)] = new DateValueReader(),
        [typeof(string)] = new TextValueReader(),
        [typeof(Section)] = new SectionValueReader(),
        [typeof(BoxSize)] = new BoxValueReader(),
        [typeof(ConductorSize)] = new SizeValueReader(),
        [typeof(Range<ElectricPotential>)] = new RangeValueReader<ElectricPotential>(ElectricKinds.Voltage, "10.8 .. 15 V"),
        [typeof(Range<Temperature>)] = new RangeValueReader<Temperature>(PlainKinds.Temperature, "0 .. 45 °C"),
    };

    /// <summary>The reader of a type: plain values above, quantities by their dimension, enumerations by their words.</summary>
    internal static ValueReader<T> For<T>() => Cache<T>.Reader;

    private static class Cache<T>
    {
        internal static readonly ValueReader<T> Reader = Make();

        private static ValueReader<T> Make()
        {
            if (ByType.TryGetValue(typeof(T), out object? known))
            {
                return (ValueReader<T>)known;
            }

            return QuantityKinds.Of<T>() is QuantityKind<T> kind ? new QuantityValueReader<T>(kind) : new EnumValueReader<T>();
        }
    }
}
