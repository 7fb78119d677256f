using WireCheck.Circuit.Wiring;
using WireCheck.States;

namespace WireCheck.Tests.Standby;

/// <summary>The current out of a bank's positive terminal, read off its cells and not off its consumers.</summary>
internal static class BankAmps
{
    internal static double Of(SolvedBox box, OperatingPoint point) =>
        box.Wiring.Of<WiredBank>().Sum(bank => -bank.CellElements.TakeLast(bank.Columns).Sum(point.Amps));
}
