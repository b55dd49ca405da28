using Apprentice.Content.Values;
using Apprentice.Engine.Evidence;
using Apprentice.Engine.Topics;

namespace Apprentice.Content.Lessons;

/// <summary>A question inside a lesson, which the engine answers.</summary>
/// <param name="Provenance">Where the bike comes from.</param>
/// <param name="Want">What the customer wants.</param>
/// <param name="Found">What was found.</param>
/// <param name="Question">The question.</param>
public sealed record TryIt(string Provenance, string Want, IReadOnlyList<Finding> Found, string Question)
{
    /// <summary>Heading of the section that holds one.</summary>
    public const string Heading = "Try it";

    /// <summary>The section as a learner reads it: short names of bike, want and findings are left out, since the next page says them in words.</summary>
    /// <param name="section">A section headed "Try it".</param>
    public static LessonSection Spoken(LessonSection section) => section with
    {
        Blocks = [.. section.Blocks.Where(b => b is not LessonBlock.Point point || LessonSpan.Plain(point.Spans).StartsWith("Question", StringComparison.OrdinalIgnoreCase))],
    };

    /// <summary>The question of a section, or null with faults.</summary>
    /// <param name="file">The file as faults tell it.</param>
    /// <param name="section">A section headed "Try it".</param>
    /// <param name="topic">The lesson's topic.</param>
    public static (TryIt? Asked, IReadOnlyList<Fault> Faults) Read(string file, LessonSection section, Topic topic)
    {
        var faults = new List<Fault>();
        var fields = section.Blocks.OfType<LessonBlock.Point>().Select(point => (point.Line, Text: LessonSpan.Plain(point.Spans)))
            .Select(point => (point.Line, Name: point.Text.Split(':', 2)[0].Trim(), Text: point.Text.Contains(':') ? point.Text.Split(':', 2)[1].Trim() : "")).ToList();
        string Needed(string name, IEnumerable<string> valid)
        {
            var field = fields.FirstOrDefault(f => string.Equals(f.Name, name, StringComparison.OrdinalIgnoreCase));
            var all = valid.ToList();
            if (field.Text is null) faults.Add(new Fault(file, section.Line, $"\"{Heading}\" needs the point \"- {name}: …\"."));
            else if (all.Count > 0 && !all.Contains(field.Text, StringComparer.Ordinal)) faults.Add(new Fault(file, field.Line, $"There is no {name.ToLowerInvariant()} \"{field.Text}\": use {Nearest.Or([.. Nearest.Of(field.Text, all, 3)])}."));
            return field.Text ?? "";
        }

        var provenance = Needed("Bike", topic.Provenances.Select(p => p.Id));
        var want = Needed("Want", topic.Wants.Select(w => w.Id));
        var question = Needed("Question", []);
        var line = fields.FirstOrDefault(f => string.Equals(f.Name, "Found", StringComparison.OrdinalIgnoreCase)).Line;
        var found = Needed("Found", []).Split(';', StringSplitOptions.TrimEntries | StringSplitOptions.RemoveEmptyEntries).Select(text => FindingOf(text, topic)).ToList();
        faults.AddRange(found.Where(f => f.Fault is not null).Select(f => new Fault(file, line, f.Fault ?? "")));
        return (faults.Count == 0 ? new TryIt(provenance, want, [.. found.Select(f => f.Finding).OfType<Finding>()], question) : null, faults);
    }

    static (Finding? Finding, string? Fault) FindingOf(string text, Topic topic)
    {
        var pair = text.Split('=', 2, StringSplitOptions.TrimEntries);
        if (pair.Length < 2) return (null, $"\"{text}\" is no finding: write clue = finding.");
        var by = pair[0].Split('@', 2);
        if (topic.Clues.FirstOrDefault(c => string.Equals(c.Id, by[0], StringComparison.Ordinal)) is not { } clue)
            return (null, $"There is no clue \"{by[0]}\": use {Nearest.Or([.. Nearest.Of(by[0], topic.Clues.Select(c => c.Id), 3)])}.");
        var channel = by.Length < 2 ? clue.Channels[0].Channel : Enum.TryParse<Channel>(by[1], ignoreCase: true, out var named) ? named : (Channel?)null;
        if (channel is not { } way || clue.Channels.All(c => c.Channel != way)) return (null, $"{clue.Id} is not seen by \"{by[^1]}\".");
        if (clue.Shows is Shows.Measured measured)
        {
            return LengthText.TryParse(pair[1], out var mm) && mm >= measured.Low && mm <= measured.High
                ? (new Finding(clue.Id, way, new Seen.Reading(Math.Round(mm / measured.Step, MidpointRounding.AwayFromZero) * measured.Step)), null)
                : (null, $"{clue.Id}: \"{pair[1]}\" is no reading from {measured.Low:0.##} to {measured.High:0.##} mm.");
        }

        IReadOnlyList<string> ids = clue.Shows is Shows.Table table ? [.. table.Findings.Select(f => f.Id)] : [.. ((Shows.Code)clue.Shows).Findings.Select(f => f.Id)];
        return ids.Contains(pair[1], StringComparer.Ordinal)
            ? (new Finding(clue.Id, way, new Seen.Named(pair[1])), null)
            : (null, $"{clue.Id} has no finding \"{pair[1]}\": use {Nearest.Or([.. Nearest.Of(pair[1], ids, 3)])}.");
    }
}
