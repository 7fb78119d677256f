using WireCheck.Circuit.Elements;
using WireCheck.Circuit.Wiring;

namespace WireCheck.Switching;

/// <summary>
/// The box as rails: all that hangs together whatever the position of the switches, by wire, bars, joints, fuses, the
/// shunt and the BMS. Between rails lie contacts, diodes, resistors and links outside the box; consumers and sources are
/// no ways.
/// </summary>
public sealed class Rails
{
    /// <summary>Name of the element that bonds a metal case, told apart from links the builder declares.</summary>
    internal const string CaseBond = "case";

    private readonly int[] _of;

    private Rails(int[] of, int count, IReadOnlyList<RailWay> contacts, IReadOnlyList<RailWay> diodes, IReadOnlyList<RailWay> resistors, IReadOnlyList<RailWay> links)
    {
        _of = of;
        Count = count;
        Contacts = contacts;
        Diodes = diodes;
        Resistors = resistors;
        Links = links;
    }

    /// <summary>Number of rails.</summary>
    public int Count { get; }

    /// <summary>Contacts of switches and relays.</summary>
    public IReadOnlyList<RailWay> Contacts { get; }

    public IReadOnlyList<RailWay> Diodes { get; }

    public IReadOnlyList<RailWay> Resistors { get; }

    /// <summary>Links outside the box and the bond of its case.</summary>
    public IReadOnlyList<RailWay> Links { get; }

    /// <summary>The rail of a node.</summary>
    public int Of(int node) => _of[node];

    /// <summary>Finds the rails of a box.</summary>
    /// <param name="wiring">The box.</param>
    /// <param name="leftOut">A part that is no way, such as a shunt that is looked past; null for none.</param>
    public static Rails Of(BoxWiring wiring, Func<WiredPart, bool>? leftOut = null)
    {
        int[] leader = new int[wiring.Network.NodeCount];
        for (int i = 0; i < leader.Length; i++)
        {
            leader[i] = i;
        }

        bool[] known = new bool[wiring.Network.Elements.Count];
        foreach (WiredPart part in wiring.Parts)
        {
            foreach (Element element in part.Elements)
            {
                known[element.Index] = true;
                if (IsFixed(part, element) && leftOut?.Invoke(part) != true)
                {
                    Join(leader, element.A, element.B);
                }
            }
        }

        foreach (Element link in wiring.OutsideLinks)
        {
            known[link.Index] = true;
        }

        // Joined negatives inside a charger belong to no part's list.
        foreach (Element element in wiring.Network.Elements)
        {
            if (!known[element.Index] && element is Resistance)
            {
                Join(leader, element.A, element.B);
            }
        }

        return Collect(wiring, leader);
    }

    private static Rails Collect(BoxWiring wiring, int[] leader)
    {
        int[] of = new int[leader.Length];
        int count = 0;
        for (int node = 0; node < leader.Length; node++)
        {
            int first = Leader(leader, node);
            of[node] = first == node ? count++ : of[first];
        }

        List<RailWay> contacts = [];
        List<RailWay> diodes = [];
        List<RailWay> resistors = [];
        foreach (WiredPart part in wiring.Parts)
        {
            string id = part.Part.Id;
            switch (part)
            {
                case WiredSwitch wired:
                    contacts.AddRange(wired.Poles.Select(p => Way(id, p)));
                    break;
                case WiredRelay relay:
                    contacts.Add(Way(id, relay.Make));
                    if (relay.Rest is not null)
                    {
                        contacts.Add(Way(id, relay.Rest));
                    }

                    break;
                case WiredDiode diode:
                    diodes.Add(Way(id, diode.Element));
                    break;
                case WiredResistor resistor:
                    resistors.Add(Way(id, resistor.Element));
                    break;
            }
        }

        RailWay[] links = [.. wiring.OutsideLinks.Select(e => Way(e.Name, e))];
        return new Rails(of, count, contacts, diodes, resistors, links);

        RailWay Way(string id, Element element) => new(id, of[element.A], of[element.B], element);
    }

    private static bool IsFixed(WiredPart part, Element element) => part switch
    {
        WiredConductor or WiredJoint or WiredBusbar or WiredFuse or WiredShunt or WiredPort => true,
        WiredBms bms => element == bms.Path || element == bms.ChargePath,
        WiredLoad load => element == load.LeadPlus || element == load.LeadMinus,
        WiredConverter converter => element == converter.NegativeTie,
        _ => false,
    };

    // The smaller node leads, so that rails are numbered in the order of their first node.
    private static void Join(int[] leader, int first, int second)
    {
        int a = Leader(leader, first);
        int b = Leader(leader, second);
        leader[Math.Max(a, b)] = Math.Min(a, b);
    }

    private static int Leader(int[] leader, int node)
    {
        while (leader[node] != node)
        {
            node = leader[node] = leader[leader[node]];
        }

        return node;
    }
}
