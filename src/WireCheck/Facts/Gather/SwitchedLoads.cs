using WireCheck.Circuit.Wiring;
using WireCheck.Description.Kinds;
using WireCheck.Knowledge;
using WireCheck.States;

namespace WireCheck.Facts.Gather;

/// <summary>What hangs on a contact, told from the currents that flow through it.</summary>
internal static class SwitchedLoads
{
    /// <summary>
    /// What each kind of load behind a switch takes, A, in the state in which it carries most. A coil is inductive; a load that
    /// asks for a surge starts as a motor does; a pilot lamp counts only where it is all that the switch carries. Never empty.
    /// </summary>
    internal static IReadOnlyDictionary<SwitchedLoad, double> Of(WiredSwitch wired, GatherContext context)
    {
        Dictionary<SwitchedLoad, double> kinds = [];
        bool lamp = false;
        foreach (Circuit.Elements.Contact pole in wired.Poles)
        {
            OperatingPoint? most = context.SteadyPoints().MaxBy(p => Math.Abs(p.Amps(pole)));
            if (most is null)
            {
                continue;
            }

            CurrentFlow flow = context.States.FlowAt(most);
            (int before, int after) = most.Amps(pole) >= 0 ? (pole.A, pole.B) : (pole.B, pole.A);
            HashSet<FlowBranch> taken = [];
            Collect(taken, after, flow.OutOf, b => b.To);
            Collect(taken, before, flow.Into, b => b.From);
            foreach (FlowBranch branch in taken)
            {
                if (context.Wiring[branch.PartId] is WiredSwitch)
                {
                    lamp = true;
                }
                else if (KindOf(branch.PartId, context) is { } kind)
                {
                    kinds[kind] = kinds.GetValueOrDefault(kind) + branch.Amps;
                }
            }
        }

        if (kinds.Count == 0)
        {
            kinds.Add(lamp ? SwitchedLoad.Lamp : SwitchedLoad.Resistive, 1);
        }

        return kinds;
    }

    /// <summary>Follows the current in its own direction up to what takes it.</summary>
    private static void Collect(
        HashSet<FlowBranch> taken, int start, Func<int, IReadOnlyList<FlowBranch>> branches, Func<FlowBranch, int> next)
    {
        HashSet<int> seen = [start];
        Stack<int> open = new([start]);
        while (open.TryPop(out int node))
        {
            foreach (FlowBranch branch in branches(node))
            {
                if (branch.Takes)
                {
                    taken.Add(branch);
                }
                else if (!branch.Gives && seen.Add(next(branch)))
                {
                    open.Push(next(branch));
                }
            }
        }
    }

    private static SwitchedLoad? KindOf(string id, GatherContext context) => context.Wiring[id] switch
    {
        WiredRelay => SwitchedLoad.Inductive,
        WiredLoad { Load.Surge: not null } => SwitchedLoad.Motor,
        WiredBank or WiredBms => null,
        _ => SwitchedLoad.Resistive,
    };
}
