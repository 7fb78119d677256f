using System.Globalization;
using System.Text;
using WireCheck.Circuit.Elements;
using WireCheck.Circuit.Solving;
using WireCheck.Circuit.Wiring;
using WireCheck.Switching;

namespace WireCheck.Outside.Tests.Switching;

/// <summary>
/// One state of the switches for ngspice: each relay is its coil's resistance and ngspice's own switch with hysteresis, worked
/// by the coil's voltage a millisecond late. A run starts with every relay at rest, or those held in that may hold, and goes on
/// until all is still. The steps are short against the lag, so that the quicker of two relays moves first.
/// </summary>
internal sealed class RelayDeck
{
    private readonly List<(int Node, double Volts)> _nodes = [];
    private readonly ulong _energised;
    private readonly int _relays;
    private readonly int _reference;

    internal RelayDeck(SwitchedBox box, SettledState state)
    {
        _energised = state.Energised;
        _relays = box.Relays.Length;
        _reference = box.Wiring.Network.Reference;
        StringBuilder text = new("* relays\n");
        HashSet<Element> contacts = [.. box.Relays.Select(r => r.Make)];
        foreach (Element element in box.Wiring.Network.Elements)
        {
            if (!contacts.Contains(element))
            {
                Write(text, element);
            }
        }

        text.Append("Vone one 0 1\n");
        for (int i = 0; i < _relays; i++)
        {
            Write(text, box, box.Relays[i], i, state.HeldIn && (state.Started & (1UL << i)) != 0);
        }

        for (int node = 0; node < box.Wiring.Network.NodeCount; node++)
        {
            if (node != _reference)
            {
                text.Append(CultureInfo.InvariantCulture, $"Rfoot{node} n{node} 0 1e11\n");
                if (!state.Solution.IsFloating(node))
                {
                    _nodes.Add((node, state.Solution.Voltage(node)));
                }
            }
        }

        text.Append(".options reltol=1e-6 abstol=1e-12 vntol=1e-9 gmin=1e-14 itl1=500\n.end\n");
        Text = text.ToString();
    }

    internal string Text { get; }

    /// <summary>Commands that run it and print the last values.</summary>
    internal string Commands(int number)
    {
        StringBuilder script = new(FormattableString.Invariant($"tran 0.5m 40m 0 20u\necho circuit {number}\nlet last = length(time) - 1\n"));
        foreach (string name in Enumerable.Range(0, _relays).Select(i => $"q{i}").Concat(_nodes.Select(n => $"n{n.Node}")))
        {
            script.Append(CultureInfo.InvariantCulture, $"let x{name} = v({name})[last]\nprint x{name}\n");
        }

        return script.ToString();
    }

    /// <summary>Compares; the worst difference of a node, V, and null where it printed nothing or a relay stands otherwise.</summary>
    internal (bool Answered, bool SameRelays, double WorstVolts) Compare(int number, Dictionary<string, double> answers)
    {
        if (!answers.ContainsKey($"{number} xq0"))
        {
            return (false, false, 0);
        }

        bool same = true;
        for (int i = 0; i < _relays; i++)
        {
            same &= answers[$"{number} xq{i}"] > 0.5 == ((_energised & (1UL << i)) != 0);
        }

        return (true, same, _nodes.Max(n => Math.Abs(answers[$"{number} xn{n.Node}"] - n.Volts)));
    }

    private void Write(StringBuilder text, Element element)
    {
        string ends = $"{Name(element.A)} {Name(element.B)}";
        switch (element)
        {
            case Resistance part:
                text.Append(CultureInfo.InvariantCulture, $"R{part.Index} {ends} {part.Ohms:R}\n");
                break;
            case Contact { Closed: true } part:
                text.Append(CultureInfo.InvariantCulture, $"R{part.Index} {ends} {part.Ohms:R}\n");
                break;
            case Source { Connected: true } part:
                text.Append(CultureInfo.InvariantCulture, $"I{part.Index} {Name(part.B)} {Name(part.A)} {part.Emf / part.Ohms:R}\nR{part.Index} {ends} {part.Ohms:R}\n");
                break;
        }
    }

    private void Write(StringBuilder text, SwitchedBox box, WiredRelay relay, int i, bool heldIn)
    {
        string plus = Name(box.Wiring.Node(relay.Part.Id, "86"));
        string minus = Name(box.Wiring.Node(relay.Part.Id, "85"));
        double middle = (relay.OperateVolts + relay.ReleaseVolts) / 2;
        double half = (relay.OperateVolts - relay.ReleaseVolts) / 2;
        text.Append(CultureInfo.InvariantCulture, $"Bc{i} b{i} 0 V = abs(V({plus}) - V({minus}))\nRc{i} b{i} c{i} 1k\nCc{i} c{i} 0 1u\n");
        text.Append(CultureInfo.InvariantCulture, $".ic v(c{i})={(heldIn ? relay.Relay.Coil.Voltage.Value.Volts : 0):R}\n");
        text.Append(CultureInfo.InvariantCulture, $".model m{i} sw(vt={middle:R} vh={half:R} ron={relay.Make.Ohms:R} roff=1e12)\n");
        text.Append(CultureInfo.InvariantCulture, $"Sc{i} {Name(relay.Make.A)} {Name(relay.Make.B)} c{i} 0 m{i} {(heldIn ? "ON" : "OFF")}\n");
        text.Append(CultureInfo.InvariantCulture, $"Sq{i} one q{i} c{i} 0 m{i} {(heldIn ? "ON" : "OFF")}\nRq{i} q{i} 0 1meg\n");
    }

    private string Name(int node) => node == _reference ? "0" : FormattableString.Invariant($"n{node}");
}
