using Apprentice.Content;

namespace Apprentice.Screens;

/// <summary>The job card: who wants what, where the bike comes from, what was told.</summary>
static class JobCardBlocks
{
    /// <summary>The right end of the top line: who it is, and minutes or questions spent.</summary>
    public static string Right(BenchJob on, string who)
    {
        var spent = on.Made.Job.Request.Questions is { } of
            ? Words.Of("job.asked", ("asked", on.Looks.Count), ("of", of))
            : Words.Of("job.bench-time", ("minutes", Spoken.Minutes(on.Minutes)));
        return Words.Of("job.right", ("who", who), ("spent", spent)).Trim();
    }

    /// <summary>The blocks of a job's card.</summary>
    public static IEnumerable<Block> Of(BenchJob on)
    {
        var request = on.Made.Job.Request;
        var card = JobCard.Of(on.Topic, on.Made.Job);
        yield return new Block.Text(Words.Of("job.customer", ("arrival", card.Arrival), ("says", card.Says.Trim('"'))));
        yield return new Block.Text(Words.Of(
            "job.bike", ("colour", card.Colour), ("card", card.Origin), ("needed", Spoken.List([.. on.Want.OrderLines.Select(l => l.Name)]))));
        if (request.Questions is { } questions) yield return new Block.Text(Words.Of("job.budget", ("n", questions)));
        var words = new TopicWords(on.Topic);
        foreach (var told in on.Made.Job.Told.Where(f => !on.Made.Job.Bench.Contains(f.Clue, StringComparer.Ordinal)))
            yield return new Block.Text(Words.Of("job.told", ("clue", words.Clue(told.Clue)), ("seen", words.Seen(told))));
    }
}
