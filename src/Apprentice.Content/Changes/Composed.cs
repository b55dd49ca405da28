namespace Apprentice.Content.Changes;

/// <summary>A file with the changes that fit it.</summary>
/// <param name="Text">Its text; the shipped text itself where no change fits.</param>
/// <param name="Faults">Changes that do not fit, with file and line.</param>
/// <param name="Unfit">Their numbers.</param>
sealed record Composed(string Text, IReadOnlyList<Fault> Faults, IReadOnlyList<int> Unfit)
{
    /// <summary>Lays changes over a text, one after the other.</summary>
    /// <param name="path">Path of the file.</param>
    /// <param name="shipped">Its shipped text, or null when it is not shipped any more.</param>
    /// <param name="changes">Changes of this file in force, oldest first.</param>
    /// <param name="faultIn">What is wrong with a text of a path, or null.</param>
    public static Composed Of(string path, string? shipped, IReadOnlyList<Change> changes, Func<string, string, Fault?> faultIn)
    {
        var text = shipped ?? "";
        var (faults, unfit) = (new List<Fault>(), new List<int>());
        foreach (var change in changes)
        {
            var (next, sentence) = shipped is null ? (null, $"The file {path} is not shipped any more.") : Apply(path, text, change);
            if (next is not null && faultIn(path, next) is { } wrong) (next, sentence) = (null, $"With it {path} could not be read, line {wrong.Line}: {wrong.Message}");
            if (next is null)
            {
                faults.Add(new Fault(ChangesFile.Name, change.Line, $"Change {change.Number}, \"{change.Title}\", does not fit: {sentence} It is kept and left out. Put it right, or take it back."));
                unfit.Add(change.Number);
            }

            text = next ?? text;
        }

        return new Composed(text, faults, unfit);
    }

    static (string? Text, string Sentence) Apply(string path, string text, Change change)
    {
        var ending = text.Contains("\r\n", StringComparison.Ordinal) ? "\r\n" : "\n";
        var lines = text.ReplaceLineEndings("\n").Split('\n');
        var places = Enumerable.Range(0, Math.Max(0, lines.Length - change.Was.Count + 1)).Where(at => change.Was.Select((line, i) => lines[at + i] == line).All(same => same)).Take(2).ToList();
        if (places.Count == 1) return (string.Join(ending, [.. lines[..places[0]], .. change.Is, .. lines[(places[0] + change.Was.Count)..]]), "");
        return (null, places.Count > 1
            ? $"the lines it replaces stand in {path} more than once, lines {places[0] + 1} and {places[1] + 1}."
            : $"{Nearest(path, lines, change)}");
    }

    // The line of the file that is most like the first line that is looked for.
    static string Nearest(string path, string[] lines, Change change)
    {
        var sought = change.Was.FirstOrDefault(l => l.Trim().Length > 0 && !lines.Contains(l)) ?? change.Was[0];
        var key = Start(sought);
        var at = Array.FindIndex(lines, l => Start(l) == key);
        return at < 0 ? $"\"{Short(sought)}\" is not in {path} any more." : $"{path}:{at + 1} is not as it was: it was \"{Short(sought)}\".";
    }

    static string Start(string line) => string.Join(' ', line.Split(' ', StringSplitOptions.RemoveEmptyEntries).Take(2));

    static string Short(string line) => line.Length > 60 ? line[..60] + "…" : line;
}
