using WireCheck.Circuit.Solving;
using WireCheck.Circuit.Wiring;

namespace WireCheck.Switching;

/// <summary>All that decides whether a relay or a converter moves on: what coils, inputs and enable terminals see.</summary>
internal sealed class StateReading
{
    internal StateReading(int relays, int inputs)
    {
        CoilVolts = new double[relays];
        InputVolts = new double[inputs];
        EnableVolts = new double[inputs];
        Collapsed = new bool[inputs];
    }

    /// <summary>Voltage of 86 above 85 by relay, V.</summary>
    internal double[] CoilVolts { get; }

    /// <summary>Voltage by converter and inverter, V.</summary>
    internal double[] InputVolts { get; }

    /// <summary>Voltage of a wired enable terminal above the negative input, V; 0 without one.</summary>
    internal double[] EnableVolts { get; }

    /// <summary>True where the wiring cannot feed a converter.</summary>
    internal bool[] Collapsed { get; }

    /// <summary>Takes the voltages of a solution.</summary>
    internal void Take(Solution solution, int[] coilPlus, int[] coilMinus, IPoweredInput[] inputs)
    {
        for (int i = 0; i < CoilVolts.Length; i++)
        {
            CoilVolts[i] = solution.Voltage(coilPlus[i], coilMinus[i]);
        }

        for (int i = 0; i < inputs.Length; i++)
        {
            IPoweredInput input = inputs[i];
            InputVolts[i] = solution.Voltage(input.InputPlus, input.InputMinus);
            EnableVolts[i] = input.EnableNode is { } node ? solution.Voltage(node, input.InputMinus) : 0;
            Collapsed[i] = solution.Outcome == SolveOutcome.Collapsed
                && input is WiredConverter { Stage: { } stage } && solution.Collapsed.Contains(stage);
        }
    }
}
