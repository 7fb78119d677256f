namespace WireCheck.Text;

/// <summary>Something wrong in an input file: where, and what would be right.</summary>
/// <param name="Position">Where it stands.</param>
/// <param name="Message">One plain sentence or two, without the position.</param>
public sealed record Problem(Position Position, string Message)
{
    /// <summary><c>file:line:column: message</c>.</summary>
    public override string ToString() => $"{Position}: {Message}";
}
