using WireCheck.Circuit.Wiring;
using WireCheck.Description;

namespace WireCheck.Switching;

/// <summary>What is live, and what each switch kills, in every state of the switches and every way of plugging.</summary>
public sealed class SwitchingStudy
{
    private SwitchingStudy(SwitchedBox box, IReadOnlyList<ControlTable> tables)
    {
        Box = box;
        Tables = tables;
    }

    /// <summary>One table for each way of plugging, the unplugged one first.</summary>
    public IReadOnlyList<ControlTable> Tables { get; }

    /// <summary>The table with nothing plugged.</summary>
    public ControlTable Unplugged => Tables[0];

    /// <summary>Switches beyond those that are combined, which stay open throughout.</summary>
    public IReadOnlyList<string> LeftOpen => [.. Box.Switches.Skip(SwitchStates.MostSwitches).Select(s => s.Part.Id)];

    internal SwitchedBox Box { get; }

    /// <summary>Studies a box.</summary>
    public static SwitchingStudy Of(Pack pack, WiringData data)
    {
        SwitchedBox box = new(pack, data);
        Enumeration enumeration = new(box);
        List<ControlTable> tables = [];
        foreach (PlugCase plugs in PlugCase.For(pack))
        {
            tables.Add(ControlTable.Of(box, plugs, enumeration.States, enumeration.Run(plugs)));
        }

        return new SwitchingStudy(box, tables);
    }
}
