using Apprentice.Content.Pages;

namespace Apprentice.Content.Topics;

/// <summary>The points <c>Field: value</c> beneath a heading.</summary>
sealed class Fields
{
    readonly Passage _passage;
    readonly Faults _faults;
    readonly List<Point> _all = [];
    readonly Cell _blank;

    /// <summary>Reads the points of a passage; notes unknown and repeated ones.</summary>
    /// <param name="passage">The passage.</param>
    /// <param name="faults">Where faults go.</param>
    /// <param name="valid">Valid fields.</param>
    /// <param name="several">Those that may stand several times.</param>
    public Fields(Passage passage, Faults faults, IReadOnlyList<string> valid, params IReadOnlyList<string> several)
    {
        _passage = passage;
        _faults = faults;
        _blank = new Cell("", passage.Heading.Line);
        foreach (var bullet in passage.Bullets)
        {
            var (name, value) = bullet.Cut(":");
            var field = valid.FirstOrDefault(name.Is);
            if (field is null) faults.Add(bullet, $"There is no field \"{name.Text}\" here: use {Nearest.Or(Nearest.Of(name.Text, valid, 3))}.");
            else if (!several.Contains(field, StringComparer.Ordinal) && _all.Exists(other => Same(other.Field, field))) faults.Add(bullet, $"The field \"{field}\" stands twice.");
            else _all.Add(new Point(field, value));
        }
    }

    /// <summary>A field; blank when it is not there.</summary>
    public Cell this[string field] => _all.Find(point => Same(point.Field, field))?.Value ?? _blank;

    /// <summary>All points of a field that may stand several times.</summary>
    public IReadOnlyList<Cell> All(string field) => [.. _all.Where(point => Same(point.Field, field)).Select(point => point.Value)];

    /// <summary>True when the field is there and says something.</summary>
    public bool Has(string field) => !this[field].IsBlank;

    /// <summary>A field that must be there.</summary>
    public Cell Needed(string field)
    {
        if (!Has(field)) _faults.Add(this[field], $"\"{_passage.Heading.Text}\" needs the field \"{field}\".");
        return this[field];
    }

    static bool Same(string one, string other) => string.Equals(one, other, StringComparison.Ordinal);

    sealed record Point(string Field, Cell Value);
}
