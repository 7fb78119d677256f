using WireCheck.Circuit.Elements;
using WireCheck.Description.Kinds;
using WireCheck.Quantities;

namespace WireCheck.Circuit.Wiring;

/// <summary>A load: what it draws, behind its own lead.</summary>
public sealed class WiredLoad : WiredPart
{
    internal WiredLoad(Load load, LoadElements elements)
        : base(load)
    {
        Load = load;
        Inverter = elements.Inverter;
        PowerElement = elements.Power;
        CurrentElement = elements.Current;
        ResistanceElement = elements.Resistance;
        LeadPlus = elements.LeadPlus;
        LeadMinus = elements.LeadMinus;
        LowestRunningVolts = elements.LowestRunningVolts;
    }

    public Load Load { get; }

    /// <summary>Id of the inverter it hangs on; its power is then part of the inverter's. Null for a DC load.</summary>
    public string? Inverter { get; }

    /// <summary>Null for a load at an inverter.</summary>
    public ConstantPowerSink? PowerElement { get; }

    public ConstantCurrentSink? CurrentElement { get; }

    public Contact? ResistanceElement { get; }

    /// <summary>Its own lead, positive core; null when it has none.</summary>
    public Contact? LeadPlus { get; }

    public Contact? LeadMinus { get; }

    /// <summary>Voltage below which a constant-power load is taken not to run at all, V.</summary>
    public double LowestRunningVolts { get; }

    public override IEnumerable<Element> Elements =>
        new Element?[] { PowerElement, CurrentElement, ResistanceElement, LeadPlus, LeadMinus }.OfType<Element>();

    /// <summary>Power the load is asked to take at the moment, W; 0 when it is off or no constant-power load.</summary>
    public double AskedWatts { get; private set; }

    /// <summary>Unplugs it, or lets it take only its standby current.</summary>
    public void SetIdle(bool plugged)
    {
        Clear(plugged);
        if (plugged && CurrentElement is not null)
        {
            CurrentElement.Amps = Load.Standby?.Value.Amperes ?? 0;
        }
    }

    /// <summary>Lets it take what it is described to take.</summary>
    public void SetFull()
    {
        Clear(plugged: true);
        if (Load.Power is not null)
        {
            AskedWatts = Load.Power.Value.ToWatts();
        }
        else if (Load.Current is not null && CurrentElement is not null)
        {
            CurrentElement.Amps = Load.Current.Value.Amperes;
        }
        else if (ResistanceElement is not null)
        {
            ResistanceElement.Closed = true;
        }
    }

    /// <summary>Lets it take a stated power, W, whatever it is described to take.</summary>
    public void SetPower(double watts)
    {
        Clear(plugged: true);
        AskedWatts = watts;
    }

    /// <summary>Runs or stops its constant-power part.</summary>
    public void SetRunning(bool running)
    {
        if (PowerElement is not null)
        {
            PowerElement.Watts = AskedWatts;
            PowerElement.On = running && AskedWatts > 0;
        }
    }

    private void Clear(bool plugged)
    {
        AskedWatts = 0;
        SetRunning(false);
        if (CurrentElement is not null)
        {
            CurrentElement.Amps = 0;
        }

        if (ResistanceElement is not null)
        {
            ResistanceElement.Closed = false;
        }

        if (LeadPlus is not null && LeadMinus is not null)
        {
            LeadPlus.Closed = plugged;
            LeadMinus.Closed = plugged;
        }
    }
}

/// <summary>The elements of one load.</summary>
internal sealed record LoadElements(
    string? Inverter, ConstantPowerSink? Power, ConstantCurrentSink? Current, Contact? Resistance,
    Contact? LeadPlus, Contact? LeadMinus, double LowestRunningVolts);

/// <summary>How a load becomes elements.</summary>
public sealed class LoadWiring : KindWiring<Load>
{
    public override void AddNodes(Load part, WiringBuilder builder)
    {
        if (part.At is null)
        {
            base.AddNodes(part, builder);
        }
    }

    public override WiredPart AddElements(Load part, WiringBuilder builder)
    {
        if (part.At is not null && builder.Pack.Find(part.At.Value) is Inverter inverter)
        {
            return new WiredLoad(part, new LoadElements(inverter.Id, null, null, null, null, null, 0));
        }

        (int plus, int minus) = Attachment.Nodes(part, part.At?.Value, builder);
        Contact? leadPlus = null;
        Contact? leadMinus = null;
        if (part.Lead is { } lead)
        {
            double ohms = builder.Data.LeadOhms(lead);
            int far = builder.Network.AddNode(part.Id + ".far+");
            int back = builder.Network.AddNode(part.Id + ".far-");
            leadPlus = builder.Add(new Contact(part.Id + ".lead+", plus, far, ohms));
            leadMinus = builder.Add(new Contact(part.Id + ".lead-", back, minus, ohms));
            (plus, minus) = (far, back);
        }

        if (part.At is not null)
        {
            builder.AddName(part.Id, "+", plus);
            builder.AddName(part.Id, "-", minus);
        }

        return new WiredLoad(part, new LoadElements(
            null,
            builder.Add(new ConstantPowerSink(part.Id, plus, minus)),
            builder.Add(new ConstantCurrentSink(part.Id + ".current", plus, minus, 0)),
            part.Resistance is null ? null : builder.Add(new Contact(part.Id + ".resistance", plus, minus, part.Resistance.Value.Ohms)),
            leadPlus,
            leadMinus,
            builder.Data.LowestRunningVolts(part, builder.Pack)));
    }
}
