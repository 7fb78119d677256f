using WireCheck.Quantities;
using WireCheck.Rules;

namespace WireCheck.Mending;

/// <summary>Compares two values that findings offer for the same key.</summary>
internal static class SaferOf
{
    /// <summary>
    /// True when <paramref name="other"/> is safer than <paramref name="held"/>. Conductor sizes of one system and numbers with
    /// the same unit can be compared; of others the one that came first stays.
    /// </summary>
    internal static bool IsSafer(OfferedEdit other, OfferedEdit held)
    {
        SaferValue safer = held.Safer != SaferValue.Neither ? held.Safer : other.Safer;
        int? order = Compare(other.Value, held.Value);
        return order is not null && ((safer == SaferValue.Larger && order > 0) || (safer == SaferValue.Smaller && order < 0));
    }

    /// <summary>Below zero when the left value is the smaller one; null when they cannot be compared.</summary>
    private static int? Compare(string left, string right)
    {
        Parsed<ConductorSize> leftSize = ConductorSizeReader.Read(left), rightSize = ConductorSizeReader.Read(right);
        if (leftSize.Fault is null && rightSize.Fault is null)
        {
            int order = leftSize.Value.Number.CompareTo(rightSize.Value.Number);
            return leftSize.Value.System != rightSize.Value.System ? null : leftSize.Value.System == SizeSystem.Awg ? -order : order;
        }

        Parsed<(double Number, string After)> leftNumber = NumberScanner.Split(left), rightNumber = NumberScanner.Split(right);
        bool comparable = leftNumber.Fault is null && rightNumber.Fault is null && leftNumber.Value.After == rightNumber.Value.After;
        return comparable ? leftNumber.Value.Number.CompareTo(rightNumber.Value.Number) : null;
    }
}
