using WireCheck.Description;

namespace WireCheck.Facts.Gather;

/// <summary>Gathers the facts of one kind of part from a solved box.</summary>
public interface IGatherer
{
    /// <summary>The kind of part it gathers for.</summary>
    Type PartType { get; }

    /// <summary>Sets every fact of the part that applies.</summary>
    void Gather(Part part, FactSubject subject, GatherContext context);
}

/// <summary>The typed form of <see cref="IGatherer"/>.</summary>
public abstract class Gatherer<T> : IGatherer
    where T : Part
{
    public Type PartType => typeof(T);

    public abstract void Gather(T part, FactSubject subject, GatherContext context);

    void IGatherer.Gather(Part part, FactSubject subject, GatherContext context) => Gather((T)part, subject, context);

    /// <summary>Notes that a value which decides something was not written but taken from a part class.</summary>
    /// <param name="subject">The part's facts.</param>
    /// <param name="part">The part.</param>
    /// <param name="given">The value; null when there is none.</param>
    /// <param name="what">What it is, in words.</param>
    /// <param name="bearsOn">Names of the facts that it decides.</param>
    protected static void NoteIfAssumed<TValue>(FactSubject subject, Part part, Given<TValue>? given, string what, params string[] bearsOn)
    {
        if (given is { Assumed: true })
        {
            subject.Assume(part.ClassName is null ? $"{what} taken from the library" : $"{what} taken from part class {part.ClassName}", bearsOn);
        }
    }
}
