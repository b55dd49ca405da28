using Apprentice.Content.Pages;

namespace Apprentice.Content.Topics;

/// <summary>Faults of a file as they are found.</summary>
sealed class Faults(string file)
{
    readonly List<Fault> _found = [];

    /// <summary>How many were found so far.</summary>
    public int Count => _found.Count;

    /// <summary>True when a fault was found on these lines, the last one left out.</summary>
    public bool AnyWithin(int from, int end) => _found.Exists(fault => fault.Line >= from && fault.Line < end);

    /// <summary>Notes a fault.</summary>
    public void Add(int line, string message) => _found.Add(new Fault(file, line, message));

    /// <summary>Notes a fault at a piece of text; nothing where the text is absent, because its column is.</summary>
    public void Add(Cell cell, string message)
    {
        if (!cell.IsAbsent) Add(cell.Line, message);
    }

    /// <summary>All faults, each once, in the order of the lines.</summary>
    public IReadOnlyList<Fault> InOrder() => _found.Count == 0 ? [] : [.. _found.Distinct().OrderBy(fault => fault.Line)];
}
