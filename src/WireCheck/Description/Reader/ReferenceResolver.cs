using System.Globalization;
using WireCheck.Description.Kinds;

namespace WireCheck.Description.Reader;

/// <summary>Checks that every reference names something that exists.</summary>
internal sealed class ReferenceResolver
{
    private readonly ReadContext _context;
    private readonly Dictionary<string, Part> _parts = new(StringComparer.Ordinal);
    private readonly Dictionary<string, int> _chains;

    internal ReferenceResolver(ReadContext context, IEnumerable<Part> parts, IReadOnlyList<Conductor> conductors)
    {
        _context = context;
        foreach (Part part in parts.Concat(conductors))
        {
            _parts.TryAdd(part.Id, part);
        }

        _chains = conductors.GroupBy(c => c.WrittenId).Where(g => g.Count() > 1).ToDictionary(g => g.Key, g => g.Count());
    }

    /// <summary>Notes every reference that names nothing, or the wrong thing.</summary>
    internal void Resolve()
    {
        foreach (PartUse use in _context.References.Parts)
        {
            CheckPart(use);
        }

        foreach (TerminalUse use in _context.References.Terminals)
        {
            CheckTerminal(use);
        }
    }

    private void CheckPart(PartUse use)
    {
        string id = use.Id.Value;
        if (_parts.TryGetValue(id, out Part? part))
        {
            if (use.Kinds.Count > 0 && !use.Kinds.Contains(part.Kind))
            {
                Note(use.Id.Position, InputMessages.WrongKind(use.Subject, use.Key, part, use.Kinds));
            }
        }
        else if (_chains.TryGetValue(id, out int legs))
        {
            Note(use.Id.Position, InputMessages.SeveralLegs(use.Subject, use.Key, id, legs));
        }
        else
        {
            IEnumerable<string> ids = _parts.Values.Where(p => use.Kinds.Count == 0 || use.Kinds.Contains(p.Kind)).Select(p => p.Id);
            Note(use.Id.Position, InputMessages.UnknownPart(use.Subject, use.Key, id, ids));
        }
    }

    private void CheckTerminal(TerminalUse use)
    {
        TerminalReference reference = use.Terminal;
        if (!_parts.TryGetValue(reference.PartId, out Part? part))
        {
            CheckFreeNode(use);
            return;
        }

        if (part is Busbar bar)
        {
            CheckStud(reference, bar);
        }
        else if (part.Terminals.Count == 0)
        {
            Note(reference.Position, InputMessages.NoTerminals(reference, part.Kind));
        }
        else if (reference.Terminal.Length == 0)
        {
            Note(reference.Position, InputMessages.WhichTerminal(use.Subject, use.Key, part));
        }
        else if (!part.Terminals.Contains(reference.Terminal))
        {
            Note(reference.Position, InputMessages.UnknownTerminal(reference, part));
        }
    }

    private void CheckFreeNode(TerminalUse use)
    {
        TerminalReference reference = use.Terminal;
        if (!IdRules.FreeNodes.Contains(reference.PartId))
        {
            IEnumerable<string> ids = _parts.Values.Where(p => p is Busbar || p.Terminals.Count > 0).Select(p => p.Id)
                .Concat(IdRules.FreeNodes);
            Note(reference.Position, InputMessages.UnknownPart(use.Subject, use.Key, reference.PartId, ids));
        }
        else if (reference.Terminal.Length > 0)
        {
            Note(reference.Position, InputMessages.NoTerminals(reference, $"node such as {reference.PartId}"));
        }
    }

    private void CheckStud(TerminalReference reference, Busbar bar)
    {
        if (reference.Terminal.Length == 0)
        {
            return;
        }

        bool number = int.TryParse(reference.Terminal, NumberStyles.None, CultureInfo.InvariantCulture, out int stud);
        if (!number || stud < 1 || stud > (bar.Studs?.Value ?? CountValueReader.Highest))
        {
            Note(reference.Position, InputMessages.BadStud(reference, bar.Studs?.Value));
        }
    }

    private void Note(Text.Position position, string message) => _context.Problems.Add(position, message);
}
