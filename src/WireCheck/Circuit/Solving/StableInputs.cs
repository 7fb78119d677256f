using WireCheck.Circuit.Elements;

namespace WireCheck.Circuit.Solving;

/// <summary>Whether no input has broken down: the answer on the lower branch, where more current would bring less power.</summary>
internal static class StableInputs
{
    /// <summary>
    /// True when every constant-power part that runs, and every stage that holds its input or is asked to, stands above the floor below
    /// which its current only falls.
    /// </summary>
    internal static bool Hold(ConstantPowerSink[] sinks, ConverterStage[] stages, Solution solution, bool everyInput)
    {
        foreach (ConstantPowerSink sink in sinks)
        {
            if (sink.On && sink.InputWatts > 0 && solution.Voltage(sink.A, sink.B) < ConstantPowerSink.FloorVolts)
            {
                return false;
            }
        }

        foreach (ConverterStage stage in stages)
        {
            if (stage.On && (stage.HoldsInput || everyInput) && solution.Voltage(stage.A, stage.B) < ConstantPowerSink.FloorVolts)
            {
                return false;
            }
        }

        return true;
    }
}
