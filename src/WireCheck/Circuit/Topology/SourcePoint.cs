using WireCheck.Circuit.Elements;
using WireCheck.Circuit.Wiring;
using WireCheck.Description.Kinds;

namespace WireCheck.Circuit.Topology;

/// <summary>A place from which power can come into the wiring.</summary>
/// <param name="PartId">The bank, charger, converter, panel or vehicle.</param>
/// <param name="Plus">Its positive node.</param>
/// <param name="Minus">Its negative node.</param>
/// <param name="Volts">Its highest voltage, V.</param>
/// <param name="LimitAmps">Most it can give by itself, A; infinite for a battery.</param>
public sealed record SourcePoint(string PartId, int Plus, int Minus, double Volts, double LimitAmps)
{
    /// <summary>Every source of a box, banks first, in the order of the description.</summary>
    public static IReadOnlyList<SourcePoint> In(BoxWiring wiring)
    {
        List<SourcePoint> sources = [];
        foreach (WiredPart part in wiring.Parts)
        {
            string id = part.Part.Id;
            switch (part)
            {
                case WiredBank bank:
                    sources.Add(new SourcePoint(
                        id, wiring.Node(id, "+"), wiring.Node(id, "-"),
                        bank.Cells.Window.Value.To.Volts * bank.Cells.Series.Value, double.PositiveInfinity));
                    break;
                case WiredCharger { Output: { } output } charger:
                    sources.Add(new SourcePoint(id, output.A, output.B, charger.Charger.Voltage.Value.Volts, charger.Charger.Current.Value.Amperes));
                    break;
                case WiredCharger { Stage: { } stage } charger:
                    sources.Add(new SourcePoint(id, stage.OutA, stage.OutB, charger.Charger.Voltage.Value.Volts, charger.Charger.Current.Value.Amperes));
                    break;
                case WiredConverter converter:
                    sources.Add(new SourcePoint(
                        id, converter.Stage.OutA, converter.Stage.OutB, converter.Stage.Volts, converter.Stage.LimitAmps));
                    break;
                case WiredVehicle vehicle:
                    sources.Add(new SourcePoint(
                        id, vehicle.Plus, vehicle.Minus, vehicle.Vehicle.Voltage.Value.To.Volts,
                        vehicle.Vehicle.Fuse.Value.Amperes));
                    break;
                case WiredPanel { Element: { } element } panel:
                    sources.Add(new SourcePoint(
                        id, element.A, element.B, panel.Panel.OpenCircuit.Value.Volts, panel.Panel.ShortCircuit.Value.Amperes));
                    break;
            }
        }

        return [.. sources.OrderBy(s => wiring[s.PartId] is WiredBank ? 0 : 1)];
    }
}
