using System.Reflection;
using WireCheck.Description;
using WireCheck.Description.Kinds;
using WireCheck.Knowledge;
using WireCheck.Text;

namespace WireCheck.Tests.Knowledge;

/// <summary>Part classes use the names that descriptions use, and leave out only what a builder must say.</summary>
public sealed class PartClassKeysTests
{
    private static readonly Dictionary<string, Type> Kinds = new()
    {
        ["cells"] = typeof(Cells),
        ["bms"] = typeof(Bms),
        ["fuses"] = typeof(Fuse),
        ["breakers"] = typeof(Fuse),
        ["switches"] = typeof(Switch),
        ["relays"] = typeof(Relay),
        ["shunts"] = typeof(Shunt),
        ["meters"] = typeof(Meter),
        ["diodes"] = typeof(Diode),
        ["resistors"] = typeof(Resistor),
        ["busbars"] = typeof(Busbar),
        ["converters"] = typeof(Converter),
        ["inverters"] = typeof(Inverter),
        ["ports"] = typeof(Port),
        ["loads"] = typeof(Load),
        ["chargers"] = typeof(Charger),
        ["vehicles"] = typeof(Vehicle),
        ["panels"] = typeof(Panel),
    };

    /// <summary>Names of a description whose property is called otherwise.</summary>
    private static readonly Dictionary<string, string> OtherNames = new()
    {
        ["recloses_on_charge"] = "RecloseOnCharge",
        ["chargers.kind"] = "ChargerKind",
        ["chargers.cells"] = "CellCount",
    };

    /// <summary>What no class can know: how many cells, what rating, and what the file's own reader fills in.</summary>
    private static readonly string[] LeftToTheBuilder = ["Id", "Position", "IsBreaker", "cells.Series", "cells.Parallel", "fuses.Rating", "breakers.Rating"];

    public static TheoryData<string> Sections() => [.. Library.Embedded.Parts.Sections];

    [Theory]
    [MemberData(nameof(Sections))]
    public void Every_key_is_a_property_of_the_kind(string section)
    {
        foreach (PartClass part in Library.Embedded.Parts.Classes(section))
        {
            RequireKeys(part.Values, Kinds[section], section, part.Name);
        }
    }

    [Theory]
    [MemberData(nameof(Sections))]
    public void Every_property_that_is_due_is_given(string section)
    {
        foreach (PartClass part in Library.Embedded.Parts.Classes(section))
        {
            RequireProperties(part.Values, Kinds[section], section, part.Name);
        }
    }

    private static void RequireKeys(YamlMap values, Type type, string section, string part)
    {
        foreach (YamlEntry entry in values.Entries)
        {
            PropertyInfo? property = type.GetProperty(PropertyName(entry.Key.Text, section));
            property.ShouldNotBeNull($"{part}: {entry.Key.Text} is nothing of {type.Name}");
            if (entry.Value is YamlMap inner)
            {
                RequireKeys(inner, property.PropertyType, section, part);
            }
        }
    }

    private static void RequireProperties(YamlMap values, Type type, string section, string part)
    {
        string[] given = [.. values.Entries.Select(e => PropertyName(e.Key.Text, section))];
        IEnumerable<string> due = type.GetProperties()
            .Where(p => p.IsDefined(typeof(System.Runtime.CompilerServices.RequiredMemberAttribute)))
            .Select(p => p.Name)
            .Where(name => !LeftToTheBuilder.Contains(name) && !LeftToTheBuilder.Contains($"{section}.{name}"));
        due.Except(given).ShouldBeEmpty($"{part} of {section}: {type.Name}");
        foreach (YamlEntry entry in values.Entries)
        {
            if (entry.Value is YamlMap inner)
            {
                RequireProperties(inner, type.GetProperty(PropertyName(entry.Key.Text, section))!.PropertyType, section, part);
            }
        }
    }

    private static string PropertyName(string key, string section) =>
        OtherNames.GetValueOrDefault($"{section}.{key}")
        ?? OtherNames.GetValueOrDefault(key)
        ?? string.Concat(key.Split('_').Select(word => char.ToUpperInvariant(word[0]) + word[1..]));
}
