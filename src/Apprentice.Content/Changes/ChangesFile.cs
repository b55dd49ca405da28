using System.Globalization;
using System.Text;

namespace Apprentice.Content.Changes;

/// <summary>The file that holds a workshop's changes, oldest first; the same form travels to another workshop. DEVELOPERS.md tells the form.</summary>
public static class ChangesFile
{
    /// <summary>Its name in the workshop's folder.</summary>
    public const string Name = "changes.md";

    const string Head = "# Changes of the workshop";
    const string Fence = "~~~~";
    static readonly string[] Fields = ["File", "Day", "By", "Because", "From", "Takes back"];

    /// <summary>The text of the file.</summary>
    public static string Write(IReadOnlyList<Change> changes)
    {
        var text = new StringBuilder(Head).Append("\n\nWritten by the program. The shipped files stay as they are; these lines lie over them, in this order.\n");
        foreach (var change in changes)
        {
            _ = text.Append('\n').Append("## ").Append(change.Number).Append(": ").Append(OneLine(change.Title)).Append("\n\n");
            string[] values = [change.File, change.Day.ToString("O"), change.By, change.Because, change.From, change.TakesBack?.ToString() ?? ""];
            foreach (var (field, value) in Fields.Zip(values).Where(p => p.Second.Length > 0)) _ = text.Append("- ").Append(field).Append(": ").Append(OneLine(value)).Append('\n');
            if (change.TakesBack is null) Block(Block(text, "Was", change.Was), "Is", change.Is);
        }

        return text.ToString();
    }

    /// <summary>The changes of a file, or its faults; never an exception, whatever the text.</summary>
    /// <param name="file">The file's name as faults tell it.</param>
    /// <param name="text">Its text.</param>
    public static (IReadOnlyList<Change> Changes, IReadOnlyList<Fault> Faults) Read(string file, string text)
    {
        var reader = new Reader(file, text.ReplaceLineEndings("\n").Split('\n'));
        return (reader.Changes(), reader.Faults);
    }

    static StringBuilder Block(StringBuilder text, string name, IReadOnlyList<string> lines)
    {
        _ = text.Append("\n### ").Append(name).Append("\n\n").Append(Fence).Append('\n');
        foreach (var line in lines) _ = text.Append(line).Append('\n');
        return text.Append(Fence).Append('\n');
    }

    static string OneLine(string text) => text.ReplaceLineEndings(" ").Trim();

    sealed class Reader(string file, string[] lines)
    {
        int _at;

        public List<Fault> Faults { get; } = [];

        public List<Change> Changes()
        {
            var changes = new List<Change>();
            while (_at < lines.Length)
            {
                if (!lines[_at].StartsWith("## ", StringComparison.Ordinal)) _at++;
                else if (One(changes) is { } change) changes.Add(change);
            }

            if (Faults.Count == 0 && changes.Count == 0 && !lines[0].StartsWith(Head, StringComparison.Ordinal)) Wrong(0, $"This is no file of changes: its first line would be \"{Head}\".");
            return changes;
        }

        Change? One(List<Change> before)
        {
            var start = _at;
            var parts = lines[_at++][3..].Split(':', 2);
            var isNumber = int.TryParse(parts[0], NumberStyles.None, null, out var number) && number > 0 && before.TrueForAll(c => c.Number < number);
            if (!isNumber || parts.Length < 2) return Wrong(start, "A change begins with its number, larger than those before it, and what it is about: ## 3: title.");
            var change = new Change(number, parts[1].Trim()) { Line = start + 1 };
            while (_at < lines.Length && !lines[_at].StartsWith("## ", StringComparison.Ordinal))
            {
                var line = lines[_at++];
                if (line.StartsWith("- ", StringComparison.Ordinal)) change = With(change, line[2..], _at - 1);
                else if (line is "### Was") change = change with { Was = Lines() };
                else if (line is "### Is") change = change with { Is = Lines() };
            }

            return Complete(change, before, start);
        }

        Change? Complete(Change change, List<Change> before, int start)
        {
            if (change.Day == default) return Wrong(start, $"Change {change.Number} has no day: write - Day: 2026-11-25.");
            if (change.TakesBack is { } back) return before.Exists(c => c.Number == back && c.TakesBack is null) ? change : Wrong(start, $"Change {change.Number} takes back change {back}, which is not there before it.");
            if (change.File.Length == 0) return Wrong(start, $"Change {change.Number} names no file: write - File: question-bank/ and the name of a topic, or lessons/ and that of a lesson.");
            return change.Was.Count == 0 ? Wrong(start, $"Change {change.Number} does not say what it replaces: write the lines under ### Was between two lines of {Fence}.") : change;
        }

        Change With(Change change, string point, int line)
        {
            var at = point.IndexOf(':', StringComparison.Ordinal);
            var (field, value) = at < 0 ? (point, "") : (point[..at].Trim(), point[(at + 1)..].Trim());
            switch (field)
            {
                case "File": return change with { File = value };
                case "By": return change with { By = value };
                case "Because": return change with { Because = value };
                case "From": return change with { From = value };
                case "Day" when DateOnly.TryParseExact(value, "O", out var day): return change with { Day = day };
                case "Takes back" when int.TryParse(value, NumberStyles.None, null, out var number): return change with { TakesBack = number };
                default:
                    Wrong(line, $"\"{point}\" is not known here. It can be {string.Join(", ", Fields)}; a day is written 2026-11-25.");
                    return change;
            }
        }

        // The lines between two fences.
        List<string> Lines()
        {
            while (_at < lines.Length && lines[_at].Length == 0) _at++;
            if (_at >= lines.Length || lines[_at] != Fence)
            {
                Wrong(Math.Min(_at, lines.Length - 1), $"Lines of a change stand between two lines of {Fence}.");
                return [];
            }

            var end = Array.IndexOf(lines, Fence, _at + 1);
            if (end < 0)
            {
                Wrong(_at, $"The line of {Fence} that ends this block is missing.");
                end = lines.Length;
            }

            var inside = lines[(_at + 1)..end].ToList();
            _at = Math.Min(end + 1, lines.Length);
            return inside;
        }

        Change? Wrong(int line, string sentence)
        {
            Faults.Add(new Fault(file, line + 1, sentence));
            return null;
        }
    }
}
