using WireCheck.Circuit.Wiring;
using WireCheck.Description;
using WireCheck.Description.Kinds;
using WireCheck.Facts.Catalogue;
using WireCheck.Faults.Inrush;
using WireCheck.Switching;

namespace WireCheck.Facts.Gather;

/// <summary>Gathers what the study of the switches tells of a part.</summary>
public static class SwitchingGathering
{
    /// <summary>Sets the facts of a part; does nothing for a kind that has none.</summary>
    public static void Gather(Part part, FactSubject subject, GatherContext context)
    {
        if (SneakFacts.Of(part.Kind) is { } facts && !IsToldElsewhere(part, context.Pack))
        {
            AddLive(part, facts, subject, context);
            AddSneaks(part, facts, subject, context);
        }

        switch (part)
        {
            case Relay:
                AddRelay(part, subject, context);
                break;
            case Switch:
                AddNegativeOnly(part, subject, context);
                break;
            case Load load:
                AddLiveApart(load, subject, context);
                break;
            case Vehicle:
                AddCrossFeed(part, subject, context);
                break;
        }
    }

    /// <summary>What hangs on a port, a converter or an outlet is told there; an inlet by what is plugged into it.</summary>
    private static bool IsToldElsewhere(Part part, Pack pack) => part switch
    {
        Load load => load.At is not null,
        Port port => pack.Parts.Any(p => (p is Charger c && c.At?.Value == port.Id) || (p is Vehicle v && v.At?.Value == port.Id)
            || (p is Panel panel && panel.At?.Value == port.Id)),
        _ => false,
    };

    private static void AddLive(Part part, SneakFacts facts, FactSubject subject, GatherContext context)
    {
        SwitchingStudy study = context.Switching;
        if (facts.LiveWhenOff is null || study.Unplugged.Row(part.Id) is not { } row || row.Point.Kind == LivePointKind.Rail)
        {
            return;
        }

        if (row.WithAllClosed && !context.Switching.Sneaks.Any(s => KeepsLive(s.Kind)))
        {
            subject.SetNames(facts.KilledBy!, row.KilledBy);
        }

        if (part is Port { Direction.Value: PortDirection.In })
        {
            return;
        }

        // What only a relay that holds itself keeps live is told with the relay.
        bool live = study.LiveLoops.TryGetValue(part.Id, out IReadOnlyList<string>? loop);
        subject.Set(facts.LiveWhenOff, live);
        subject.Set(facts.MeantLive!, row.Meant);
        if (live)
        {
            subject.SetNames(facts.LiveChain!, loop!);
        }
        else if (!study.Sneaks.Any(s => s.PartId == part.Id && KeepsLive(s.Kind))
            && study.LiveByPower.TryGetValue(part.Id, out (PlugCase Plugs, IReadOnlyList<string> Loop) powered))
        {
            subject.SetWord(facts.LiveByPowerWhen!, powered.Plugs.Id);
            subject.SetNames(facts.LiveByPowerChain!, powered.Loop);
        }
    }

    /// <summary>A load at a port is live when the port is. A lamp through which something else is fed is told with that.</summary>
    private static void AddLiveApart(Load load, FactSubject subject, GatherContext context)
    {
        if (!context.Switching.Sneaks.Any(s => s.By.Contains(load.Id))
            && context.Switching.Unplugged.Row(load.At?.Value ?? load.Id) is { WithAllClosed: false, WithAllOpen: false, LiveWhen: [{ } way, ..] })
        {
            subject.SetNames(LoadSwitchFacts.LiveApartClosed, way.Closed);
            subject.SetNames(LoadSwitchFacts.LiveApartOpen, way.Open);
        }
    }

    /// <summary>A box in which such a path is found is told of that first: what no switch kills may hang on it.</summary>
    private static bool KeepsLive(SneakKind kind) => kind is SneakKind.HeldByOwnContact or SneakKind.CoilFedThroughConsumer
        or SneakKind.TwoStates or SneakKind.Chatter or SneakKind.LiveThroughConsumer or SneakKind.ResistorAcrossContact
        or SneakKind.FedByOutsideLink;

    private static void AddSneaks(Part part, SneakFacts facts, FactSubject subject, GatherContext context)
    {
        bool meant = context.Pack.StaysLive.Any(s => s.Value == part.Id);
        foreach (SneakPath path in context.Switching.Sneaks)
        {
            if (path.PartId != part.Id)
            {
                continue;
            }

            switch (path.Kind)
            {
                case SneakKind.LiveThroughConsumer or SneakKind.CoilFedThroughConsumer when facts.BackFedWhen is not null:
                    subject.SetWord(facts.BackFedWhen, path.When);
                    subject.SetNames(facts.BackFedBy!, path.By);
                    subject.SetNames(facts.BackFedLoop!, path.Loop);
                    subject.SetNumber(facts.BackFedVoltage!, path.Size);
                    subject.Set(facts.BackFedInSeries!, path.InSeries);
                    break;
                case SneakKind.ResistorAcrossContact when facts.ResistorFedWhen is not null && !meant && !path.By.All(id => Precharges(id, context)):
                    subject.SetWord(facts.ResistorFedWhen, path.When);
                    subject.SetNames(facts.ResistorFedBy!, path.By);
                    subject.SetNames(facts.ResistorFedLoop!, path.Loop);
                    subject.SetNumber(facts.ResistorFedVoltage!, path.Size);
                    break;
                case SneakKind.FedByOutsideLink when facts.LinkFedWhen is not null && !meant:
                    subject.SetWord(facts.LinkFedWhen, path.When);
                    subject.SetNames(facts.LinkFedBy!, path.By);
                    subject.SetNames(facts.LinkFedLoop!, path.Loop);
                    break;
                case SneakKind.RoundBms or SneakKind.RoundBmsByOutsideLink when facts.BmsBypassLoop is not null:
                    subject.SetNames(facts.BmsBypassLoop, path.Loop);
                    subject.SetNames(facts.BmsBypassLinks!, path.By);
                    subject.Set(facts.BmsBypassDropsOut!, path.DropsOut);
                    break;
                case SneakKind.RoundShunt when facts.ShuntBypassLoop is not null:
                    subject.SetNames(facts.ShuntBypassLoop, path.Loop);
                    subject.SetNames(facts.ShuntBypassLinks!, path.By);
                    break;
            }
        }
    }

    /// <summary>What a precharge does when it should not is told with the resistor.</summary>
    private static bool Precharges(string resistor, GatherContext context)
    {
        foreach (Precharge precharge in context.Inrush.Precharges)
        {
            if (precharge.ResistorId == resistor)
            {
                return true;
            }
        }

        return false;
    }

    private static void AddRelay(Part part, FactSubject subject, GatherContext context)
    {
        foreach (SneakPath path in context.Switching.Sneaks)
        {
            if (path.PartId != part.Id)
            {
                continue;
            }

            switch (path.Kind)
            {
                case SneakKind.HeldByOwnContact:
                    subject.SetWord(RelayFacts.OwnContactWhen, path.When);
                    subject.SetNames(RelayFacts.OwnContactLoop, path.Loop);
                    break;
                case SneakKind.TwoStates:
                    subject.SetNames(RelayFacts.TwoStatesLoop, path.Loop);
                    break;
                case SneakKind.Chatter:
                    subject.SetNames(RelayFacts.ChattersLoop, path.Loop);
                    break;
            }
        }
    }

    private static void AddNegativeOnly(Part part, FactSubject subject, GatherContext context)
    {
        foreach (NegativeOnly negative in context.Switching.NegativeOnly)
        {
            if (negative.Switch == part.Id)
            {
                subject.SetNames(SwitchFacts.NegativeOnly, negative.Parts);
                subject.SetNames(SwitchFacts.NegativeRestored, negative.Restored);
            }
        }

        subject.Set(SwitchFacts.MetalBox, context.Pack.Surroundings.Enclosure?.Conducts == true);
    }

    private static void AddCrossFeed(Part part, FactSubject subject, GatherContext context)
    {
        if (context.Switching.Sneaks.FirstOrDefault(s => s.Kind == SneakKind.SourceIntoSource && s.PartId == part.Id) is { } path)
        {
            subject.SetNumber(CrossFeedFacts.Current, path.Size);
            subject.SetNames(CrossFeedFacts.From, path.By);
            subject.SetWord(CrossFeedFacts.When, path.When);
            subject.SetNames(CrossFeedFacts.Loop, path.Loop);
        }
    }
}
