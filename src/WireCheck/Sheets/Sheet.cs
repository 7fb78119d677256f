namespace WireCheck.Sheets;

/// <summary>One sheet of paper for the bench: a table with what must be known to read it.</summary>
/// <param name="Name">Name of its file and of <c>--sheet</c>, in kebab-case.</param>
/// <param name="Title">Its title.</param>
/// <param name="Notes">What must be known, a sentence or two each.</param>
/// <param name="Headings">Headings of the columns; numbers carry their unit there where the whole column has one.</param>
/// <param name="Rows">Rows of as many cells as there are headings.</param>
public sealed record Sheet(
    string Name, string Title, IReadOnlyList<string> Notes, IReadOnlyList<string> Headings, IReadOnlyList<IReadOnlyList<string>> Rows);

/// <summary>All sheets of a box.</summary>
/// <param name="File">The description's name as the user gave it.</param>
/// <param name="Title">Title of the box.</param>
/// <param name="Building">Sheets to build from.</param>
/// <param name="Commissioning">Sheets to bring it to life by, in the order of the work.</param>
public sealed record SheetBook(string File, string Title, IReadOnlyList<Sheet> Building, IReadOnlyList<Sheet> Commissioning)
{
    /// <summary>What the check says of the box, to stand above everything: the verdict, and whether it may be built from.</summary>
    public required IReadOnlyList<string> Banner { get; init; }

    /// <summary>The box has dangers or faults: nothing is to be built from the sheets yet.</summary>
    public required bool NotToBeBuilt { get; init; }

    /// <summary>All of them in order.</summary>
    public IEnumerable<Sheet> All => Building.Concat(Commissioning);
}
