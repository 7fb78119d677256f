using WireCheck.Circuit.Wiring;
using WireCheck.Description.Kinds;
using WireCheck.Facts.Catalogue;
using WireCheck.Physics;
using WireCheck.Quantities;
using WireCheck.States;

namespace WireCheck.Facts.Gather;

/// <summary>Gathers a relay's contact, coil and behaviour.</summary>
public sealed class RelayGatherer : Gatherer<Relay>
{
    public override void Gather(Relay part, FactSubject subject, GatherContext context)
    {
        WiredRelay relay = (WiredRelay)context.Wiring[part.Id];
        AddContact(relay, subject, context);
        AddRest(relay, subject, context);
        subject.SetNumber(RelayFacts.Operate, part.Coil.Operate.Value.Volts);
        subject.SetNumber(RelayFacts.CoilMax, part.Coil.Max.Value.Volts);
        subject.Set(RelayFacts.HasEconomiser, part.Coil.Economiser is not null);
        subject.Set(RelayFacts.Latching, part.Latching?.Value == true);
        NoteIfAssumed(subject, part, part.Coil.Operate, $"operate voltage {Keeping.Words(part.Coil.Operate.Value)}", "operate", "hot_operate");
        NoteIfAssumed(subject, part, part.Coil.Max, $"highest coil voltage {Keeping.Words(part.Coil.Max.Value)}", "coil_max");
        NoteIfAssumed(subject, part, part.Coil.Resistance, $"coil resistance {Keeping.Words(part.Coil.Resistance.Value.Ohms, "Ω")}", "coil_power", "coil_voltage", "pull_in_voltage", "holding_current", "holding_share_per_day", "coil_temperature");
        AddCoil(relay, subject, context);
        subject.SetWord(RelayFacts.Suppression, CoilClamp.Of(relay, context));
        PullIn.Add(relay, subject, context);
        AddHolding(relay, subject, context);
        AddBehaviour(part, subject, context);
        InrushGathering.AddRelay(relay, subject, context);
    }

    private static void AddContact(WiredRelay relay, FactSubject subject, GatherContext context)
    {
        ContactFacts facts = ContactFacts.Relay;
        RelayContact contact = relay.Relay.Contact;
        ContactGathering.Add([relay.Make], facts, subject, context);
        subject.SetNumber(facts.RatedCurrent, contact.Carry.Value.Amperes);
        subject.SetNumber(facts.RatedVoltage, (contact.Break?.Volts ?? contact.Volts).Value.Volts);
        subject.Set(facts.AcOnly, false);
        subject.SetNumber(facts.BreakCurrent, contact.Break?.Amps.Value.Amperes);
        NoteIfAssumed(subject, relay.Relay, contact.Carry, $"contact rating {Keeping.Words(contact.Carry.Value)}", "rated_current", "make_current", "rest_rated_current");
        NoteIfAssumed(subject, relay.Relay, contact.Volts, $"contact voltage {Keeping.Words(contact.Volts.Value)}", "rated_voltage");
    }

    private static void AddRest(WiredRelay relay, FactSubject subject, GatherContext context)
    {
        if (relay.Rest is not { } rest)
        {
            return;
        }

        subject.SetNumber(
            RelayFacts.RestRatedCurrent, (relay.Relay.Contact.CarryClosedAtRest ?? relay.Relay.Contact.Carry).Value.Amperes);
        foreach (OperatingPoint point in context.SteadyPoints())
        {
            double amps = Math.Abs(point.Amps(rest));
            subject.Largest(RelayFacts.RestCurrent, amps, point);
            subject.Largest(ContactFacts.Relay.OpeningCurrent, amps, point);
        }
    }

    /// <summary>Voltage, heat and temperature of the coil; where a charger holds the bank up, at the end of charge.</summary>
    private static void AddCoil(WiredRelay relay, FactSubject subject, GatherContext context)
    {
        double cold = context.Data.CoilOhms(relay.Relay);
        double kelvinPerWatt = context.Data.CoilKelvinPerWatt(relay.Relay);
        int plus = context.Wiring.Node(relay.Part.Id, "86");
        foreach (OperatingPoint point in context.SteadyPoints())
        {
            double volts = Math.Abs(point.Relays.First(r => r.Id == relay.Part.Id).CoilVolts);
            if (!double.IsFinite(volts))
            {
                continue;
            }

            if (volts > relay.Relay.Coil.Release.Value.Volts)
            {
                volts += Banks.RiseToEndOfCharge(context.Wiring, point, plus);
            }

            subject.Largest(RelayFacts.CoilVoltage, volts, point);
            if (relay.Coil is not null)
            {
                double celsius = Coil.SettledTemperature(volts, cold, kelvinPerWatt, context.HottestInsideCelsius);

                // Heat is largest where the copper is coolest: in the coldest air the box is used in.
                double cool = Coil.SettledTemperature(
                    volts, cold, kelvinPerWatt, context.Pack.Surroundings.Ambient.Value.From.DegreesCelsius);
                subject.Largest(RelayFacts.CoilTemperature, celsius, point);
                subject.Largest(RelayFacts.CoilPower, volts * volts / (cold * Coil.ResistanceFactor(cool)), point);
            }
            else if (relay.HoldingCoil is { } holding)
            {
                subject.Largest(RelayFacts.CoilPower, volts * Math.Abs(point.Amps(holding)), point);
            }
        }
    }

    private static void AddHolding(WiredRelay relay, FactSubject subject, GatherContext context)
    {
        OperatingPoint? worst = null;
        double most = 0;
        foreach (OperatingPoint point in context.SteadyPoints().Where(p => IsAtStandby(p.Mode)))
        {
            bool energised = point.Relays.First(r => r.Id == relay.Part.Id).Energised;
            double amps = energised ? CoilAmps(relay, point) : 0;
            subject.Largest(RelayFacts.HoldingCurrent, amps, point);
            if (amps > most)
            {
                (most, worst) = (amps, point);
            }
        }

        double capacity = Banks.CoulombsOfAll(context);
        if (worst is null || capacity <= 0)
        {
            return;
        }

        subject.SetNumber(RelayFacts.HoldingSharePerDay, most * Durations.SecondsPerDay / capacity);
        CurrentPath path = CurrentPath.Of(
            context.States.FlowAt(worst), context.Wiring.Node(relay.Part.Id, "86"), context.Wiring.Node(relay.Part.Id, "85"));
        if (path.PartIds.Count > 0)
        {
            subject.SetNames(RelayFacts.HoldingChain, path.PartIds);
        }
    }

    /// <summary>No load works and nothing charges.</summary>
    private static bool IsAtStandby(BoxMode mode) =>
        !mode.Watts.Values.Any(w => w > 0)
        && !mode.Loads.Values.Any(u => u is LoadUse.Full or LoadUse.Surge)
        && !mode.Sources.Values.Contains(SourceState.Powered);

    /// <summary>Current of a coil, or of what holds in its place, A.</summary>
    internal static double CoilAmps(WiredRelay relay, OperatingPoint point) =>
        relay.Coil is { } coil ? Math.Abs(point.Amps(coil))
        : relay.HoldingCoil is { } holding ? Math.Abs(point.Amps(holding))
        : 0;

    private static void AddBehaviour(Relay part, FactSubject subject, GatherContext context)
    {
        OperatingPoint? twoStates = part.Latching?.Value == true
            ? null
            : context.SteadyPoints().FirstOrDefault(p => p.RelaysWithTwoStates.Contains(part.Id));
        subject.Set(RelayFacts.TwoStates, twoStates is not null);
        subject.SetWord(RelayFacts.TwoStatesMode, twoStates?.Mode.Id);

        // A chattering state may end unsolved; what it did is known all the same.
        OperatingPoint? chatters = context.Box.Points.FirstOrDefault(p => p.ChatteringRelays.Contains(part.Id));
        subject.Set(RelayFacts.Chatters, chatters is not null);
        subject.SetWord(RelayFacts.ChattersMode, chatters?.Mode.Id);
    }
}
