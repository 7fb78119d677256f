using System.Text.Json;
using WireCheck.Facts;
using WireCheck.Findings;
using WireCheck.Rules;
using WireCheck.Text;

namespace WireCheck.Reports.Sarif;

/// <summary>Places in a description as SARIF writes them.</summary>
internal sealed class SarifLocation(Report report)
{
    private readonly Dictionary<string, FactSubject> _byId =
        report.Facts.Subjects.DistinctBy(s => s.Id).ToDictionary(s => s.Id, StringComparer.Ordinal);

    /// <summary>
    /// A file's name as a reference: slashes, and what a reference may not hold as its code. A full path becomes a
    /// reference of the file scheme.
    /// </summary>
    internal static string UriOf(string file)
    {
        string path = file.Replace('\\', '/');
        bool drive = path.Length > 2 && char.IsAsciiLetter(path[0]) && path[1] == ':' && path[2] == '/';
        string escaped = string.Join('/', (drive ? path[3..] : path).Split('/').Select(Uri.EscapeDataString));
        return drive ? $"file:///{path[..2]}/{escaped}" : path.StartsWith('/') ? $"file://{escaped}" : escaped;
    }

    /// <summary>The place of the part that a result is about.</summary>
    internal static void Write(Utf8JsonWriter json, string part, string kind, Position at)
    {
        json.WriteStartArray("locations");
        json.WriteStartObject();
        WritePhysical(json, at);
        json.WriteStartArray("logicalLocations");
        json.WriteStartObject();
        json.WriteString("name", PlainText.Escape(part));
        json.WriteString("fullyQualifiedName", $"{kind}/{PlainText.Escape(part)}");
        json.WriteString("kind", "element");
        json.WriteEndObject();
        json.WriteEndArray();
        json.WriteEndObject();
        json.WriteEndArray();
    }

    /// <summary>Other parts that the finding's numbers and words name.</summary>
    internal void WriteRelated(Utf8JsonWriter json, Finding finding)
    {
        json.WriteStartArray("relatedLocations");
        HashSet<string> told = new(StringComparer.Ordinal) { finding.Part };
        foreach (JudgedValue value in finding.Values)
        {
            foreach (string id in Names(value.Value))
            {
                if (_byId.TryGetValue(id, out FactSubject? subject) && told.Add(id))
                {
                    json.WriteStartObject();
                    json.WriteNumber("id", told.Count - 1);
                    WritePhysical(json, subject.Position);
                    SarifReport.WriteMessage(json, $"{value.Name.Replace('_', ' ')}: {id}");
                    json.WriteEndObject();
                }
            }
        }

        json.WriteEndArray();
    }

    private static IEnumerable<string> Names(object value) => value switch
    {
        string name => [name],
        IEnumerable<string> names => names,
        _ => [],
    };

    private static void WritePhysical(Utf8JsonWriter json, Position at)
    {
        json.WriteStartObject("physicalLocation");
        json.WriteStartObject("artifactLocation");
        json.WriteString("uri", UriOf(at.File));
        json.WriteEndObject();
        json.WriteStartObject("region");
        json.WriteNumber("startLine", at.Line);
        json.WriteNumber("startColumn", at.Column);
        json.WriteEndObject();
        json.WriteEndObject();
    }
}
