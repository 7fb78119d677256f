namespace WireCheck.Outside.Tests.Circuit;

/// <summary>A value to compare: the sum of what ngspice prints under some names and an offset.</summary>
internal sealed record NgspiceProbe(string Where, string[] Names, double Ours, double Offset)
{
    internal double Floor => Names[0].StartsWith('v') ? Comparison.VoltageFloor : Comparison.CurrentFloor;
}
