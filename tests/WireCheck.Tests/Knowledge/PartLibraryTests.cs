using WireCheck.Knowledge;
using WireCheck.Text;

namespace WireCheck.Tests.Knowledge;

public sealed class PartLibraryTests
{
    private static readonly PartLibrary Parts = Library.Embedded.Parts;

    [Theory]
    [InlineData("cells", "lfp-prismatic-100ah")]
    [InlineData("bms", "bms-4s-lfp-80a")]
    [InlineData("fuses", "strip-sf30")]
    [InlineData("fuses", "blade")]
    [InlineData("switches", "panel-rocker")]
    [InlineData("relays", "relay-12v-70a")]
    [InlineData("relays", "relay-12v-40a")]
    [InlineData("meters", "coulomb-meter")]
    [InlineData("inverters", "inverter-12v-500w")]
    [InlineData("converters", "usb-supply-12v")]
    [InlineData("ports", "vehicle-socket")]
    [InlineData("ports", "charge-inlet")]
    public void The_classes_of_the_guide_exist(string section, string name) => Parts.Find(section, name).ShouldNotBeNull();

    [Fact]
    public void What_is_not_there_is_null()
    {
        Parts.Find("cells", "nothing").ShouldBeNull();
        Parts.Find("nothing", "blade").ShouldBeNull();
        Parts.Classes("nothing").ShouldBeEmpty();
    }

    [Fact]
    public void Fuses_and_breakers_name_a_class_of_the_table_that_bears_their_voltage()
    {
        foreach (PartClass part in Parts.Classes("fuses").Concat(Parts.Classes("breakers")))
        {
            FuseClass fuse = Library.Embedded.Fuses[Word(part, "class")];
            Word(part, "volts").ShouldBe(FormattableString.Invariant($"{fuse.Volts} V"), part.Name);
        }
    }

    [Fact]
    public void Ports_name_a_contact_of_the_table_and_its_current()
    {
        foreach (PartClass part in Parts.Classes("ports"))
        {
            PortContact contact = Library.Embedded.PortContacts[Word(part, "contact")];
            Word(part, "rated").ShouldBe(FormattableString.Invariant($"{contact.Steady} A"), part.Name);
        }
    }

    [Fact]
    public void Cells_name_a_chemistry_and_busbars_a_material()
    {
        foreach (PartClass part in Parts.Classes("cells"))
        {
            Library.Embedded.Chemistries.Find(Word(part, "chemistry")).ShouldNotBeNull();
        }

        foreach (PartClass part in Parts.Classes("busbars"))
        {
            Library.Embedded.Materials.Find(Word(part, "material")).ShouldNotBeNull();
        }
    }

    [Fact]
    public void Every_class_has_a_title_and_values()
    {
        foreach (PartClass part in Parts.Sections.SelectMany(Parts.Classes))
        {
            part.Title.ShouldNotBeEmpty();
            part.Source.Work.ShouldNotBeEmpty();
            part.Values.Entries.ShouldNotBeEmpty(part.Name);
        }
    }

    private static string Word(PartClass part, string key) => ((YamlScalar)part.Values.Find(key)!).Text;
}
