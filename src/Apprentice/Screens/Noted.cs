using Apprentice.Content;
using Apprentice.Engine.Evidence;
using Apprentice.Engine.Topics;

namespace Apprentice.Screens;

/// <summary>What was told and found in a job so far.</summary>
static class Noted
{
    /// <summary>Every check of which something was told or found, with its number on the bench.</summary>
    /// <param name="on">The job.</param>
    /// <returns>Null for nothing.</returns>
    public static Block.Table? Of(BenchJob on)
    {
        var words = new TopicWords(on.Topic);
        var bench = on.Made.Job.Bench.ToList();
        var clues = on.Findings.Select(f => f.Clue).Distinct(StringComparer.Ordinal).OrderBy(c => bench.IndexOf(c) is var at && at < 0 ? bench.Count : at).ToList();
        if (clues.Count == 0) return null;
        return new Block.Table(
            [new(""), new(""), new(Words.Of(on.Offer == Channel.Phone ? "bench.back" : "bench.found"))],
            [.. clues.Select(c => new Row("", Marked: false, [bench.Contains(c) ? $"{bench.IndexOf(c) + 1}" : "", words.Clue(c), Of(on, words, on.Clue(c))]))]);
    }

    /// <summary>What was told and found of a check, in a line; empty for nothing.</summary>
    /// <param name="on">The job.</param>
    /// <param name="words">Words of the topic.</param>
    /// <param name="clue">The check.</param>
    public static string Of(BenchJob on, TopicWords words, Clue clue)
    {
        var phone = on.Offer == Channel.Phone;
        var told = on.Made.Job.Told.Where(f => Is(f, clue)).Select(f => Words.Of("seen.told", ("seen", words.Seen(f))));
        var asked = phone && on.Made.Job.Told.Any(t => Is(t, clue));
        var own = Runs(on.Findings.Skip(on.Made.Job.Told.Count).Where(f => Is(f, clue)).Select(words.Seen))
            .Select((seen, i) => i == 0 && !asked ? seen : Words.Of("seen.again", ("seen", seen)));
        var all = told.Concat(own).ToList();
        if (all.Count == 0) return "";
        return !phone && on.Made.Job.Told.Any(f => Is(f, clue)) && all.Count > 1 ? $"{all[0]}; {Words.Of("seen.own", ("seen", string.Join("; ", all.Skip(1))))}" : string.Join("; ", all);
    }

    /// <summary>What was seen, the same again told once with how often.</summary>
    static List<string> Runs(IEnumerable<string> seen)
    {
        List<(string Text, int Times)> runs = [];
        foreach (var text in seen)
        {
            if (runs.Count > 0 && string.Equals(runs[^1].Text, text, StringComparison.Ordinal)) runs[^1] = (text, runs[^1].Times + 1);
            else runs.Add((text, 1));
        }

        return [.. runs.Select(r => r.Times switch
        {
            1 => r.Text,
            2 => Words.Of("seen.twice", ("seen", r.Text)),
            _ => Words.Of("seen.times", ("seen", r.Text), ("n", r.Times)),
        })];
    }

    static bool Is(Finding finding, Clue clue) => string.Equals(finding.Clue, clue.Id, StringComparison.Ordinal);
}
