using WireCheck.Quantities;

namespace WireCheck.Description.Reader;

/// <summary>Reads <c>20 x 2 mm</c>.</summary>
internal sealed class SectionValueReader : ValueReader<Section>
{
    public override string Example => "20 x 2 mm";

    public override Section StandIn { get; } = QuantityReader.ReadSection("20 x 2 mm").Value;

    protected override string? ReadText(string text, ValueSite site, out Section value)
    {
        Parsed<Section> parsed = QuantityReader.ReadSection(text);
        value = parsed.Value;
        return parsed.Fault is null ? null : InputMessages.Value(site.Subject, site.Key, parsed.Fault, "a section", Example);
    }
}

/// <summary>Reads <c>300 x 190 x 160 mm</c>.</summary>
internal sealed class BoxValueReader : ValueReader<BoxSize>
{
    public override string Example => "300 x 190 x 160 mm";

    public override BoxSize StandIn { get; } = QuantityReader.ReadBox("300 x 190 x 160 mm").Value;

    protected override string? ReadText(string text, ValueSite site, out BoxSize value)
    {
        Parsed<BoxSize> parsed = QuantityReader.ReadBox(text);
        value = parsed.Value;
        return parsed.Fault is null ? null : InputMessages.Value(site.Subject, site.Key, parsed.Fault, "a box", Example);
    }
}

/// <summary>Reads a conductor's size.</summary>
internal sealed class SizeValueReader : ValueReader<ConductorSize>
{
    public override string Example => "8 AWG";

    public override ConductorSize StandIn { get; } = new(SizeSystem.Awg, 8);

    protected override string? ReadText(string text, ValueSite site, out ConductorSize value)
    {
        Parsed<ConductorSize> parsed = ConductorSizeReader.Read(text);
        value = parsed.Value;
        return parsed.Fault is null ? null : InputMessages.Value(site.Subject, site.Key, parsed.Fault, "a size", Example);
    }
}
