namespace WireCheck.Knowledge;

/// <summary>
/// One of the tool's own tables or part classes is wrong. It is a defect of the tool, never of a description; the
/// message begins with file, line and column.
/// </summary>
public sealed class KnowledgeException : Exception
{
    public KnowledgeException()
    {
    }

    public KnowledgeException(string message)
        : base(message)
    {
    }

    public KnowledgeException(string message, Exception inner)
        : base(message, inner)
    {
    }
}
