using Apprentice.Content.Topics;
using Apprentice.Engine.Topics;

namespace Apprentice.Content.Lessons;

/// <summary>How many figures there are, by where they come from.</summary>
/// <param name="Where">A topic, "lessons of" it, or all.</param>
/// <param name="Sourced">From a named source.</param>
/// <param name="Practice">Common practice, no source.</param>
/// <param name="Judged">Workshop judgement.</param>
/// <param name="Memory">From memory.</param>
/// <param name="Worked">Worked out from others.</param>
/// <param name="Unmarked">None of these.</param>
public sealed record FigureCount(string Where, int Sourced, int Practice, int Judged, int Memory, int Worked, int Unmarked)
{
    /// <summary>Counts by topic and by its lessons, and in all.</summary>
    public static IReadOnlyList<FigureCount> Of(IReadOnlyList<Topic> topics, Library library)
    {
        var memory = library.Sources.Concat(topics.SelectMany(t => t.Sources)).Where(IsMemory).Select(s => s.Key).Append("memory").ToHashSet(StringComparer.Ordinal);
        var all = topics.SelectMany(t => (FigureCount[])[Count(t.Id, OfTopic(t), memory), Count($"lessons of {t.Id}", OfLessons(t, library), memory)]).ToList();
        return [.. all, all.Aggregate(new FigureCount("all", 0, 0, 0, 0, 0, 0), (s, c) => new FigureCount(
            "all", s.Sourced + c.Sourced, s.Practice + c.Practice, s.Judged + c.Judged, s.Memory + c.Memory, s.Worked + c.Worked, s.Unmarked + c.Unmarked))];
    }

    /// <summary>True for a key that stands for no source but somebody's memory: its text in the register says so first.</summary>
    public static bool IsMemory(Source source) => source.Text.StartsWith("From memory", StringComparison.Ordinal);

    static FigureCount Count(string where, IEnumerable<string> marks, HashSet<string> memory)
    {
        var by = marks.GroupBy(m => memory.Contains(m) ? 3 : Class(m)).ToDictionary(g => g.Key, g => g.Count());
        return new FigureCount(where, by.GetValueOrDefault(0), by.GetValueOrDefault(1), by.GetValueOrDefault(2), by.GetValueOrDefault(3), by.GetValueOrDefault(4), by.GetValueOrDefault(5));
    }

    static int Class(string mark) => mark switch
    {
        "" => 5,
        _ when mark.StartsWith("common", StringComparison.Ordinal) || mark == SourceMark.CommonPractice => 1,
        SourceMark.Judgement => 2,
        "sum" => 4,
        _ => 0,
    };

    static IEnumerable<string> OfTopic(Topic topic)
    {
        foreach (var size in topic.Dimensions)
        {
            for (var i = 0; i < size.Nominals.Count; i++) if (size.Nominals[i] is not null) yield return size.SourceOf(i);
            foreach (var _ in size.Spreads) yield return "judgement";
        }

        foreach (var published in topic.Published) yield return published.Source;
        foreach (var clue in topic.Clues)
        {
            var figures = clue.Shows switch
            {
                Shows.Table table => table.Rows.Sum(r => r.Count),
                Shows.Measured measured => 2 + (2 * measured.Slips.Count),
                Shows.Code code => code.Findings.Count + code.Decoys.Count,
                _ => 0,
            };
            for (var i = 0; i < figures; i++) yield return clue.Source;
        }

        foreach (var happened in topic.Events)
        {
            foreach (var provenance in topic.Provenances) yield return provenance.IsPuzzling ? provenance.FiguresFrom : happened.RateSource;
        }

        // Minutes, prices, days and shares of lines are judged throughout: the format has no other mark for them.
        for (var i = topic.Clues.Count + (3 * topic.Spares.Count) + (topic.Lines.Count * topic.Provenances.Count); i > 0; i--) yield return "judgement";
    }

    static IEnumerable<string> OfLessons(Topic topic, Library library)
    {
        foreach (var section in library.Of(topic.Id).SelectMany(l => l.Sections))
        {
            foreach (var span in section.Blocks.SelectMany(b => b.AllSpans))
            {
                if (span.Link is { } link && FigureLink.IsFigure(link)) yield return MarkOf(topic, link);
                else if (span.Link is null && !LessonForm.IsExample(section.Heading)) foreach (var _ in Figure.WithUnits(span.Text)) yield return "";
            }
        }
    }

    static string MarkOf(Topic topic, string link)
    {
        var (kind, rest) = (link[..link.IndexOf(':')], link[(link.IndexOf(':') + 1)..].Split('/'));
        return kind switch
        {
            "sum" => "sum",
            "source" => rest[0] == "common-practice" ? SourceMark.CommonPractice : rest[0],
            "published" => topic.Published.FirstOrDefault(p => p.Name == Uri.UnescapeDataString(string.Join('/', rest)))?.Source ?? "",
            "size" => topic.SourceOf(rest[0], rest[^1]) ?? "",
            "reading" or "slip-reading" => "sum",
            "share" or "step" => topic.Clues.FirstOrDefault(c => c.Id == rest[0])?.Source ?? "",
            _ => "judgement",
        };
    }
}
