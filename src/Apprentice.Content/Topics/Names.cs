using Apprentice.Content.Pages;

namespace Apprentice.Content.Topics;

/// <summary>Short names of one sort in a file, with their lines.</summary>
/// <param name="what">What they name: "part".</param>
/// <param name="cells">The names in the order of the file.</param>
/// <param name="unread">True when they stand in a section that is missing or could not be read, which has been told.</param>
sealed class Names(string what, IReadOnlyList<Cell> cells, bool unread = false)
{
    const int Suggestions = 3;

    bool _noneTold = unread;

    /// <summary>True when nothing is known of these names.</summary>
    public bool Unread { get; } = unread;

    /// <summary>No names.</summary>
    public static Names None(string what) => new(what, []);

    /// <summary>The names in order.</summary>
    public IReadOnlyList<string> All { get; } = [.. cells.Select(cell => cell.Text)];

    /// <summary>How many there are.</summary>
    public int Count => All.Count;

    /// <summary>True when the name is one of them.</summary>
    public bool Has(string name) => All.Contains(name, StringComparer.Ordinal);

    /// <summary>Place of a name, or −1.</summary>
    public int IndexOf(string name)
    {
        for (var i = 0; i < All.Count; i++)
        {
            if (string.Equals(All[i], name, StringComparison.Ordinal)) return i;
        }

        return -1;
    }

    /// <summary>Line on which a name is given, or 1.</summary>
    public int LineOf(string name) => IndexOf(name) is >= 0 and var index ? cells[index].Line : 1;

    /// <summary>True when the text is one of the names; otherwise notes a fault that tells the nearest ones, and when there are no names at all, one for all.</summary>
    public bool Known(Cell cell, Faults faults)
    {
        if (Has(cell.Text)) return true;
        if (Count > 0) faults.Add(cell, $"There is no {what} \"{cell.Text}\": use {Nearest.Or(Nearest.Of(cell.Text, All, Suggestions))}.");
        else if (!_noneTold) faults.Add(cell, $"There is no {what} \"{cell.Text}\": this file names none.");
        _noneTold |= Count == 0;
        return false;
    }
}
