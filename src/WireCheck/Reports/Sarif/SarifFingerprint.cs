using System.Security.Cryptography;
using System.Text;
using System.Text.Json;
using WireCheck.Findings;

namespace WireCheck.Reports.Sarif;

/// <summary>
/// What tells the same finding in two runs: its rule and its part, not its line or its numbers, so that it stays the
/// same when lines move or a current changes a little.
/// </summary>
internal static class SarifFingerprint
{
    /// <summary>Writes the fingerprint.</summary>
    /// <param name="json">The result's object.</param>
    /// <param name="finding">The finding.</param>
    /// <param name="seen">How often each rule and part came before in the same file.</param>
    internal static void Write(Utf8JsonWriter json, Finding finding, Dictionary<string, int> seen)
    {
        string key = $"{finding.Rule}\n{finding.PartKind}\n{finding.Part}";
        int before = seen.GetValueOrDefault(key);
        seen[key] = before + 1;
        byte[] hash = SHA256.HashData(Encoding.UTF8.GetBytes(FormattableString.Invariant($"{key}\n{before}")));
        json.WriteStartObject("partialFingerprints");
        json.WriteString("ruleAndPart/v1", Convert.ToHexStringLower(hash.AsSpan(0, 16)));
        json.WriteEndObject();
    }
}
