using WireCheck.Quantities;
using WireCheck.Switching;

namespace WireCheck.Reports.Numbers;

/// <summary>Names a sneak path.</summary>
internal static class SneakWords
{
    /// <summary>What happens, in one line for a reader.</summary>
    internal static string Of(SneakPath path)
    {
        string by = string.Join(", ", path.By);
        return path.Kind switch
        {
            SneakKind.HeldByOwnContact => $"{path.PartId} is held in by its own contact, {Volts(path)} across its coil",
            SneakKind.CoilFedThroughConsumer => $"the coil of {path.PartId} gets {Volts(path)} through {by}",
            SneakKind.TwoStates => $"{path.PartId} stays as it was{(by.Length == 0 ? "" : $", held by {by}")}, {Volts(path)} across its coil",
            SneakKind.Chatter => $"{path.PartId} never comes to rest",
            SneakKind.LiveThroughConsumer => $"{path.PartId} is live through {by}, {Volts(path)} into 10 kΩ",
            SneakKind.ResistorAcrossContact => $"{path.PartId} is live through {by} across an open contact, {Volts(path)} into 10 kΩ",
            SneakKind.FedByOutsideLink => $"{path.PartId} is fed by way of {by}",
            SneakKind.RoundBms => $"{path.PartId} goes round the open BMS{(path.DropsOut ? " until a relay lets go" : "")}",
            SneakKind.RoundBmsByOutsideLink => $"{path.PartId} goes round the open BMS by way of {by}{(path.DropsOut ? " until a relay lets go" : "")}",
            SneakKind.RoundShunt => $"no shunt counts {path.PartId}{(by.Length == 0 ? "" : $", by way of {by}")}",
            _ => $"{by} feeds {QuantityText.WithPrefix(path.Size, "A")} into {path.PartId}",
        };
    }

    /// <summary>The kind as programs read it: words joined by hyphens.</summary>
    internal static string Kind(SneakKind kind) => kind switch
    {
        SneakKind.HeldByOwnContact => "held-by-own-contact",
        SneakKind.CoilFedThroughConsumer => "coil-fed-through-consumer",
        SneakKind.TwoStates => "two-states",
        SneakKind.Chatter => "chatter",
        SneakKind.LiveThroughConsumer => "live-through-consumer",
        SneakKind.ResistorAcrossContact => "resistor-across-open-contact",
        SneakKind.FedByOutsideLink => "fed-by-outside-link",
        SneakKind.RoundBms => "round-bms",
        SneakKind.RoundBmsByOutsideLink => "round-bms-by-outside-link",
        SneakKind.RoundShunt => "round-shunt",
        _ => "source-into-source",
    };

    private static string Volts(SneakPath path) => QuantityText.WithPrefix(path.Size, "V");
}
